/** Whether a mend that is offered does on the loop bed what it says. */
import { type Job, stepAt } from '../../source/steps/job.ts';
import { CannotBeDone, type LoopBed, type Move } from './loop-bed.ts';

export interface Offered {
  readonly moves: readonly Move[];
  /** Steps confirmed once it is done. */
  readonly done: number;
  readonly tellsTrace: boolean;
}

/** Why it is wrong on the true bed; null where it is right. `planned` are the beds by steps confirmed. */
export function wrongWith(
  job: Job,
  { moves, done, tellsTrace }: Offered,
  bed: LoopBed,
  planned: readonly LoopBed[],
): string | null {
  const due = planned[done];
  if (!due) return 'leads nowhere';
  try {
    const now = bed.copy().do(moves);
    if (now.work() === due.work()) return tellsTrace ? 'says a trace, and is the plan' : null;
    if (!tellsTrace) return 'says without a trace, and is not the plan';
    return afterNextRow(job, done, now) === afterNextRow(job, done, due) ? null : 'does not lead to the plan';
  } catch (error) {
    if (error instanceof CannotBeDone) return `cannot be done: ${error.message}`;
    throw error;
  }
}

function afterNextRow(job: Job, done: number, start: LoopBed): string {
  const bed = start.copy();
  for (let number = done + 1; number <= job.stepCount; number++) {
    const { act, moves } = stepAt(job, number);
    if (act.kind === 'take-off') break;
    bed.do(moves as readonly Move[]);
    if (act.kind === 'pass' || act.kind === 'closing-pass') break;
  }
  return bed.state();
}
