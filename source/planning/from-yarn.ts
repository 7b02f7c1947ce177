/**
 * The largest bag of the wanted shape that the weighed yarns allow. The wish is scaled with the width of each whole
 * repeat; every yarn's need grows with it, so the last repeat for which there is enough is found by halving. Yarns that
 * were not weighed are taken to be enough.
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief } from './brief.ts';
import { leastRowsOf, neighbourOf, rowMultipleOf } from './choose-size.ts';
import type { PlanFault } from './fault.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import { widthCm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';
import {
  countsAt,
  isSound,
  lastHolding,
  mostWidthCm,
  type NearShape,
  nearShapes,
  planCounts,
  type Shaped,
  shapeOf,
} from './near-shapes.ts';
import type { Plan } from './plan.ts';

/** What keeps the bag from being one repeat larger. */
export type BagLimit =
  | { readonly by: 'yarn'; readonly yarn: string }
  | { readonly by: 'scraps' }
  | { readonly by: 'bed'; readonly usable: number }
  | { readonly by: 'width'; readonly mostCm: number };

export interface BagFromYarn {
  /** Planned by its counts; its size has no wish of its own. */
  readonly plan: Plan;
  readonly limit: BagLimit;
  /** Bags of nearly the shape that the yarn makes larger still. */
  readonly nearShapes: readonly NearShape[];
}

/** The bag, or why there is none: nothing is weighed, the smallest takes too much, or a fault of its own. */
export function planFromYarn(brief: Brief): Result<BagFromYarn, PlanFault> {
  if ([...brief.yarns.values()].every(({ grams }) => grams === null)) {
    return fail({ code: 'plan/yarn-not-weighed' });
  }
  const gauge = gaugeOf(brief);
  const shape = shapeOf(brief, gauge);
  if (!shape.ok) return shape;
  const shaped = { ...brief, bag: shape.value };
  const planAt = (repeats: number) => planScaled(shaped, gauge, rowsAt(brief, repeats));
  const most = mostRepeats(shaped, gauge);
  const repeats = brief.scraps ? lastSound(most, planAt) : lastSoundByHalving(most, planAt);
  const plan = planAt(Math.max(0, repeats));
  if (!plan.ok) return plan;
  if (repeats < 0) return fail(tooLittleYarn(shaped, gauge, plan.value));
  const limit = repeats < most ? yarnLimit(planAt(repeats + 1)) : roomLimit(shaped, gauge, plan.value.rows);
  return succeed({ plan: plan.value, limit, nearShapes: nearShapes(shaped, gauge, plan.value) });
}

const rowsAt = (brief: Brief, repeats: number): number => leastRowsOf(brief) + repeats * rowMultipleOf(brief);

function planScaled(shaped: Shaped, gauge: Gauge, rows: number): Result<Plan, PlanFault> {
  return planCounts(shaped, gauge, countsAt(shaped, gauge, rows));
}

type PlanAt = (repeats: number) => Result<Plan, PlanFault>;

/** Repeats above the least that neither the bed nor the greatest width forbids; both only ever forbid more. */
function mostRepeats(shaped: Shaped, gauge: Gauge): number {
  const fits = (repeats: number): boolean => {
    const counts = countsAt(shaped, gauge, rowsAt(shaped, repeats));
    return counts.stitches < usableNeedles(shaped) && widthCm(counts, gauge) <= mostWidthCm;
  };
  return Math.max(0, lastHolding(1 << 16, fits));
}

const lastSoundByHalving = (most: number, planAt: PlanAt): number =>
  lastHolding(most, (repeats) => isSound(planAt(repeats)));

/** Scraps may fail at one number of stripes and do at the next, so every one is tried, the largest first. */
function lastSound(most: number, planAt: PlanAt): number {
  for (let repeats = most; repeats >= 0; repeats--) if (isSound(planAt(repeats))) return repeats;
  return -1;
}

function tooLittleYarn(shaped: Shaped, gauge: Gauge, plan: Plan): PlanFault {
  const { yarn, shortGrams } = mostShort(plan);
  const counts = { stitches: plan.stitches, rows: plan.rows, shapeEveryRows: shaped.shapeEveryRows };
  return { code: 'plan/yarn-for-no-bag', yarn, shortGrams, smallest: neighbourOf(shaped, gauge, counts) };
}

const yarnLimit = (next: Result<Plan, PlanFault>): BagLimit =>
  next.ok ? { by: 'yarn', yarn: mostShort(next.value).yarn } : { by: 'scraps' };

function roomLimit(shaped: Shaped, gauge: Gauge, rows: number): BagLimit {
  const usable = usableNeedles(shaped);
  const next = countsAt(shaped, gauge, rows + rowMultipleOf(shaped));
  return next.stitches >= usable ? { by: 'bed', usable } : { by: 'width', mostCm: mostWidthCm };
}

function mostShort(plan: Plan): { readonly yarn: string; readonly shortGrams: number } {
  const short = plan.yarn.map(({ yarn, shortGrams }) => ({ yarn, shortGrams: shortGrams ?? 0 }));
  return short.reduce((most, one) => (one.shortGrams > most.shortGrams ? one : most));
}
