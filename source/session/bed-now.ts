/** The bed as it is now, in the middle of a way and after one was left too, in the words of a step's `after`. */
import { type Bed, edgesOf } from '../bed/bed.ts';
import { formatNeedle } from '../bed/needles.ts';
import { stepAt } from '../steps/job.ts';
import type { BedAfter } from '../steps/step.ts';
import type { Session } from './session.ts';

/** Null before the first step. */
export function bedNow({ job, done, way, adrift }: Session): BedAfter | null {
  const bed = way?.bed ?? adrift;
  const planned = done === 0 ? null : stepAt(job, done).after;
  return bed ? { ...shownOf(bed), shapings: planned?.shapings ?? 0 } : planned;
}

export function shownOf(bed: Bed): Omit<BedAfter, 'shapings'> {
  const { left, right, stitchCount } = edgesOf(bed);
  const name = (place: number | null): string | null =>
    place === null ? null : formatNeedle(bed.needles.length, place);
  const { carriage, feeder, parked, counter } = bed;
  return { left: name(left), right: name(right), stitches: stitchCount, carriage, feeder, parked, counter };
}
