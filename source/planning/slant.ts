/**
 * How steep the stripes stand: a shaping move after more rows leaves the edges closer to upright. A wanted angle is met as
 * nearly as moves every 2, 4, 6 or 8 rows allow (plane geometry, as in geometry.ts).
 */
import type { Brief } from './brief.ts';
import { chooseRows } from './choose-size.ts';
import { gaugeOf } from './gauge.ts';
import { stripeAngleDeg } from './geometry.ts';

export type ShapeEveryRows = 2 | 4 | 6 | 8;
export const shapeIntervals: readonly ShapeEveryRows[] = [2, 4, 6, 8];

export interface Slant {
  readonly shapeEveryRows: ShapeEveryRows;
  /** Of the stripes with the bottom edge, in a bag of this brief's size. */
  readonly angleDeg: number;
}

/** From the flattest to the steepest, of those for which rows can be found. */
export function slantsOf(brief: Brief): readonly Slant[] {
  const gauge = gaugeOf(brief);
  return shapeIntervals.flatMap((shapeEveryRows) => {
    const rows = chooseRows({ ...brief, shapeEveryRows }, gauge);
    return rows.ok
      ? [{ shapeEveryRows, angleDeg: stripeAngleDeg({ rows: rows.value, shapeEveryRows }, gauge) }]
      : [];
  });
}

/** The interval whose angle is nearest; the flatter one on a tie. */
export function nearestSlant(brief: Brief, angleDeg: number): ShapeEveryRows {
  const off = (slant: Slant): number => Math.abs(slant.angleDeg - angleDeg);
  return slantsOf(brief).toSorted((a, b) => off(a) - off(b))[0]?.shapeEveryRows ?? 2;
}
