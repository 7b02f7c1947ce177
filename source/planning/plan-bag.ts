import { fail, type Result, succeed } from '../shared/result.ts';
import { boxedBelowCm, boxedBottom, canBeBoxed } from './boxed.ts';
import type { Brief } from './brief.ts';
import {
  chooseRows,
  countsFor,
  deepestOnBed,
  leastRowsOf,
  leastStitchesOf,
  neighbourOf,
  neighboursOf,
  rowMultipleOf,
  wantedSize,
} from './choose-size.ts';
import { planCord } from './cord.ts';
import { chooseEyelets, cordThicknessMm, type EyeletChoice } from './eyelets.ts';
import { judgeFabric } from './fabric.ts';
import type { PlanFault } from './fault.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import { type Counts, depthBelowCordCm, mouthMm, shapingsIn, stripeAngleDeg, widthCm } from './geometry.ts';
import { type Begun, planHangings, usableNeedles } from './hangings.ts';
import { bagDepthCm, hemHeightCm, planHem } from './hem.ts';
import type { Plan, Size } from './plan.ts';
import { savingsOf } from './savings.ts';
import { sequenceScraps } from './scraps.ts';
import { type KnittedStripe, layStripes } from './stripe-sequence.ts';
import { planGraft, planLining, planSeam, ravelCordCm } from './tails.ts';
import { doubtsOf, uncertaintyOf } from './uncertainty.ts';
import { type HandWork, planYarn } from './yarn-needs.ts';

/** Works a brief out in full: size, bed, yarn and hand sewing; or says why it gives no bag. */
export function planBag(brief: Brief): Result<Plan, PlanFault> {
  const gauge = gaugeOf(brief);
  const rows = chooseRows(brief, gauge);
  if (!rows.ok) return rows;
  const plan = planRows(brief, gauge, rows.value);
  return plan.ok ? plan : fail(nameLargest(brief, gauge, rows.value, plan.fault));
}

/** The plan with `rows` round the tube, which must be whole repeats. */
export function planRows(brief: Brief, gauge: Gauge, rows: number): Result<Plan, PlanFault> {
  const counts = countsFor(brief, gauge, rows);
  const fault = checkStitches(brief, gauge, counts) ?? checkBoxed(brief, gauge, counts);
  if (fault) return fail(fault);
  if (!brief.scraps) return succeed(completePlan(brief, gauge, counts));
  const stripes = sequenceScraps(brief, gauge, counts, handWork(brief, gauge, counts));
  return stripes.ok ? succeed(completePlan({ ...brief, stripes: stripes.value }, gauge, counts)) : stripes;
}

/** Where scraps do not reach, the largest bag of fewer stripes for which they do. */
function nameLargest(brief: Brief, gauge: Gauge, rows: number, fault: PlanFault): PlanFault {
  if (fault.code !== 'plan/scraps-too-little') return fault;
  const rowMultiple = rowMultipleOf(brief);
  for (let fewer = rows - rowMultiple; fewer >= leastRowsOf(brief); fewer -= rowMultiple) {
    const counts = countsFor(brief, gauge, fewer);
    if (!sequenceScraps(brief, gauge, counts, handWork(brief, gauge, counts)).ok) continue;
    return { ...fault, largest: neighbourOf(brief, gauge, counts) };
  }
  return fault;
}

function handWork(brief: Brief, gauge: Gauge, counts: Counts): HandWork & { readonly eyelets: EyeletChoice } {
  const eyelets = eyeletsOf(brief, gauge, counts);
  return {
    stitches: counts.stitches,
    graft: planGraft(brief, gauge, counts.stitches),
    seam: planSeam(counts.rows, widthCm(counts, gauge)),
    boxed: boxedBottom(brief, gauge, counts),
    hem: planHem(brief, gauge, counts),
    eyelets,
    cord: planCord(brief, gauge, mouthMm(counts, gauge) / 10, eyelets),
  };
}

const eyeletsOf = (brief: Brief, gauge: Gauge, counts: Counts): EyeletChoice =>
  chooseEyelets(
    shapingsIn(counts),
    gauge,
    brief.shapeEveryRows,
    cordThicknessMm(brief.cord.stitches, gauge),
    brief.cord.draws,
  );

function checkStitches(brief: Brief, gauge: Gauge, counts: Counts): PlanFault | null {
  const { stitches } = counts;
  const least = leastStitchesOf(brief);
  if (stitches < least) return { code: 'plan/too-few-stitches', stitches, least };
  const usable = usableNeedles(brief);
  if (stitches < usable) return null;
  const nearest = deepestOnBed(brief, gauge, counts);
  return { code: 'plan/bed-too-short', stitches, usable, nearest };
}

function checkBoxed(brief: Brief, gauge: Gauge, counts: Counts): PlanFault | null {
  if (canBeBoxed(brief, gauge, counts)) return null;
  const belowCm = boxedBelowCm(brief, gauge, counts);
  return { code: 'plan/boxed-too-deep', boxedCm: brief.boxedCm, belowCm };
}

/** Work that has begun: its stripes, some of them knitted, and where it hangs. */
interface AsBegun {
  readonly stripes: readonly KnittedStripe[];
  readonly begun: Begun;
}

/** All that follows from the counts; the stripes and hangings too, unless work has begun. */
export function completePlan(
  brief: Brief,
  gauge: Gauge,
  counts: Counts,
  asBegun: AsBegun | null = null,
): Plan {
  const stripes = asBegun?.stripes ?? layStripes(brief.stripes, counts.rows);
  const { rows, stitches } = counts;
  const size = sizeOf(brief, gauge, counts);
  const shapings = shapingsIn(counts);
  const hangings = planHangings(brief, counts, stripes, asBegun?.begun);
  const work = { stripes, hangings, ...handWork(brief, gauge, counts) };
  return {
    brief,
    gauge,
    rows,
    knittedRows: rows - 1,
    shapings,
    size,
    neighbours: neighboursOf(brief, gauge, rows),
    savings: asBegun ? [] : savingsOf(brief, gauge, counts),
    needlesUsed: stitches + shapings,
    yarn: planYarn(brief, gauge, work),
    ...judgeFabric(brief, gauge, stripes),
    ravelCordCm: ravelCordCm(gauge, stitches),
    lining: planLining(size.widthCm, size.depthBelowCordCm),
    asKnitted: sizeAsKnitted(brief, gauge, counts),
    begun: asBegun !== null,
    ...work,
  };
}

function sizeAsKnitted(brief: Brief, gauge: Gauge, counts: Counts): Plan['asKnitted'] {
  if (brief.finishState === brief.swatch.state) return null;
  const before = { ...gauge, ...gauge.asKnitted };
  return { ...gauge.asKnitted, widthCm: widthCm(counts, before), depthCm: bagDepthCm(brief, counts, before) };
}

function sizeOf(brief: Brief, gauge: Gauge, counts: Counts): Size {
  const wanted = wantedSize(brief, gauge, counts);
  const [width, depth] = [widthCm(counts, gauge), bagDepthCm(brief, counts, gauge)];
  const sized = { widthCm: width, depthCm: depth, hemCm: hemHeightCm(brief, gauge) };
  const uncertainty = uncertaintyOf(counts, gauge, doubtsOf(brief.swatch, brief.learned), sized);
  return {
    widthCm: width,
    depthCm: depth,
    widthUncertaintyCm: uncertainty.widthCm,
    depthUncertaintyCm: uncertainty.depthCm,
    depthBelowCordCm: depthBelowCordCm(counts, brief.edgeStitches, gauge),
    mouthCm: mouthMm(counts, gauge) / 10,
    stripeAngleDeg: stripeAngleDeg(counts, gauge),
    wantedWidthCm: wanted.widthCm,
    wantedDepthCm: wanted.depthCm,
    wantedDepthBelowCordCm: wanted.depthBelowCordCm,
  };
}
