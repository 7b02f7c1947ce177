/**
 * The way back: every step undone with the hands, newest first. Rows come out one at a time and every loop is caught;
 * the carriage crosses without knitting and the row counter is turned back (common practice). What the hands cannot
 * take back is marked, with what to do instead.
 */
import type { Bed } from '../../bed/bed.ts';
import type { ReverseMove } from '../../bed/reverse-move.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { afterMoves, bedAtPlace } from './bed-at-place.ts';
import { type Irreversible, irreversibleOf } from './irreversible.ts';

/** One step back: it undoes one thing on the bed. */
export interface RipStep {
  /** The step that is undone. */
  readonly undoes: Step;
  /** Steps still confirmed when it is done. */
  readonly done: number;
  /** What the row counter must show then, and whether it has to be turned back. */
  readonly row: number;
  readonly turnsCounterBack: boolean;
  readonly moves: readonly ReverseMove[];
  readonly irreversible: Irreversible | null;
}

export interface RipBack {
  readonly fromDone: number;
  readonly toDone: number;
  readonly steps: readonly RipStep[];
  /** Main-yarn rows left on the work. */
  readonly row: number;
  readonly irreversible: readonly RipStep[];
}

export type RipBackFault =
  | { readonly code: 'rip-back/no-such-place'; readonly done: number; readonly stepCount: number }
  | { readonly code: 'rip-back/not-behind'; readonly fromDone: number; readonly toDone: number };

/** The way from `fromDone` confirmed steps back to `toDone`; steps that leave nothing to undo are passed over. */
export function ripBack(job: Job, fromDone: number, toDone: number): Result<RipBack, RipBackFault> {
  const { stepCount } = job;
  const stranger = [fromDone, toDone].find((done) => !Number.isInteger(done) || done < 0 || done > stepCount);
  if (stranger !== undefined) return fail({ code: 'rip-back/no-such-place', done: stranger, stepCount });
  if (toDone >= fromDone) return fail({ code: 'rip-back/not-behind', fromDone, toDone });
  const steps = wayBack(job, fromDone, toDone);
  return succeed({
    fromDone,
    toDone,
    steps,
    row: rowAt(job, toDone),
    irreversible: steps.filter((step) => step.irreversible !== null),
  });
}

function wayBack(job: Job, fromDone: number, toDone: number): readonly RipStep[] {
  const undone: RipStep[] = [];
  let bed = bedAtPlace(job, toDone);
  let row = rowAt(job, toDone);
  for (let number = toDone + 1; number <= fromDone; number++) {
    const step = stepAt(job, number);
    const moves = takingBack(bed, step);
    const turnsCounterBack = step.row > row;
    const irreversible = irreversibleOf(step);
    // The first in working order is the last on the way back: it ends where the maker wants to be.
    const done = undone.length === 0 ? toDone : number - 1;
    if (moves.length > 0) undone.push({ undoes: step, done, row, turnsCounterBack, moves, irreversible });
    bed = afterMoves(bed, step.moves);
    row = step.row;
  }
  return undone.toReversed();
}

/** What takes back all of a step's moves, when it was done on `bed`. */
function takingBack(bed: Bed, { moves }: Pick<Step, 'moves'>): readonly ReverseMove[] {
  const back: ReverseMove[] = [];
  let now = bed;
  for (const move of moves) {
    const reverse = reverseOf(now, move);
    if (reverse) back.push(reverse);
    now = afterMoves(now, [move]);
  }
  return back.toReversed();
}
