/** Yarns as fills: the plain colour, or the colour with a pattern that survives a copier. */
import { inkOn } from '../../shared/colour.ts';
import type { Pattern, YarnMark } from '../yarn-marks.ts';
import { element } from './element.ts';

export interface Fills {
  /** Definitions that the drawing needs. */
  readonly defs: string;
  readonly fillOf: (yarn: string) => string;
}

/** `idPrefix` keeps the ids of several drawings in one page apart; `unit` is one mm on paper in the units of the shapes. */
export function fillsFor(marks: ReadonlyMap<string, YarnMark>, idPrefix: string, unit: number): Fills {
  const fills = new Map<string, string>();
  const defs: string[] = [];
  for (const [yarn, { colour, pattern }] of marks) {
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
  const marks = element('path', {
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
  return element('pattern', attributes, ground + marks);
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
