/** What a bag is going to cost, and what it has cost; nothing where no price was given. */
import { type Cost, costOf } from '../planning/cost.ts';
import type { Plan } from '../planning/plan.ts';
import { usedYarn } from '../session/measured.ts';
import type { Session } from '../session/session.ts';
import { layOutJob } from '../steps/job.ts';
import { type Pace, timeByPhase } from './pace.ts';

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
