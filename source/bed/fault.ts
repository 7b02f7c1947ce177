import type { Side } from './side.ts';

/** Why a move cannot be made on the bed as it is. */
export type BedFault =
  | { readonly code: 'bed/needle-off-bed'; readonly needle: string; readonly needleCount: number }
  | { readonly code: 'bed/needle-holds-loop'; readonly needle: string }
  | { readonly code: 'bed/needle-empty'; readonly needle: string }
  | { readonly code: 'bed/needle-out-of-work'; readonly needle: string }
  | { readonly code: 'bed/loop-out-of-work'; readonly needle: string }
  | { readonly code: 'bed/cast-on-ends-far'; readonly side: Side; readonly needle: string }
  | { readonly code: 'bed/feeder-empty'; readonly to: Side }
  | { readonly code: 'bed/feeder-full'; readonly yarn: string; readonly held: string }
  | { readonly code: 'bed/yarn-in-feeder'; readonly held: string }
  | { readonly code: 'bed/no-counter' }
  | { readonly code: 'bed/yarn-not-in-feeder'; readonly yarn: string; readonly held: string | null }
  | { readonly code: 'bed/yarn-not-here'; readonly yarn: string }
  | { readonly code: 'bed/carriage-already-there'; readonly side: Side }
  | { readonly code: 'bed/no-working-needles' }
  | { readonly code: 'bed/transfer-uneven'; readonly fromCount: number; readonly toCount: number }
  | { readonly code: 'bed/nothing-to-take-off' }
  | { readonly code: 'bed/bed-not-empty'; readonly stitchCount: number }
  | { readonly code: 'bed/loops-differ'; readonly loopsOff: number; readonly needleCount: number };
