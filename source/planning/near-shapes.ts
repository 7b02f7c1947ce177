/**
 * A wish taken for a shape: the proportion of depth to width, which bags of any size can have. Bags of nearly that shape may
 * be larger: whole repeats and a bed that ends step the sizes, so a shape a little off may use what an exact one leaves. Of
 * each number of rows the most stitches are found by halving, since every yarn's need grows with them; scraps may fail at
 * one number and do at the next, so each is tried.
 */
import { hair } from '../shared/numbers.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { BagWish, Brief } from './brief.ts';
import {
  chooseRows,
  contentsDepthCm,
  contentsWidthCm,
  countsFor,
  leastRowsOf,
  leastStitchesOf,
  rowMultipleOf,
} from './choose-size.ts';
import type { PlanFault } from './fault.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthBelowCordCm, widthCm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';
import { bagDepthCm } from './hem.ts';
import type { Plan } from './plan.ts';
import { planRows } from './plan-bag.ts';

/** As wide as a brief may ask for. */
export const mostWidthCm = 300;

/** A wish that can be scaled. */
type ShapeWish = Exclude<BagWish, { readonly by: 'counts' }>;

/** The wish as a size that can be scaled; counts are taken for the size that they give. */
export function shapeOf(brief: Brief, gauge: Gauge): Result<ShapeWish, PlanFault> {
  const { bag } = brief;
  if (bag.by !== 'counts') return succeed(bag);
  const least = leastStitchesOf(brief);
  if (bag.stitches < least) return fail({ code: 'plan/too-few-stitches', stitches: bag.stitches, least });
  const rows = chooseRows(brief, gauge);
  if (!rows.ok) return rows;
  const counts = countsFor(brief, gauge, rows.value);
  return succeed({ by: 'size', widthCm: widthCm(counts, gauge), depthCm: bagDepthCm(brief, counts, gauge) });
}

export type Shaped = Brief & { readonly bag: ShapeWish };

/** Counts for `rows` round the tube, the depth in the same proportion to the width as in the wish. */
export function countsAt(shaped: Shaped, gauge: Gauge, rows: number): Counts {
  const { bag } = shaped;
  const gotCm = widthCm({ rows, shapeEveryRows: shaped.shapeEveryRows }, gauge);
  const share = gotCm / wishedWidthCm(shaped);
  const wish: ShapeWish =
    bag.by === 'size'
      ? { ...bag, depthCm: bag.depthCm * share }
      : { ...bag, heightCm: bag.heightCm * share, thicknessCm: bag.thicknessCm * share };
  return countsFor({ ...shaped, bag: wish, boxedCm: shaped.boxedCm * share }, gauge, rows);
}

const wishedWidthCm = ({ bag, boxedCm }: Shaped): number =>
  bag.by === 'size' ? bag.widthCm : contentsWidthCm(bag, boxedCm);

/** A boxed bottom in the same proportion to the width as in the wish. */
const boxedAt = (shaped: Shaped, gauge: Gauge, rows: number): number =>
  (shaped.boxedCm * widthCm({ rows, shapeEveryRows: shaped.shapeEveryRows }, gauge)) / wishedWidthCm(shaped);

/** How deep a bag is for its width, against the wish: 1 has its shape, 1.05 is a twentieth deeper. */
function shapeShare(shaped: Shaped, gauge: Gauge, counts: Counts): number {
  const { bag, edgeStitches, boxedCm } = shaped;
  const gotCm = widthCm(counts, gauge);
  return bag.by === 'size'
    ? bagDepthCm(shaped, counts, gauge) / gotCm / (bag.depthCm / bag.widthCm)
    : depthBelowCordCm(counts, edgeStitches, gauge) /
        gotCm /
        (contentsDepthCm(bag, boxedCm) / contentsWidthCm(bag, boxedCm));
}

/** The greatest number up to `most` that holds, where every smaller one holds too; −1 where none does. */
export function lastHolding(most: number, holds: (number: number) => boolean): number {
  let [low, high] = [-1, most];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (holds(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

export interface NearShape {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly depthCm: number;
  /** Its depth to its width, against that of the wish: below 1 it is shallower. */
  readonly shapeShare: number;
  /** Its width times its depth, against those of the bag that keeps the shape. */
  readonly areaShare: number;
}

/** How far a shape may be off, and what it has to gain (rules of thumb). */
const mostOff = 0.05;
const leastGain = 0.02;
export const planCounts = (shaped: Shaped, gauge: Gauge, { stitches, rows }: Counts) =>
  planRows(
    { ...shaped, bag: { by: 'counts', stitches, rows }, boxedCm: boxedAt(shaped, gauge, rows) },
    gauge,
    rows,
  );

export const isSound = (plan: Result<Plan, PlanFault>): boolean =>
  plan.ok && plan.value.yarn.every(({ enough }) => enough !== false);

/** The largest shallower one and the largest deeper one, where there are any; the larger first. */
export function nearShapes(shaped: Shaped, gauge: Gauge, { size }: Plan): readonly NearShape[] {
  const areaCm2 = size.widthCm * size.depthCm;
  const bands = [
    { least: 1 - mostOff, most: 1 },
    { least: 1, most: 1 + mostOff },
  ];
  return bands
    .flatMap((band) => largestWithin(shaped, gauge, band, areaCm2) ?? [])
    .toSorted((a, b) => b.areaShare - a.areaShare);
}

interface Band {
  readonly least: number;
  readonly most: number;
}

function largestWithin(shaped: Shaped, gauge: Gauge, band: Band, areaCm2: number): NearShape | null {
  let largest: NearShape | null = null;
  for (const { rows, least, most } of stitchSpans(shaped, gauge, band)) {
    const shapeWith = (stitches: number): NearShape => {
      const counts = { stitches, rows, shapeEveryRows: shaped.shapeEveryRows };
      const size = { widthCm: widthCm(counts, gauge), depthCm: bagDepthCm(shaped, counts, gauge) };
      const areaShare = (size.widthCm * size.depthCm) / areaCm2;
      return { stitches, rows, ...size, shapeShare: shapeShare(shaped, gauge, counts), areaShare };
    };
    const goal: number = largest?.areaShare ?? 1 + leastGain;
    if (shapeWith(most).areaShare <= goal) continue;
    const stitches = mostSound(shaped, gauge, rows, { least, most });
    // More rows only ever take more yarn; of scraps they may make a sequence again.
    if (stitches === null && !shaped.scraps) break;
    const found = stitches === null ? null : shapeWith(stitches);
    if (found && found.areaShare > goal) largest = found;
  }
  return largest;
}

/** For each number of rows the stitches that keep within the band, where there are any, as far as the bed reaches. */
function* stitchSpans(shaped: Shaped, gauge: Gauge, band: Band) {
  for (let rows = leastRowsOf(shaped); ; rows += rowMultipleOf(shaped)) {
    const counts = { rows, shapeEveryRows: shaped.shapeEveryRows };
    if (widthCm(counts, gauge) > mostWidthCm) return;
    // The share grows by the same with every stitch.
    const [one, two] = [1, 2].map((stitches) => shapeShare(shaped, gauge, { stitches, ...counts }));
    const stitchesFor = (share: number): number => 1 + (share - (one ?? 0)) / ((two ?? 0) - (one ?? 0));
    const least = Math.max(leastStitchesOf(shaped), Math.ceil(stitchesFor(band.least) - hair));
    const most = Math.floor(stitchesFor(band.most) + hair);
    if (least >= usableNeedles(shaped)) return;
    if (least <= most) yield { rows, least, most: Math.min(most, usableNeedles(shaped) - 1) };
  }
}

function mostSound(shaped: Shaped, gauge: Gauge, rows: number, { least, most }: Band): number | null {
  const sound = (stitches: number): boolean =>
    isSound(planCounts(shaped, gauge, { stitches, rows, shapeEveryRows: shaped.shapeEveryRows }));
  if (shaped.scraps) {
    for (let stitches = most; stitches >= least; stitches--) if (sound(stitches)) return stitches;
    return null;
  }
  const stitches = lastHolding(most - least, (more) => sound(least + more));
  return stitches < 0 ? null : least + stitches;
}
