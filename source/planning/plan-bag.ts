import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief } from './brief.ts';
import {
  chooseRows,
  chooseStitches,
  leastRowsOf,
  leastStitchesOf,
  stepRowsOf,
  wantedSize,
} from './choose-size.ts';
import { planCord } from './cord.ts';
import { chooseEyelets } from './eyelets.ts';
import { fabricTightness } from './fabric.ts';
import type { PlanFault } from './fault.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import {
  type Counts,
  depthBelowCordCm,
  depthCm,
  mouthMm,
  shapingsIn,
  stripeAngleDeg,
  widthCm,
} from './geometry.ts';
import type { Neighbour, Plan, Size } from './plan.ts';
import { sequenceScraps } from './scraps.ts';
import { planSeatings, usableNeedles } from './seatings.ts';
import { layStripes } from './stripe-sequence.ts';
import { planGraft, planSeam } from './tails.ts';
import { planWarnings } from './warnings.ts';
import { type HandWork, planYarn } from './yarn-needs.ts';

/** Works a brief out in full: size, bed, yarn and hand sewing; or says why it gives no bag. */
export function planBag(brief: Brief): Result<Plan, PlanFault> {
  const gauge = gaugeOf(brief.swatch);
  const rows = chooseRows(brief, gauge);
  if (!rows.ok) return rows;
  return planRows(brief, gauge, rows.value);
}

/** The plan with `rows` round the tube, which must be whole repeats. */
export function planRows(brief: Brief, gauge: Gauge, rows: number): Result<Plan, PlanFault> {
  const counts: Counts = {
    rows,
    stitches: chooseStitches(brief, gauge, rows),
    shapeEveryRows: brief.shapeEveryRows,
  };
  const fault = checkStitches(brief, gauge, counts);
  if (fault) return fail(fault);
  if (!brief.scraps) return succeed(completePlan(brief, gauge, counts));
  const stripes = sequenceScraps(brief, gauge, counts, handWork(brief, gauge, counts));
  if (stripes.ok) return succeed(completePlan({ ...brief, stripes: stripes.value }, gauge, counts));
  return fail(nameLargest(brief, gauge, rows, stripes.fault));
}

/** Where scraps do not reach, the largest bag of fewer stripes for which they do. */
function nameLargest(brief: Brief, gauge: Gauge, rows: number, fault: PlanFault): PlanFault {
  if (fault.code !== 'plan/scraps-too-little') return fault;
  const stepRows = stepRowsOf(brief);
  for (let fewer = rows - stepRows; fewer >= leastRowsOf(brief); fewer -= stepRows) {
    const counts = {
      rows: fewer,
      stitches: chooseStitches(brief, gauge, fewer),
      shapeEveryRows: brief.shapeEveryRows,
    };
    if (!sequenceScraps(brief, gauge, counts, handWork(brief, gauge, counts)).ok) continue;
    return { ...fault, largest: { rows: fewer, widthCm: widthCm(counts, gauge) } };
  }
  return fault;
}

function handWork(brief: Brief, gauge: Gauge, counts: Counts): HandWork {
  return {
    stitches: counts.stitches,
    graft: planGraft(brief, gauge, counts.stitches),
    seam: planSeam(counts.rows, widthCm(counts, gauge)),
    cord: planCord(brief, gauge, mouthMm(counts, gauge) / 10),
  };
}

function checkStitches(brief: Brief, gauge: Gauge, counts: Counts): PlanFault | null {
  const { stitches } = counts;
  const least = leastStitchesOf(brief);
  if (stitches < least) return { code: 'plan/too-few-stitches', stitches, least };
  const usable = usableNeedles(brief);
  if (stitches < usable) return null;
  const greatestDepthCm = usable - 1 < least ? null : depthCm({ ...counts, stitches: usable - 1 }, gauge);
  return { code: 'plan/bed-too-short', stitches, usable, greatestDepthCm };
}

/** How the strip is laid out: its stripes, and its stays on the bed. */
export type Layout = Pick<Plan, 'stripes' | 'seatings'>;

function layOut(brief: Brief, counts: Counts): Layout {
  const stripes = layStripes(brief.stripes, counts.rows);
  return { stripes, seatings: planSeatings(brief, counts, stripes) };
}

/** All that follows from the counts; the layout too, unless part of it is knitted already. */
export function completePlan(
  brief: Brief,
  gauge: Gauge,
  counts: Counts,
  { stripes, seatings } = layOut(brief, counts),
): Plan {
  const { rows, stitches } = counts;
  const size = sizeOf(brief, gauge, counts);
  const shapings = shapingsIn(counts);
  const work = { stripes, seatings, ...handWork(brief, gauge, counts) };
  const plan = {
    brief,
    gauge,
    rows,
    knittedRows: rows - 1,
    shapings,
    size,
    neighbours: neighboursOf(brief, gauge, counts),
    needlesUsed: stitches + shapings,
    yarn: planYarn(brief, gauge, work),
    tightness: fabricTightness(brief, gauge, stripes),
    eyelets: chooseEyelets(shapings, size.mouthCm),
    ...work,
  };
  return { ...plan, warnings: planWarnings(plan) };
}

function sizeOf(brief: Brief, gauge: Gauge, counts: Counts): Size {
  const wanted = wantedSize(brief, gauge, counts);
  return {
    widthCm: widthCm(counts, gauge),
    depthCm: depthCm(counts, gauge),
    depthBelowCordCm: depthBelowCordCm(counts, brief.edgeStitches, gauge),
    mouthCm: mouthMm(counts, gauge) / 10,
    stripeAngleDeg: stripeAngleDeg(counts, gauge),
    wantedWidthCm: wanted.widthCm,
    wantedDepthCm: wanted.depthCm,
    wantedDepthBelowCordCm: wanted.depthBelowCordCm,
  };
}

/** One repeat fewer, where that still makes a bag, and one repeat more; stitches chosen anew for the same wish. */
function neighboursOf(brief: Brief, gauge: Gauge, { rows, shapeEveryRows }: Counts): readonly Neighbour[] {
  const stepRows = stepRowsOf(brief);
  return [rows - stepRows, rows + stepRows]
    .filter((choice) => choice >= leastRowsOf(brief))
    .map((choice) => {
      const counts = { rows: choice, stitches: chooseStitches(brief, gauge, choice), shapeEveryRows };
      const { stitches } = counts;
      return { stitches, rows: choice, widthCm: widthCm(counts, gauge), depthCm: depthCm(counts, gauge) };
    });
}
