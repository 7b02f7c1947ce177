/**
 * Names for places. A mark keeps its meaning when the plan changes: a place that is still to come is then the step that does
 * the same there, the closing row or the tenth bar, whatever number it has.
 */
import { type Job, stepAt } from '../steps/job.ts';
import { doneBeforeRow } from '../steps/landmarks.ts';
import { phases, type Step } from '../steps/step.ts';
import type { Kept, Mark } from './session.ts';

const places = new WeakMap<Job, WeakMap<Kept<Mark>, ReadonlyMap<string, number>>>();

/** Steps confirmed at each mark, by name, in the plan that is followed now. */
export function marksOf({
  job,
  marks,
}: {
  readonly job: Job;
  readonly marks: Kept<Mark>;
}): ReadonlyMap<string, number> {
  const known = places.get(job) ?? new WeakMap<Kept<Mark>, ReadonlyMap<string, number>>();
  places.set(job, known);
  const found = known.get(marks) ?? new Map([...marks].map((one) => [one.name, placeIn(job, one)]));
  known.set(marks, found);
  return found;
}

function placeIn(job: Job, { job: made, done }: Mark): number {
  if (made === job || done === 0) return done;
  if (done === made.stepCount) return job.stepCount;
  const next = stepAt(made, done + 1);
  if (done < job.stepCount && isSame(stepAt(job, done + 1), next)) return done;
  return next.phase === 'stripes' ? placeInStripes(job, next) : placeInPhase(job, made, next);
}

const isSame = (one: Step, other: Step): boolean =>
  one.phase === other.phase && one.row === other.row && one.act.kind === other.act.kind;

/** In the same row; at the closing row where the work does not come so far. */
function placeInStripes(job: Job, next: Step): number {
  const closing = job.phaseStarts[phases.indexOf('closing-row')] ?? 0;
  if (next.row >= job.plan.knittedRows) return closing;
  for (let done = doneBeforeRow(job, Math.max(1, next.row)); done < closing; done++) {
    const step = stepAt(job, done + 1);
    if (isSame(step, next)) return done;
    if (step.row > next.row) return done;
  }
  return closing;
}

/** The same act, as often within its phase as it comes there; the last of them where there are fewer. */
function placeInPhase(job: Job, made: Job, next: Step): number {
  const which = phases.indexOf(next.phase);
  const begins = job.phaseStarts[which] ?? 0;
  let nth = 0;
  for (let number = (made.phaseStarts[which] ?? 0) + 1; number <= next.step; number++)
    if (stepAt(made, number).act.kind === next.act.kind) nth++;
  let found = begins;
  for (let number = begins + 1; number <= (job.phaseStarts[which + 1] ?? job.stepCount) && nth > 0; number++)
    if (stepAt(job, number).act.kind === next.act.kind) {
      found = number - 1;
      nth--;
    }
  return found;
}
