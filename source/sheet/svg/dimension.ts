/** Dimension lines as on a working drawing: a thin line between two ticks, its figure beside it. */
import type { Point } from '../geometry/shape.ts';
import { lineFrom, palette, usualTextMm } from './element.ts';
import { type Mark, marked, written } from './mark.ts';

const thin = { stroke: palette.quiet, 'stroke-width': 0.15 };
const tick = 0.9;

/** Across with its figure below, or down with its figure to the right or the left, turned to read from below. */
export function measure(
  from: Point,
  to: Point,
  text: string,
  side: 'left' | 'right' = 'right',
): readonly Mark[] {
  const [[x1, y1], [x2, y2]] = [from, to];
  const across = y1 === y2;
  const [dx, dy] = across ? [0, tick] : [tick, 0];
  const lines = [
    lineFrom(from, to, thin),
    lineFrom([x1 - dx, y1 - dy], [x1 + dx, y1 + dy], thin),
    lineFrom([x2 - dx, y2 - dy], [x2 + dx, y2 + dy], thin),
  ].join('');
  const middle: Point = [(x1 + x2) / 2, (y1 + y2) / 2];
  const off = side === 'left' ? -1.2 : 0.9 + usualTextMm * 0.8;
  return [
    marked(lines, [
      [x1 - dx, y1 - dy],
      [x2 + dx, y2 + dy],
    ]),
    across
      ? written([middle[0], middle[1] + 3.6], text, { anchor: 'middle' })
      : written([middle[0] + off, middle[1]], text, { anchor: 'middle', turn: -90 }),
  ];
}
