import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { clip, type Point, type Polygon } from '../geometry/shape.ts';
import { markYarns } from '../yarn-marks.ts';
import { type Drawing, element, palette, pointList } from './element.ts';
import { type Fills, fillsFor } from './fills.ts';

/** All stripes from first to last in one slanting band: an ornament, in the order they are knitted. */
export function bandDrawing(
  plan: Plan,
  widthMm: number,
  heightMm: number,
  id: string,
  words: Words,
): Drawing {
  const fills = fillsFor(markYarns(plan, 'print'), id, 1);
  const turn = (plan.size.stripeAngleDeg * Math.PI) / 180;
  const lean = (heightMm / Math.tan(turn)) * (plan.brief.crawl === 'right' ? -1 : 1);
  const step = (widthMm + Math.abs(lean)) / plan.rows;
  const start = Math.min(0, -lean);
  const box = { left: 0, right: widthMm, bottom: 0, top: heightMm };
  const bands = plan.stripes.map(({ yarn, firstRow, lastRow }) => {
    const at = (rowLine: number): readonly [Point, Point] => {
      const x = start + rowLine * step;
      return [
        [x, 0],
        [x + lean, heightMm],
      ];
    };
    const [[a, b], [c, d]] = [at(firstRow - 1), at(lastRow)];
    const shape: Polygon = clip([a, c, d, b], box);
    return element('polygon', { points: pointList(shape), fill: fills.fillOf(yarn) });
  });
  const frame = element('rect', {
    x: 0.1,
    y: 0.1,
    width: widthMm - 0.2,
    height: heightMm - 0.2,
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.2,
  });
  return {
    widthMm,
    heightMm,
    title: words.say`The stripes in order`,
    body: fills.defs + bands.join('') + frame,
  };
}

/** A small patch of a yarn, for tables; the definitions of `fills` must stand in the page once. */
export function patchDrawing(fills: Fills, yarn: string): Drawing {
  const fill = fills.fillOf(yarn);
  const patch = { x: 0.15, y: 0.15, width: 5.7, height: 2.9, fill, stroke: palette.ink, 'stroke-width': 0.2 };
  return { widthMm: 6, heightMm: 3.2, title: '', body: element('rect', patch) };
}

/** Fills at the scale of the paper, for patches. */
export const patchFills = (plan: Plan): Fills => fillsFor(markYarns(plan, 'print'), 'patch', 1);
