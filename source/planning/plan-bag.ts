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
import { planSeatings, usableNeedles } from './seatings.ts';
import { layStripes } from './stripe-sequence.ts';
import { planGraft, planSeam } from './tails.ts';
import { planWarnings } from './warnings.ts';
import { planYarn } from './yarn-needs.ts';

/** Works a brief out in full: size, bed, yarn and hand sewing; or says why it gives no bag. */
export function planBag(brief: Brief): Result<Plan, PlanFault> {
  const gauge = gaugeOf(brief.swatch);
  const rows = chooseRows(brief, gauge);
  if (!rows.ok) return rows;
  const counts: Counts = {
    rows: rows.value,
    stitches: chooseStitches(brief, gauge, rows.value),
    shapeEveryRows: brief.shapeEveryRows,
  };
  const fault = checkStitches(brief, gauge, counts);
  return fault ? fail(fault) : succeed(completePlan(brief, gauge, counts));
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

function completePlan(brief: Brief, gauge: Gauge, counts: Counts): Plan {
  const { rows, stitches } = counts;
  const stripes = layStripes(brief.stripes, rows);
  const size = sizeOf(brief, gauge, counts);
  const shapings = shapingsIn(counts);
  const work = {
    stitches,
    stripes,
    seatings: planSeatings(brief, counts, stripes),
    graft: planGraft(brief, gauge, stitches),
    seam: planSeam(rows, size.widthCm),
    cord: planCord(brief, gauge, size.mouthCm),
  };
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
    eyelets: chooseEyelets(shapings),
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
