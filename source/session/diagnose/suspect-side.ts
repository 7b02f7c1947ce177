import type { BedMove } from '../../bed/move.ts';
import { parseNeedle } from '../../bed/needles.ts';
import { opposite } from '../../bed/side.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { Place } from '../locate/locate.ts';
import type { Seen } from '../locate/seen.ts';
import type { Diagnosis } from './slip.ts';
import { onBed, type Suspect, unsaid } from './suspect.ts';

/** All is right but the side of the carriage. */
export function wrongSide(job: Job, seen: Seen): readonly Suspect[] {
  if (seen.carriage === undefined) return [];
  const at = (place: Place): Diagnosis | null => {
    if (!onBed(place)) return null;
    const { done, looks } = place;
    // Crossing once more turns the row counter on.
    const { counter } = stepAt(job, done).after;
    const moves: readonly BedMove[] = [
      { move: 'slip', to: looks.carriage },
      ...(counter === null ? [] : [{ move: 'counter', rows: counter } as const]),
    ];
    const steps = [{ moves, row: looks.rowCounter, turnsCounterBack: false }];
    return {
      ...unsaid,
      slip: 'carriage-wrong-side',
      place,
      row: looks.rowCounter,
      mends: [{ how: 'now', afterDone: done, steps, thenDone: done, shows: [] }],
    };
  };
  return [{ withoutSlip: { ...seen, carriage: opposite(seen.carriage) }, at }];
}

/** Left and right change places: the two edges, the letters of the needles, or both and the carriage. */
export function swappedSides(job: Job, seen: Seen): readonly Suspect[] {
  const { left, right, carriage } = seen;
  if (!left && !right) return [];
  const at = (place: Place): Diagnosis | null =>
    onBed(place) ? { ...unsaid, slip: 'sides-swapped', place, row: place.looks.rowCounter, mends: [] } : null;
  const mirrored = { ...seen, left: otherHalf(right), right: otherHalf(left) };
  return [
    { ...seen, left: right, right: left },
    { ...seen, left: otherHalf(left), right: otherHalf(right) },
    mirrored,
    ...(carriage ? [{ ...mirrored, carriage: opposite(carriage) }] : []),
  ]
    .filter((one) => [one.left, one.right].every((name) => !name || isOnBed(job, name)))
    .map((withoutSlip) => ({ withoutSlip, at }));
}

const isOnBed = (job: Job, name: string): boolean => parseNeedle(job.plan.brief.bed.needles, name) !== null;

const halves: Readonly<Record<string, string>> = { L: 'R', R: 'L' };

const otherHalf = <N extends string | null | undefined>(name: N): N =>
  (name ? name.replace(/^[LR]/, (half) => halves[half] ?? half) : name) as N;
