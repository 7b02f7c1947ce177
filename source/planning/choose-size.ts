/**
 * Rows and stitches for a wish. The rows must be whole stripe repeats, so that the colours meet at the graft, and
 * whole shaping intervals; since the shaping moves grow with the rows, whole repeats are searched one by one. A wanted angle
 * of the stripes is met as nearly as moves every 2, 4, 6 or 8 rows allow: the rarer they are, the closer to upright.
 */
import { hair } from '../shared/numbers.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { standingWidthCm } from './boxed.ts';
import type { BagWish, Brief } from './brief.ts';
import type { Neighbour, PlanFault } from './fault.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import { type Counts, depthBelowCordCm, stitchDepthCm, stripeAngleDeg, widthCm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';
import { bagDepthCm, hemHeightCm } from './hem.ts';

/** The size asked for, in cm; null where counts were given. Depth is finished and sewn. */
interface WantedSize {
  readonly widthCm: number | null;
  readonly depthCm: number | null;
  readonly depthBelowCordCm: number | null;
}

export const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

/** Rows of one repeat. Scraps are laid stripe by stripe; two alone must take turns, so their stripes come in pairs. */
function repeatRowsOf({ scraps, stripes, yarns }: Brief): number {
  if (scraps) return scraps.rows * (yarns.size === 2 ? 2 : 1);
  return stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
}

/** Rows come in multiples of this: whole stripe repeats and whole shaping intervals at once. */
export function rowMultipleOf(brief: Brief): number {
  const repeatRows = repeatRowsOf(brief);
  return (repeatRows * brief.shapeEveryRows) / greatestCommonDivisor(repeatRows, brief.shapeEveryRows);
}

/** The smallest choice of rows that makes at least one shaping move and, of scraps, at least two stripes. */
export function leastRowsOf(brief: Brief): number {
  const rowMultiple = rowMultipleOf(brief);
  const leastRows = Math.max(2 * brief.shapeEveryRows, 2 * (brief.scraps?.rows ?? 0));
  return Math.ceil(leastRows / rowMultiple) * rowMultiple;
}

export const leastStitchesOf = (brief: Brief): number => 2 * brief.edgeStitches + 2;

/** Rows round the tube for the wish. */
export function chooseRows(brief: Brief, gauge: Gauge): Result<number, PlanFault> {
  const { bag, boxedCm } = brief;
  switch (bag.by) {
    case 'counts':
      return checkRows(brief, bag.rows);
    case 'contents':
      return succeed(smallestRows(brief, gauge, contentsWidthCm(bag, boxedCm)));
    case 'size':
      return succeed(nearestRows(brief, gauge, bag.widthCm));
  }
}

type ContentsWish = Extract<BagWish, { readonly by: 'contents' }>;

/** The flat width that goes round the contents with its ease, and whose base they can stand on. */
export const contentsWidthCm = (contents: ContentsWish, boxedCm: number): number =>
  Math.max((contents.girthCm / 2) * (1 + contents.easePercent / 100), standingWidthCm(contents, boxedCm));

/**
 * From the bottom seam the cloth goes over half the thickness, up the height with its ease, and over half the thickness
 * again to close; over half the base, where that is deeper (plane geometry).
 */
export const contentsDepthCm = (
  { heightCm, thicknessCm, easePercent }: ContentsWish,
  boxedCm: number,
): number => heightCm * (1 + easePercent / 100) + Math.max(thicknessCm, boxedCm);

function checkRows(brief: Brief, rows: number): Result<number, PlanFault> {
  const rowMultiple = rowMultipleOf(brief);
  const least = leastRowsOf(brief);
  if (rows % rowMultiple === 0 && rows >= least) return succeed(rows);
  const below = Math.floor(rows / rowMultiple) * rowMultiple;
  const nearest = [...new Set([below, below + rowMultiple].map((choice) => Math.max(choice, least)))];
  return fail({ code: 'plan/rows-not-whole-repeats', rows, rowMultiple, nearest });
}

const widthAt = (brief: Brief, gauge: Gauge, rows: number): number =>
  widthCm({ rows, shapeEveryRows: brief.shapeEveryRows }, gauge);

function smallestRows(brief: Brief, gauge: Gauge, wantedCm: number): number {
  const rowMultiple = rowMultipleOf(brief);
  let rows = leastRowsOf(brief);
  while (widthAt(brief, gauge, rows) < wantedCm - hair) rows += rowMultiple;
  return rows;
}

function nearestRows(brief: Brief, gauge: Gauge, wantedCm: number): number {
  const above = smallestRows(brief, gauge, wantedCm);
  const below = above - rowMultipleOf(brief);
  if (below < leastRowsOf(brief)) return above;
  const short = wantedCm - widthAt(brief, gauge, below);
  return short < widthAt(brief, gauge, above) - wantedCm - hair ? below : above;
}

/** Stitches across the strip for the wish, once the rows are chosen. */
export function chooseStitches(brief: Brief, gauge: Gauge, rows: number): number {
  const { bag, boxedCm } = brief;
  if (bag.by === 'counts') return bag.stitches;
  const one = stitchDepthCm({ rows, shapeEveryRows: brief.shapeEveryRows }, gauge);
  const exact =
    bag.by === 'size'
      ? Math.floor((bag.depthCm - hemHeightCm(brief, gauge)) / one + 1.5 + hair)
      : Math.ceil(contentsDepthCm(bag, boxedCm) / one + 1.5 + brief.edgeStitches - hair);
  return Math.max(leastStitchesOf(brief), exact);
}

export function wantedSize(brief: Brief, gauge: Gauge, counts: Counts): WantedSize {
  const { bag, boxedCm } = brief;
  switch (bag.by) {
    case 'counts':
      return { widthCm: null, depthCm: null, depthBelowCordCm: null };
    case 'size':
      return { widthCm: bag.widthCm, depthCm: bag.depthCm, depthBelowCordCm: null };
    case 'contents': {
      const belowCordCm = contentsDepthCm(bag, boxedCm);
      const aboveCordCm =
        bagDepthCm(brief, counts, gauge) - depthBelowCordCm(counts, brief.edgeStitches, gauge);
      return {
        widthCm: contentsWidthCm(bag, boxedCm),
        depthCm: belowCordCm + aboveCordCm,
        depthBelowCordCm: belowCordCm,
      };
    }
  }
}

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
  depthCm: bagDepthCm(brief, counts, gauge),
  fitsBed: counts.stitches < usableNeedles(brief),
});

/** One repeat fewer, where that still makes a bag, and one repeat more; stitches chosen again for the same wish. */
export function neighboursOf(brief: Brief, gauge: Gauge, rows: number): readonly Neighbour[] {
  const rowMultiple = rowMultipleOf(brief);
  return [rows - rowMultiple, rows + rowMultiple]
    .filter((choice) => choice >= leastRowsOf(brief))
    .map((choice) => neighbourOf(brief, gauge, countsFor(brief, gauge, choice)));
}

/** The deepest bag of the same rows that the bed has room for; null where it has room for none. */
export function deepestOnBed(brief: Brief, gauge: Gauge, counts: Counts): Neighbour | null {
  const stitches = usableNeedles(brief) - 1;
  return stitches < leastStitchesOf(brief) ? null : neighbourOf(brief, gauge, { ...counts, stitches });
}

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
