import { fail, type Result, succeed } from '../shared/result.ts';
import { roundsInAll, stepsBeforeRound } from './cord-count.ts';
import { stepsBeforeStitch } from './graft.ts';
import { type Job, phasesOf, stepAt } from './job.ts';
import { partsOfRow } from './outline.ts';
import { stepsBeforeBar } from './seam.ts';
import { type Phase, phases } from './step.ts';

/** Things that are counted through a bag: a stitch is one of the graft, a bar of the seam, a round of the cord, a hole of its threading. */
export type NumberedPlace = 'step' | 'stripe' | 'row' | 'move' | 'stitch' | 'bar' | 'round' | 'hole';

/** A place in the job that a maker can name. Numbers count from 1. */
export type Landmark =
  | { readonly at: 'phase'; readonly phase: Phase }
  | { readonly at: NumberedPlace; readonly number: number };

export type LandmarkFault =
  | {
      readonly code: 'steps/no-such-place';
      readonly what: NumberedPlace;
      readonly number: number;
      readonly most: number;
    }
  /** A part that not every bag has. */
  | { readonly code: 'steps/no-such-phase'; readonly phase: Phase };

/** Steps confirmed when the landmark is what comes next: the row about to be knitted, the move about to be made. */
export function doneBefore(job: Job, landmark: Landmark): Result<number, LandmarkFault> {
  if (landmark.at === 'phase') {
    const { phase } = landmark;
    return phasesOf(job.plan).includes(phase)
      ? succeed(doneBeforePhase(job, phase))
      : fail({ code: 'steps/no-such-phase', phase });
  }
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
      return succeed(doneBeforeShaping(job, number));
    case 'stitch':
      return succeed(doneBeforePhase(job, 'graft') + stepsBeforeStitch(number));
    case 'bar':
      return succeed(doneBeforePhase(job, 'seam') + stepsBeforeBar(number));
    case 'round':
      return succeed(doneBeforePhase(job, 'cord') + stepsBeforeRound(job.outline, number));
    case 'hole':
      return succeed(doneBeforeHole(job, number));
  }
}

function greatest({ plan, stepCount, outline }: Job, what: NumberedPlace): number {
  switch (what) {
    case 'step':
      return stepCount;
    case 'stripe':
      return plan.stripes.length;
    case 'row':
      return plan.knittedRows;
    case 'move':
      return plan.shapings;
    case 'stitch':
      return plan.stitches;
    case 'bar':
      return plan.seam.barsPerSide;
    case 'round':
      return roundsInAll(outline);
    case 'hole':
      return plan.eyelets.used.length * plan.cord.draws;
  }
}

/** The holes of a second cord are counted on from the first's; a step threads two. */
function doneBeforeHole(job: Job, number: number): number {
  let holes = 0;
  let done = doneBeforePhase(job, 'cord');
  for (; done < job.stepCount; done++) {
    if (stepAt(job, done + 1).act.kind === 'thread-eyelets') holes += 2;
    if (holes >= number) break;
  }
  return done;
}

const doneBeforePhase = ({ phaseStarts }: Job, phase: Phase): number =>
  phaseStarts[phases.indexOf(phase)] ?? 0;

/** Steps before the first that belongs to `row`, threading its yarn included. */
export function doneBeforeRow(job: Job, row: number): number {
  if (row === job.plan.knittedRows) return doneBeforePhase(job, 'closing-row');
  return doneBeforePhase(job, 'stripes') + (job.outline.rowStart[row] ?? 0);
}

/** Steps before the increase of shaping move `number`. */
export function doneBeforeShaping(job: Job, number: number): number {
  const row = number * job.plan.brief.shapeEveryRows;
  const { stepCount, movesWeights } = partsOfRow(job.outline, row);
  return doneBeforeRow(job, row) + stepCount - (movesWeights ? 1 : 0) - 2;
}
