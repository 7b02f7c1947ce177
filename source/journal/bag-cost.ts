/** What a bag is going to cost, and what it has cost: its yarn by weight, and the hours on the bench. */
import type { Brief } from '../planning/brief.ts';
import type { Plan } from '../planning/plan.ts';
import { usedYarn } from '../session/measured.ts';
import type { Session } from '../session/session.ts';
import { layOutJob } from '../steps/job.ts';
import { type Pace, timeByPhase } from './pace.ts';

export interface Cost {
  /** Of each yarn that has a price and is used. */
  readonly yarn: readonly { readonly yarn: string; readonly cost: number }[];
  /** Yarns that are used and have no price. */
  readonly unpriced: readonly string[];
  readonly hours: number;
  /** Null where an hour has no worth. */
  readonly work: number | null;
  readonly total: number;
  /** As the maker writes it; null where it was not said. */
  readonly currency: string | null;
}

/** Null where neither yarn nor hours have a price. Yarn at what it weighs, without a reserve: what is left over is not used up. */
function costOf({ yarns, cost }: Brief, grams: ReadonlyMap<string, number>, hours: number): Cost | null {
  const used = [...yarns].map(([yarn, { pricePer100g }]) => ({
    yarn,
    grams: grams.get(yarn) ?? 0,
    pricePer100g,
  }));
  const taken = used.filter((one) => one.grams > 0);
  const priced = taken.flatMap(({ yarn, grams: own, pricePer100g }) =>
    pricePer100g === null ? [] : [{ yarn, cost: (own * pricePer100g) / 100 }],
  );
  if (priced.length === 0 && cost.perHour === null) return null;
  const work = cost.perHour === null ? null : hours * cost.perHour;
  return {
    yarn: priced,
    unpriced: taken.filter(({ pricePer100g }) => pricePer100g === null).map(({ yarn }) => yarn),
    hours,
    work,
    total: priced.reduce((sum, one) => sum + one.cost, work ?? 0),
    currency: cost.currency,
  };
}

/** Before the work: by the plan's yarn and the time that is foretold. */
export function plannedCost(plan: Plan, pace: Pace): Cost | null {
  const seconds = [...timeByPhase(layOutJob(plan), pace).values()];
  return costOf(plan.brief, plannedGrams(plan), seconds.reduce((sum, one) => sum + one, 0) / 3600);
}

/** After it: by the time that was spent, and of each yarn weighed at the end by what it took. */
export function workedCost(session: Session, benchMs: number): Cost | null {
  const grams = new Map(plannedGrams(session.job.plan));
  for (const { yarn, usedGrams, atEnd } of usedYarn(session)) {
    if (atEnd && usedGrams !== null) grams.set(yarn, usedGrams);
  }
  return costOf(session.job.plan.brief, grams, benchMs / 3_600_000);
}

const plannedGrams = (plan: Plan): ReadonlyMap<string, number> =>
  new Map(plan.yarn.flatMap(({ yarn, grams }) => (grams === null ? [] : [[yarn, grams] as const])));
