/** What other counts of rows and stitches would give for the same wish. */
import type { Brief } from './brief.ts';
import { chooseStitches, leastRowsOf, leastStitchesOf, stepRowsOf } from './choose-size.ts';
import type { Neighbour } from './fault.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthCm, widthCm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';

/** Counts for `rows` round the tube, the stitches chosen for the wish. */
export const countsFor = (brief: Brief, gauge: Gauge, rows: number): Counts => ({
  rows,
  stitches: chooseStitches(brief, gauge, rows),
  shapeEveryRows: brief.shapeEveryRows,
});

export const neighbourOf = (brief: Brief, gauge: Gauge, counts: Counts): Neighbour => ({
  stitches: counts.stitches,
  rows: counts.rows,
  widthCm: widthCm(counts, gauge),
  depthCm: depthCm(counts, gauge),
  fitsBed: counts.stitches < usableNeedles(brief),
});

/** One repeat fewer, where that still makes a bag, and one repeat more; stitches chosen again for the same wish. */
export function neighboursOf(brief: Brief, gauge: Gauge, rows: number): readonly Neighbour[] {
  const stepRows = stepRowsOf(brief);
  return [rows - stepRows, rows + stepRows]
    .filter((choice) => choice >= leastRowsOf(brief))
    .map((choice) => neighbourOf(brief, gauge, countsFor(brief, gauge, choice)));
}

/** The deepest bag of the same rows that the bed has room for; null where it has room for none. */
export function deepestOnBed(brief: Brief, gauge: Gauge, counts: Counts): Neighbour | null {
  const stitches = usableNeedles(brief) - 1;
  return stitches < leastStitchesOf(brief) ? null : neighbourOf(brief, gauge, { ...counts, stitches });
}
