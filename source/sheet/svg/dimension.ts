/** Dimension lines as on a working drawing: a thin line between two ticks, its figure beside it, kept inside the drawing. */
import type { Point } from '../geometry/shape.ts';
import { lineFrom, palette, textAt } from './element.ts';
import { centreWithin } from './text-width.ts';

const thin = { stroke: palette.quiet, 'stroke-width': 0.15 };
const tick = 0.9;

export const acrossDimension = (
  left: number,
  right: number,
  y: number,
  text: string,
  widthMm: number,
): string =>
  [
    lineFrom([left, y], [right, y], thin),
    lineFrom([left, y - tick], [left, y + tick], thin),
    lineFrom([right, y - tick], [right, y + tick], thin),
    textAt([centreWithin((left + right) / 2, text, 2.6, widthMm), y + 3.4], text, { anchor: 'middle' }),
  ].join('');

/** Down the side, its figure turned to read from below. */
export function downDimension(
  x: number,
  top: number,
  bottom: number,
  text: string,
  side: 'left' | 'right',
  heightMm: number,
): string {
  const middle = centreWithin((top + bottom) / 2, text, 2.6, heightMm);
  const at: Point = [side === 'left' ? x - 1.2 : x + 3.2, middle];
  return [
    lineFrom([x, top], [x, bottom], thin),
    lineFrom([x - tick, top], [x + tick, top], thin),
    lineFrom([x - tick, bottom], [x + tick, bottom], thin),
    textAt(at, text, { anchor: 'middle', turn: -90 }),
  ].join('');
}
