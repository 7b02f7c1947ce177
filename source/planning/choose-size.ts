/**
 * Rows and stitches for a wish. The rows must be whole stripe repeats, so that the colours meet at the graft, and
 * whole shaping intervals; since the shaping moves grow with the rows, whole repeats are searched one by one.
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import { standingWidthCm } from './boxed.ts';
import type { BagWish, Brief } from './brief.ts';
import type { PlanFault } from './fault.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthBelowCordCm, depthCm, stitchDepthCm, widthCm } from './geometry.ts';

/** The size asked for, in cm; null where counts were given. Depth is finished and sewn. */
export interface Wanted {
  readonly widthCm: number | null;
  readonly depthCm: number | null;
  readonly depthBelowCordCm: number | null;
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

/** Rows of one repeat. Scraps are laid stripe by stripe; two alone must take turns, so their stripes come in pairs. */
function repeatRowsOf({ scraps, stripes, yarns }: Brief): number {
  if (scraps) return scraps.rows * (yarns.size === 2 ? 2 : 1);
  return stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
}

/** Rows come in multiples of this: whole stripe repeats and whole shaping intervals at once. */
export function stepRowsOf(brief: Brief): number {
  const repeatRows = repeatRowsOf(brief);
  return (repeatRows * brief.shapeEveryRows) / greatestCommonDivisor(repeatRows, brief.shapeEveryRows);
}

/** The smallest choice of rows that makes at least one shaping move and, of scraps, at least two stripes. */
export function leastRowsOf(brief: Brief): number {
  const stepRows = stepRowsOf(brief);
  const leastRows = Math.max(2 * brief.shapeEveryRows, 2 * (brief.scraps?.rows ?? 0));
  return Math.ceil(leastRows / stepRows) * stepRows;
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

type Contents = Extract<BagWish, { readonly by: 'contents' }>;

/** The flat width that goes round the contents with its ease, and whose base they can stand on. */
export const contentsWidthCm = (contents: Contents, boxedCm: number): number =>
  Math.max((contents.girthCm / 2) * (1 + contents.easePercent / 100), standingWidthCm(contents, boxedCm));

/**
 * From the bottom seam the cloth goes over half the thickness, up the height with its ease, and over half the thickness
 * again to close; over half the base, where that is deeper (plane geometry).
 */
export const contentsDepthCm = ({ heightCm, thicknessCm, easePercent }: Contents, boxedCm: number): number =>
  heightCm * (1 + easePercent / 100) + Math.max(thicknessCm, boxedCm);

function checkRows(brief: Brief, rows: number): Result<number, PlanFault> {
  const stepRows = stepRowsOf(brief);
  const least = leastRowsOf(brief);
  if (rows % stepRows === 0 && rows >= least) return succeed(rows);
  const below = Math.floor(rows / stepRows) * stepRows;
  const nearest = [...new Set([below, below + stepRows].map((choice) => Math.max(choice, least)))];
  return fail({ code: 'plan/rows-not-whole-repeats', rows, stepRows, nearest });
}

const widthAt = (brief: Brief, gauge: Gauge, rows: number): number =>
  widthCm({ rows, shapeEveryRows: brief.shapeEveryRows }, gauge);

/** What is left of a comparison when rounding errors are taken out of it. */
const hair = 1e-9;

function smallestRows(brief: Brief, gauge: Gauge, wantedCm: number): number {
  const stepRows = stepRowsOf(brief);
  let rows = leastRowsOf(brief);
  while (widthAt(brief, gauge, rows) < wantedCm - hair) rows += stepRows;
  return rows;
}

function nearestRows(brief: Brief, gauge: Gauge, wantedCm: number): number {
  const above = smallestRows(brief, gauge, wantedCm);
  const below = above - stepRowsOf(brief);
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
      ? Math.floor(bag.depthCm / one + 1.5 + hair)
      : Math.ceil(contentsDepthCm(bag, boxedCm) / one + 1.5 + brief.edgeStitches - hair);
  return Math.max(leastStitchesOf(brief), exact);
}

export function wantedSize(brief: Brief, gauge: Gauge, counts: Counts): Wanted {
  const { bag, boxedCm } = brief;
  switch (bag.by) {
    case 'counts':
      return { widthCm: null, depthCm: null, depthBelowCordCm: null };
    case 'size':
      return { widthCm: bag.widthCm, depthCm: bag.depthCm, depthBelowCordCm: null };
    case 'contents': {
      const belowCordCm = contentsDepthCm(bag, boxedCm);
      const aboveCordCm = depthCm(counts, gauge) - depthBelowCordCm(counts, brief.edgeStitches, gauge);
      return {
        widthCm: contentsWidthCm(bag, boxedCm),
        depthCm: belowCordCm + aboveCordCm,
        depthBelowCordCm: belowCordCm,
      };
    }
  }
}
