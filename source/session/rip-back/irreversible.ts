/** What the hands cannot take back, and what to do instead (common practice). */
import { acts } from '../../steps/acts.ts';
import type { Step } from '../../steps/step.ts';

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
