/** Left and right are always the maker's, facing the bed. */
export type Side = 'left' | 'right';

export const opposite = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** One needle: out of the way, or taking part, with the loops it holds and the yarn of the newest. */
export interface Needle {
  readonly working: boolean;
  readonly loopCount: number;
  readonly yarn: string | null;
}

/** The bed as it is at one moment. `needles[0]` is the far left. */
export interface Bed {
  readonly needles: readonly Needle[];
  readonly carriage: Side;
  readonly feeder: string | null;
  readonly parked: ReadonlyMap<string, Side>;
  /** What the row counter shows: each pass turns it on by one. Null on a bed that has none. */
  readonly counter: number | null;
  /** Loops taken off and not yet hung again. */
  readonly loopsOff: number;
  /** Loops laid so far on empty working needles between the edges: eyelets. */
  readonly eyeletCount: number;
}

export const needleOutOfWork: Needle = { working: false, loopCount: 0, yarn: null };

/** An empty bed: every needle out of work, nothing in the feeder, and the row counter, where there is one, at 0. */
export function emptyBed(needleCount: number, carriage: Side, hasCounter = true): Bed {
  const needles = Array.from({ length: needleCount }, () => needleOutOfWork);
  const counter = hasCounter ? 0 : null;
  return { needles, carriage, feeder: null, parked: new Map(), counter, loopsOff: 0, eyeletCount: 0 };
}

/** The row counter once it has been turned on, or back, by so many passes. */
export const turned = ({ counter }: Bed, by: number): number | null =>
  counter === null ? null : Math.max(0, counter + by);

/** Places of the outermost needles that hold loops, and how many hold one (a doubled needle counts once). */
export function edgesOf(bed: Bed): {
  readonly left: number | null;
  readonly right: number | null;
  readonly stitchCount: number;
} {
  const holds = (needle: Needle): boolean => needle.loopCount > 0;
  const left = bed.needles.findIndex(holds);
  if (left < 0) return { left: null, right: null, stitchCount: 0 };
  return { left, right: bed.needles.findLastIndex(holds), stitchCount: bed.needles.filter(holds).length };
}

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
