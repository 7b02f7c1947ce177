import { applyMove } from '../../source/bed/apply-move.ts';
import { type Bed, edgesOf, emptyBed } from '../../source/bed/bed.ts';
import { type BedMove, isHandMove } from '../../source/bed/move.ts';
import { formatNeedle } from '../../source/bed/needles.ts';
import { allSteps, type Job } from '../../source/steps/job.ts';
import type { BedAfter, Step } from '../../source/steps/step.ts';

/** One step carried out on a bed, move by move; `passes` holds the bed after each knitted pass. */
export interface Done {
  readonly step: Step;
  readonly bed: Bed;
  readonly passes: readonly Bed[];
}

/** Carries out every move of a job on a bed that starts empty; a move that cannot be made throws. */
export function* simulate(job: Job): Generator<Done> {
  let bed = emptyBed(job.plan.brief.bed.needles, 'left', !job.plan.brief.bed.without.includes('counter'));
  for (const step of allSteps(job)) {
    const passes: Bed[] = [];
    for (const move of step.moves) {
      if (isHandMove(move)) continue;
      bed = mustApply(bed, move, step);
      if (move.move === 'knit') passes.push(bed);
    }
    yield { step, bed, passes };
  }
}

function mustApply(bed: Bed, move: BedMove, step: Step): Bed {
  const outcome = applyMove(bed, move);
  if (!outcome.ok)
    throw new Error(`step ${step.step}: ${JSON.stringify(outcome.fault)} at ${JSON.stringify(move)}`);
  return outcome.value;
}

/** What the bed itself shows, in the words of a step's `after`; shaping moves cannot be seen on it. */
export function seenOn(bed: Bed): Omit<BedAfter, 'shapings'> {
  const { left, right, stitchCount } = edgesOf(bed);
  const name = (place: number | null): string | null =>
    place === null ? null : formatNeedle(bed.needles.length, place);
  const { carriage, feeder, parked, counter } = bed;
  return { left: name(left), right: name(right), stitches: stitchCount, carriage, feeder, parked, counter };
}
