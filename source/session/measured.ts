/**
 * What is measured on the way and at the end. How high a round of cord is, is a guess until its first rounds have been
 * measured, lying at rest; how many make the whole cord follows from them. What a finished bag measures, sewn and lying
 * flat in the state of its plan, is its planner's only check: the next bag of this swatch is planned from what was got
 * (both common practice).
 */

import { planCord } from '../planning/cord.ts';
import type { Plan } from '../planning/plan.ts';
import { planYarn } from '../planning/yarn-needs.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { withCord } from '../steps/job.ts';
import { currentStep, type Session, type Standing } from './session.ts';

/**
 * What a bag has taken of a yarn: what there was before, less what the scales show is left. True of the moment of
 * weighing, so it is the bag's own figure once it is weighed at the end (common practice).
 */

export type WeighFault =
  | { readonly code: 'weigh/no-such-yarn'; readonly yarn: string; readonly known: readonly string[] }
  | { readonly code: 'weigh/not-a-weight'; readonly yarn: string; readonly grams: number }
  | {
      readonly code: 'weigh/more-than-before';
      readonly yarn: string;
      readonly grams: number;
      readonly haveGrams: number;
    };

/** The session with what is left of a yarn. A weighing takes the place of an earlier one, which may have been a slip. */
export function weighYarn(session: Session, yarn: string, grams: number): Result<Session, WeighFault> {
  const { yarns } = session.job.plan.brief;
  const known = yarns.get(yarn);
  if (!known) return fail({ code: 'weigh/no-such-yarn', yarn, known: [...yarns.keys()] });
  if (!(grams >= 0 && Number.isFinite(grams))) return fail({ code: 'weigh/not-a-weight', yarn, grams });
  if (known.grams !== null && grams > known.grams) {
    return fail({ code: 'weigh/more-than-before', yarn, grams, haveGrams: known.grams });
  }
  const weighed = new Map(session.weighed).set(yarn, { grams, done: session.done });
  return succeed({ ...session, weighed });
}

export interface UsedYarn {
  readonly yarn: string;
  readonly leftGrams: number;
  /** Before the work; null where it was not weighed. */
  readonly haveGrams: number | null;
  readonly usedGrams: number | null;
  /** Steps confirmed when what is left was weighed. */
  readonly done: number;
  /** The bag was finished by then, so nothing more was taken. */
  readonly atEnd: boolean;
}

/** One for each yarn that was weighed. */
export const usedYarn = ({ weighed, job }: Session): readonly UsedYarn[] =>
  [...weighed].map(([yarn, { grams, done }]) => {
    const haveGrams = job.plan.brief.yarns.get(yarn)?.grams ?? null;
    const usedGrams = haveGrams === null ? null : haveGrams - grams;
    return { yarn, leftGrams: grams, haveGrams, usedGrams, done, atEnd: done >= job.stepCount };
  });

/** The longest side that a bag of this kind can have: a bed's worth of the widest stitches, in cm. */
const longestSideCm = 800;

export interface MeasuredFault {
  readonly code: 'measured/not-a-size';
  readonly widthCm: number;
  readonly depthCm: number;
}

/** The session with the bag's size. A measuring takes the place of an earlier one. */
export function measureBag(
  session: Session,
  widthCm: number,
  depthCm: number,
): Result<Session, MeasuredFault> {
  const possible = [widthCm, depthCm].every((cm) => cm > 0 && cm <= longestSideCm);
  if (!possible) return fail({ code: 'measured/not-a-size', widthCm, depthCm });
  return succeed({ ...session, measured: { widthCm, depthCm, done: session.done } });
}

/** The rounds that are knitted stay, though fewer would do. */
function planCordAnew(plan: Plan, measured: { readonly rounds: number; readonly lengthCm: number }): Plan {
  const roundsPer10Cm = (10 * measured.rounds) / measured.lengthCm;
  const brief = { ...plan.brief, cord: { ...plan.brief.cord, roundsPer10Cm } };
  const cord = planCord(brief, plan.gauge, plan.size.mouthCm, plan.eyelets, measured.rounds);
  return { ...plan, brief, cord, yarn: planYarn(brief, plan.gauge, { ...plan, cord }) };
}

/** Twenty rounds of the widest stitches are shorter than this, in cm. */
const longestRoundsCm = 200;

export type MeasureCordFault =
  | { readonly code: 'cord/not-asked' }
  | { readonly code: 'cord/not-a-length'; readonly lengthCm: number };

/** The work with as many rounds as the measured ones make necessary; only at the step that asks for it. */
export function measureCord(
  session: Session,
  lengthCm: number,
): Result<Omit<Standing, 'way' | 'adrift'>, MeasureCordFault> {
  const { job, done, mends } = session;
  const act = currentStep(session)?.act;
  if (act?.kind !== 'measure-rounds') return fail({ code: 'cord/not-asked' });
  if (!(lengthCm > 0 && lengthCm <= longestRoundsCm)) return fail({ code: 'cord/not-a-length', lengthCm });
  const plan = planCordAnew(job.plan, { rounds: act.rounds, lengthCm });
  return succeed({ job: withCord(job, plan), done, mends });
}
