import { fail, type Result, succeed } from '../shared/result.ts';
import type { Job } from './job.ts';
import { partsOfRow } from './outline.ts';
import { type Phase, phases } from './step.ts';

/** A place in the job that a maker can name. Numbers count from 1. */
export type Landmark =
  | { readonly at: 'phase'; readonly phase: Phase }
  | { readonly at: 'step' | 'stripe' | 'row' | 'move'; readonly number: number };

export interface LandmarkFault {
  readonly code: 'steps/no-such-place';
  readonly what: 'step' | 'stripe' | 'row' | 'move';
  readonly number: number;
  readonly most: number;
}

/** Steps confirmed when the landmark is what comes next: the row about to be knitted, the move about to be made. */
export function doneBefore(job: Job, landmark: Landmark): Result<number, LandmarkFault> {
  if (landmark.at === 'phase') return succeed(job.phaseStarts[phases.indexOf(landmark.phase)] ?? 0);
  const { number } = landmark;
  const most = greatest(job, landmark.at);
  if (!Number.isInteger(number) || number < 1 || number > most) {
    return fail({ code: 'steps/no-such-place', what: landmark.at, number, most });
  }
  switch (landmark.at) {
    case 'step':
      return succeed(number - 1);
    case 'stripe':
      return succeed(doneBeforeRow(job, job.plan.stripes[number - 1]?.firstRow ?? 1));
    case 'row':
      return succeed(doneBeforeRow(job, number));
    case 'move':
      return succeed(doneBeforeMove(job, number));
  }
}

function greatest({ plan, stepCount }: Job, what: LandmarkFault['what']): number {
  switch (what) {
    case 'step':
      return stepCount;
    case 'stripe':
      return plan.stripes.length;
    case 'row':
      return plan.knittedRows;
    case 'move':
      return plan.shapings;
  }
}

/** Steps before the first that belongs to `row`, threading its yarn included. */
export function doneBeforeRow({ outline, phaseStarts, plan }: Job, row: number): number {
  if (row === plan.knittedRows) return phaseStarts[phases.indexOf('closing-row')] ?? 0;
  return (phaseStarts[phases.indexOf('stripes')] ?? 0) + (outline.rowStart[row] ?? 0);
}

/** Steps before the increase of shaping move `number`. */
export function doneBeforeMove(job: Job, number: number): number {
  const row = number * job.plan.brief.shapeEveryRows;
  const { stepCount, movesWeights } = partsOfRow(job.outline, row);
  return doneBeforeRow(job, row) + stepCount - (movesWeights ? 1 : 0) - 2;
}
