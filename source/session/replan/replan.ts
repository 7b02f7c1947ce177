/** Changing the plan in the middle of the work: what is done stays done, and the steps after it follow the new plan. */
import {
  type Knitted,
  type PlanChanges,
  planFrom,
  planWithCordOf,
  type ReplanFault,
} from '../../planning/plan-from.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { type Job, layOutJob, stepAt, withCord } from '../../steps/job.ts';
import { phases } from '../../steps/step.ts';

/** How far the work has come, or null once the closing row has begun and nothing is left to plan. */
export function knittedAt(job: Job, done: number): Knitted | null {
  if (done > (job.phaseStarts[phases.indexOf('closing-row')] ?? 0)) return null;
  if (done === 0) return { row: 0, colouredThrough: 0 };
  const { row, act } = stepAt(job, done);
  return { row, colouredThrough: act.kind === 'thread' ? row + 1 : row };
}

/**
 * The job with the rest planned again. Its first `done` steps are those of `job`; the ones after it go on from the bed
 * as it is.
 */
export function replan(job: Job, done: number, changes: PlanChanges): Result<Job, ReplanFault> {
  const knitted = knittedAt(job, done);
  if (!knitted) return otherCord(job, done, changes);
  const plan = planFrom(job.plan, knitted, changes);
  return plan.ok ? succeed(layOutJob(plan.value, { job, done })) : plan;
}

/** Once the closing row is begun the size is settled; the yarn of the cord is not before its cast-on. */
function otherCord(
  job: Job,
  done: number,
  { rows, measured, recolour, cordYarn }: PlanChanges,
): Result<Job, ReplanFault> {
  if (!cordYarn || measured || recolour || rows !== job.plan.rows) return fail({ code: 'replan/too-late' });
  if (isCordBegun(job, done)) return fail({ code: 'replan/cord-begun' });
  const plan = planWithCordOf(job.plan, cordYarn);
  return plan.ok ? succeed(withCord(job, plan.value)) : plan;
}

function isCordBegun(job: Job, done: number): boolean {
  const begins = job.phaseStarts[phases.indexOf('cord')] ?? 0;
  for (let number = begins + 1; number <= done; number++)
    if (stepAt(job, number).act.kind === 'cast-on-cord') return true;
  return false;
}
