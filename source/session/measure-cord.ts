/**
 * How high a round of cord is, is a guess until the first rounds of it have been measured, lying at rest; how many rounds
 * make the whole cord follows from them (common practice).
 */
import { planCordAnew } from '../planning/cord-anew.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { withCord } from '../steps/job.ts';
import { currentStep, type Session, type Standing } from './session.ts';

/** Twenty rounds of the widest stitches are shorter than this, in cm. */
const longestCm = 200;

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
  if (!(lengthCm > 0 && lengthCm <= longestCm)) return fail({ code: 'cord/not-a-length', lengthCm });
  const plan = planCordAnew(job.plan, { rounds: act.rounds, lengthCm });
  return succeed({ job: withCord(job, plan), done, mends });
}
