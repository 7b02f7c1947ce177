import type { Plan } from '../../planning/plan.ts';
import { inkOn } from '../../shared/colour.ts';
import type { SheetWords } from '../../wording/sheet.en.ts';
import { clip, type Point, type Polygon } from '../geometry/shape.ts';
import { markYarns, type YarnMark } from '../yarn-marks.ts';
import { type Drawing, element, palette, pointList, textAt } from './element.ts';
import { type Fills, fillsFor } from './fills.ts';

/** All stripes from first to last in one slanting band: an ornament, in the order they are knitted. */
export function bandDrawing(
  plan: Plan,
  words: SheetWords,
  widthMm: number,
  heightMm: number,
  id: string,
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
  return { widthMm, heightMm, title: words.shows.band, body: fills.defs + bands.join('') + frame };
}

/** A small patch of a yarn, for tables; the definitions of `fills` must stand in the page once. */
export function patchDrawing(fills: Fills, yarn: string): Drawing {
  const fill = fills.fillOf(yarn);
  const patch = { x: 0.15, y: 0.15, width: 5.7, height: 2.9, fill, stroke: palette.ink, 'stroke-width': 0.2 };
  return { widthMm: 6, heightMm: 3.2, title: '', body: element('rect', patch) };
}

/** A yarn's letter on its colour, for lists that are read from afar. */
export function chipDrawing({ colour, letter }: YarnMark): Drawing {
  const box = {
    x: 0.15,
    y: 0.15,
    width: 5.7,
    height: 5.5,
    rx: 0.5,
    fill: colour,
    stroke: palette.ink,
    'stroke-width': 0.25,
  };
  const text = textAt([3, 4.5], letter, { size: 4.4, weight: 700, anchor: 'middle', colour: inkOn(colour) });
  return { widthMm: 6, heightMm: 5.8, title: '', body: element('rect', box) + text };
}

/** Fills at the scale of the paper, for patches. */
export const patchFills = (plan: Plan): Fills => fillsFor(markYarns(plan, 'print'), 'patch', 1);
