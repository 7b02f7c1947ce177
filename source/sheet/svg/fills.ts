/**
 * Yarns as fills, the plain colour or the colour with a pattern that survives a copier, and the small pictures of yarns: the
 * band of all stripes, the patch of a table, the chip of a list.
 */

import type { Plan } from '../../planning/plan.ts';
import { inkOn } from '../../shared/colour.ts';
import type { Words } from '../../wording/words.ts';
import { clip, type Point, type Polygon } from '../geometry/shape.ts';
import { type Pattern, type YarnSign, yarnSigns } from '../yarn-signs.ts';
import { type Drawing, element, palette, pointList, textAt } from './element.ts';

export interface Fills {
  /** Definitions that the drawing needs. */
  readonly defs: string;
  readonly fillOf: (yarn: string) => string;
}

/** `idPrefix` keeps the ids of several drawings in one page apart; `unit` is one mm on paper in the units of the shapes. */
export function fillsFor(signs: ReadonlyMap<string, YarnSign>, idPrefix: string, unit: number): Fills {
  const fills = new Map<string, string>();
  const defs: string[] = [];
  for (const [yarn, { colour, pattern }] of signs) {
    if (pattern === 'plain') {
      fills.set(yarn, colour);
      continue;
    }
    const id = `${idPrefix}-yarn-${fills.size + 1}`;
    fills.set(yarn, `url(#${id})`);
    defs.push(patternElement(id, colour, pattern, unit));
  }
  return {
    defs: defs.length > 0 ? element('defs', {}, defs.join('')) : '',
    fillOf: (yarn) => fills.get(yarn) ?? '#ffffff',
  };
}

function patternElement(
  id: string,
  colour: string,
  pattern: Exclude<Pattern, 'plain'>,
  unit: number,
): string {
  const ground = element('rect', { width: tile, height: tile, fill: colour });
  const signs = element('path', {
    d: strokes[pattern],
    stroke: inkOn(colour),
    'stroke-width': pattern === 'dots' ? 0.5 : 0.22,
    'stroke-opacity': 0.5,
    'stroke-linecap': pattern === 'dots' ? 'round' : null,
    fill: 'none',
  });
  const scale = `scale(${unit.toPrecision(6)})`;
  const attributes = {
    id,
    width: tile,
    height: tile,
    patternUnits: 'userSpaceOnUse',
    patternTransform: scale,
  };
  return element('pattern', attributes, ground + signs);
}

const tile = 1.6;

/** Strokes on a tile of 1.6 by 1.6, meeting their own at the edges. */
const strokes: Readonly<Record<Exclude<Pattern, 'plain'>, string>> = {
  rising: 'M-0.4 -0.4 2 2M-0.4 1.2 0.4 2M1.2 -0.4 2 0.4',
  falling: 'M2 -0.4 -0.4 2M0.4 -0.4 -0.4 0.4M2 1.2 1.2 2',
  dots: 'M0.4 0.4h0.01M1.2 1.2h0.01',
  grid: 'M0.8 0v1.6M0 0.8h1.6',
  level: 'M0 0.8h1.6',
  upright: 'M0.8 0v1.6',
};

/** All stripes from first to last in one slanting band: an ornament, in the order they are knitted. */
export function bandDrawing(
  plan: Plan,
  words: Words['sheet'],
  widthMm: number,
  heightMm: number,
  id: string,
): Drawing {
  const fills = fillsFor(yarnSigns(plan, 'print'), id, 1);
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
export function chipDrawing({ colour, letter }: YarnSign): Drawing {
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
  const text = textAt([3, 4.6], letter, { size: 4.6, weight: 700, anchor: 'middle', colour: inkOn(colour) });
  return { widthMm: 6, heightMm: 5.8, title: '', body: element('rect', box) + text };
}

/** Fills at the scale of the paper, for patches. */
export const patchFills = (plan: Plan): Fills => fillsFor(yarnSigns(plan, 'print'), 'patch', 1);
