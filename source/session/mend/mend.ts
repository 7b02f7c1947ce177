/**
 * Work of the hands outside the plan: setting a slip right, and taking rows back, one thing at a time. What they cannot take
 * back is marked, with what to do instead (common practice).
 */
import { applyMove } from '../../bed/apply-move.ts';
import type { Bed } from '../../bed/bed.ts';
import type { ReverseMove } from '../../bed/move.ts';
import { isHandMove, type Move } from '../../bed/move.ts';
import { applyReverse, type ReverseFault } from '../../bed/reverse-move.ts';
import { type Result, succeed } from '../../shared/result.ts';
import { acts } from '../../steps/acts.ts';
import type { Job } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import type { Slip } from './slip.ts';

export type Irreversible =
  /** A cut end stays cut: the yarn is joined, with a tail to hide. */
  | { readonly why: 'cut'; readonly yarn: string }
  /** Loops off the needles wait on their waste rows, and are hung again one by one. */
  | { readonly why: 'off-the-needles' }
  /** Waste that is out holds nothing any more: the loops must be caught before they run. */
  | { readonly why: 'released'; readonly what: 'ravel cord' | 'waste' }
  | { readonly why: 'drawn-through'; readonly yarn: string };

/** Why a step cannot be taken back as it was done; null where the hands can. */
export function irreversibleOf({ act, moves }: Step): Irreversible | null {
  const { final } = acts[act.kind];
  if (final === 'drawn-through' && 'yarn' in act) return { why: final, yarn: act.yarn };
  if (final === 'off-the-needles') return { why: final };
  for (const move of moves) {
    if (move.move === 'release') return { why: 'released', what: move.what };
    if (move.move === 'cut') return { why: 'cut', yarn: move.yarn };
  }
  return null;
}

export type MendMove = Move | ReverseMove;

/** What goes before or after the moves, with weights and with what hangs loose (common practice). */
export type Care =
  | { readonly is: 'weights-off'; readonly comb: boolean }
  | { readonly is: 'weights-on'; readonly comb: boolean; readonly left: string; readonly right: string }
  /** The loops move to other needles on a strand. */
  | { readonly is: 'hold-on-strand'; readonly loops: number }
  /** The cord is a piece of its own and comes to no harm: it waits. */
  | { readonly is: 'cord-aside'; readonly finished: boolean };

/** One thing to do with the hands. */
export interface HandStep {
  readonly moves: readonly MendMove[];
  /** What the row counter must show afterwards, and whether it has to be set by hand. */
  readonly row: number;
  readonly setsCounter: boolean;
  /** The planned step that it is, where it is one; null otherwise. */
  readonly planned: Step | null;
  readonly care: Care | null;
  readonly irreversible: Irreversible | null;
  /** Steps confirmed where the bed is then as the plan has it; null in between. */
  readonly done: number | null;
  /** Planned steps whose work hangs there then, slips among it, where the bed is none of the plan's; null where it is as before. */
  readonly stands: number | null;
}

/** Planned steps whose work hangs there after it; null where it changes nothing in that. */
export const standingAfter = ({ stands, done, planned }: HandStep): number | null =>
  done ?? stands ?? planned?.step ?? null;

export const handStep = (given: Pick<HandStep, 'moves' | 'row'> & Partial<HandStep>): HandStep => ({
  setsCounter: false,
  planned: null,
  care: null,
  irreversible: null,
  done: null,
  stands: null,
  ...given,
});

/** What will be seen of a slip that is kept. */
export type Trace =
  | 'eyelet-out-of-line'
  | 'eyelet-missing'
  | 'extra-eyelet'
  | 'wide-hole'
  | 'step-in-leading-edge'
  | 'step-in-trailing-edge'
  | 'hole-at-trailing-edge'
  | 'three-in-one'
  | 'loop-at-edge'
  | 'ladder'
  | 'stripe-too-high'
  | 'stripe-too-low'
  | 'strand-across'
  | 'wrong-colour';

export type How = 'now' | 'rip' | 'make-up';

/** A way to set a slip right, as steps that can be carried out on the bed as it is. */
export interface Mend {
  /** At once and without a trace; by ripping back to it; or kept, and made up for now. */
  readonly how: How;
  readonly steps: readonly HandStep[];
  /** Steps confirmed when the mend is done: the plan goes on from there. */
  readonly thenDone: number;
  readonly shows: readonly Trace[];
}

/** What the hands really did in place of the planned steps `from` + 1 … `through`: the bed is the plan's at both ends. */
export interface Detour {
  readonly from: number;
  readonly through: number;
  readonly parts: readonly { readonly moves: readonly Move[]; readonly row: number }[];
}

/** A slip that was set right, and how; a kept one shows in the bag. */
export interface SetRight {
  readonly slips: readonly Slip[];
  readonly how: How;
  /** Steps confirmed when it was done. */
  readonly done: number;
  /** Null where nothing is left of it. */
  readonly detour: Detour | null;
}

/** What a way back starts from: the plan that is followed, steps confirmed, and what was done otherwise. */
export interface Whereabouts {
  readonly job: Job;
  readonly done: number;
  readonly mends: readonly SetRight[];
}

const applyMend = (bed: Bed, move: MendMove): Result<Bed, ReverseFault> => {
  if ('undo' in move) return applyReverse(bed, move);
  return isHandMove(move) ? succeed(bed) : applyMove(bed, move);
};

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

/** The bed after one thing done with the hands, or what stands in the way; a cord laid aside is forgotten there. */
export function afterHandStep(bed: Bed, step: HandStep, stitches: number): Result<Bed, ReverseFault> {
  const after = applyMends(bed, step.moves);
  if (!after.ok) return after;
  const counter = step.setsCounter && bed.counter !== null ? step.row : after.value.counter;
  const loopsOff = step.care?.is === 'cord-aside' ? stitches : after.value.loopsOff;
  return succeed({ ...after.value, counter, loopsOff });
}
