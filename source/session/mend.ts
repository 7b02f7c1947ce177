import { applyMove } from '../bed/apply-move.ts';
import type { Bed } from '../bed/bed.ts';
import type { BedMove } from '../bed/move.ts';
import { applyReverse, type ReverseFault, type ReverseMove } from '../bed/reverse-move.ts';
import { type Result, succeed } from '../shared/result.ts';

export type MendMove = BedMove | ReverseMove;

/** One thing to do with the hands to set a slip right. */
export interface MendStep {
  readonly moves: readonly MendMove[];
  /** What the row counter must show afterwards, and whether it has to be turned back. */
  readonly row: number;
  readonly turnsCounterBack: boolean;
}

/** What will be seen of a slip that is kept. */
export type Trace =
  | 'eyelet-out-of-line'
  | 'wide-hole'
  | 'extra-eyelet'
  | 'step-in-leading-edge'
  | 'step-in-trailing-edge'
  | 'hole-at-trailing-edge'
  | 'wrong-colour';

/** A way to set a slip right, as steps that can be carried out on the bed as it is. */
export interface Mend {
  /** At once and without a trace; by ripping back to it; or kept, and made up for now. */
  readonly how: 'now' | 'rip' | 'make-up';
  /** Planned steps confirmed before the mend begins: the carriage has to come home for the tools. */
  readonly afterDone: number;
  readonly steps: readonly MendStep[];
  /** Steps confirmed when the mend is done: the plan goes on from there. */
  readonly thenDone: number;
  readonly shows: readonly Trace[];
}

const applyMend = (bed: Bed, move: MendMove): Result<Bed, ReverseFault> =>
  'undo' in move ? applyReverse(bed, move) : applyMove(bed, move);

/** The bed after moves in order, or the first fault; the bed given is never changed. */
export function applyMends(bed: Bed, moves: readonly MendMove[]): Result<Bed, ReverseFault> {
  let now = bed;
  for (const move of moves) {
    const next = applyMend(now, move);
    if (!next.ok) return next;
    now = next.value;
  }
  return succeed(now);
}
