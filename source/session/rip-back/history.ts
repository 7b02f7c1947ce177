/** What the hands really did between two places, slips that were kept and made up for among it, and the bed that it left. */

import type { Bed } from '../../bed/bed.ts';
import type { Move } from '../../bed/move.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { acts } from '../../steps/acts.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { applyMends, type Detour, type MendMove, type Whereabouts } from '../mend/mend.ts';
import { bedAtPlace } from './bed-at-place.ts';

/** Kept slips that lie behind, in working order. */
export const detoursBy = ({ mends }: Pick<Whereabouts, 'mends'>, done: number): readonly Detour[] =>
  mends
    .flatMap(({ detour }) => (detour && detour.through <= done ? [detour] : []))
    .toSorted((a, b) => a.from - b.from);

/**
 * The bed at a place, slips that were kept counted in: until the next row is knitted over them, needles may hold more loops or
 * fewer than the plan has there.
 */
export function bedReally(job: Job, detours: readonly Detour[], done: number): Bed {
  const last = detours.findLast(({ through }) => through <= done);
  const since = last ? stepsBetween(job, last.through, done) : [];
  if (!last || since.some(({ act }) => acts[act.kind].pass)) return bedAtPlace(job, done);
  const before = detours.slice(0, detours.indexOf(last));
  const made = last.parts.reduce(
    (bed, { moves }) => afterwards(bed, moves),
    bedReally(job, before, last.from),
  );
  const { counter } = bedAtPlace(job, last.through);
  return since.reduce((bed, { moves }) => afterwards(bed, moves), { ...made, counter });
}

/** The steps after `from`, through the first that is a row. */
function stepsBetween(job: Job, from: number, through: number): readonly Step[] {
  const steps: Step[] = [];
  for (let number = from + 1; number <= through; number++) {
    const step = stepAt(job, number);
    steps.push(step);
    if (acts[step.act.kind].pass) break;
  }
  return steps;
}

/** One thing that the hands did, on the bed as it was then. */
export interface Done {
  readonly before: Bed;
  readonly moves: readonly Move[];
  readonly step: Step | null;
  readonly rowBefore: number;
  readonly row: number;
  /** Steps confirmed before it; null in the middle of a detour. */
  readonly doneBefore: number | null;
}

export function historyOf(
  job: Job,
  detours: readonly Detour[],
  from: number,
  through: number,
): readonly Done[] {
  const history: Done[] = [];
  let bed = bedReally(job, detours, from);
  let row = rowAt(job, from);
  const add = (
    moves: readonly Move[],
    rowAfter: number,
    step: Step | null,
    doneBefore: number | null,
  ): void => {
    history.push({ before: bed, moves, step, rowBefore: row, row: rowAfter, doneBefore });
    bed = afterwards(bed, moves);
    row = rowAfter;
  };
  for (let done = from; done < through; ) {
    const detour = detours.find(
      (one) => one.from === done && !(one.from === one.through && one.from === from),
    );
    for (const [i, part] of (detour?.parts ?? []).entries())
      add(part.moves, part.row, null, i === 0 ? done : null);
    if (detour) bed = { ...bed, counter: bedAtPlace(job, detour.through).counter };
    if (detour && detour.through > done) {
      done = detour.through;
      continue;
    }
    const step = stepAt(job, done + 1);
    add(step.moves, step.row, step, done);
    done++;
  }
  for (const detour of detours.filter((one) => one.from === through && one.through === through))
    for (const [i, part] of detour.parts.entries()) add(part.moves, part.row, null, i === 0 ? through : null);
  return history;
}

/** Carries out moves that are known to be possible; a fault is our own bug. */
export function afterwards(bed: Bed, moves: readonly MendMove[]): Bed {
  const after = applyMends(bed, moves);
  if (!after.ok) throw new Error(`${JSON.stringify(after.fault)} at ${JSON.stringify(moves)}`);
  return after.value;
}

/** What takes back all of these moves, when they were made on `bed`. */
export function takingBack(bed: Bed, moves: readonly Move[]): readonly MendMove[] {
  const back: MendMove[] = [];
  let now = bed;
  for (const move of moves) {
    const reverse = reverseOf(now, move);
    if (reverse) back.push(reverse);
    now = afterwards(now, [move]);
  }
  return back.toReversed();
}
