import type { Side } from './side.ts';

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
  /** Loops taken off and not yet hung again. */
  readonly loopsOff: number;
  /** Loops laid so far on empty working needles between the edges: eyelets. */
  readonly eyeletCount: number;
}

export const restingNeedle: Needle = { working: false, loopCount: 0, yarn: null };

/** An empty bed: every needle resting, nothing in the feeder. */
export function emptyBed(needleCount: number, carriage: Side): Bed {
  const needles = Array.from({ length: needleCount }, () => restingNeedle);
  return { needles, carriage, feeder: null, parked: new Map(), loopsOff: 0, eyeletCount: 0 };
}

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
