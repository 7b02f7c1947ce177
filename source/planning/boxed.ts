/**
 * A bottom with boxed corners. The bottom seam closes a flat bag W wide and D deep; each corner is then folded so that the seam lies
 * on the side's fold, and sewn across at right angles to it, b long, b/2 from the tip. That leaves a base (W − b) × b and sides
 * D − b/2 high; inside it is still 2·W round (plane geometry). The thread is twice each seam and 15 cm to hold on to
 * (common practice, no source).
 */
import type { BagWish, Brief } from './brief.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthBelowCordCm, widthCm } from './geometry.ts';
import { bagDepthCm } from './hem.ts';
import { endTailCm } from './tails.ts';

export interface BoxedBottom {
  readonly baseWidthCm: number;
  /** Front to back: b. */
  readonly baseDepthCm: number;
  /** From the base to the mouth. */
  readonly sideCm: number;
  readonly sideBelowCordCm: number;
  /** Each of the two seams across a corner, how far from the tip of the corner, and its thread. */
  readonly cornerSeamCm: number;
  readonly fromTipCm: number;
  readonly cornerTailCm: number;
}

export function boxedBottom(brief: Brief, gauge: Gauge, counts: Counts): BoxedBottom | null {
  const { boxedCm, edgeStitches } = brief;
  if (boxedCm === 0) return null;
  return {
    baseWidthCm: widthCm(counts, gauge) - boxedCm,
    baseDepthCm: boxedCm,
    sideCm: bagDepthCm(brief, counts, gauge) - boxedCm / 2,
    sideBelowCordCm: depthBelowCordCm(counts, edgeStitches, gauge) - boxedCm / 2,
    cornerSeamCm: boxedCm,
    fromTipCm: boxedCm / 2,
    cornerTailCm: 2 * boxedCm + endTailCm,
  };
}

/** A boxed bottom stays below this: there would be no base left, or no side below the cord. */
export const boxedBelowCm = ({ edgeStitches }: Brief, gauge: Gauge, counts: Counts): number =>
  Math.min(widthCm(counts, gauge), 2 * depthBelowCordCm(counts, edgeStitches, gauge));

export const canBeBoxed = (brief: Brief, gauge: Gauge, counts: Counts): boolean =>
  brief.boxedCm === 0 || brief.boxedCm < boxedBelowCm(brief, gauge, counts);

/** Thread for both corners, in cm. */
export const cornerThreadCm = (boxed: BoxedBottom | null): number => (boxed ? 2 * boxed.cornerTailCm : 0);

type BoxedContents = Omit<Extract<BagWish, { readonly by: 'contents' }>, 'by' | 'heightCm'>;

/**
 * How far the longer side of a thing reaches. Whatever is t thick and g round reaches g/2 − t at the least, as a box does; and
 * t itself where it is round (plane geometry).
 */
const reachCm = ({ girthCm, thicknessCm }: BoxedContents): number =>
  Math.max(thicknessCm, girthCm / 2 - thicknessCm);

/** The flat width whose base the thing can stand on: lengthwise, or across where the base is so deep. 0 for a flat bag. */
export function standingWidthCm(contents: BoxedContents, boxedCm: number): number {
  if (boxedCm === 0) return 0;
  const reach = reachCm(contents);
  return boxedCm + (boxedCm >= reach ? contents.thicknessCm : reach);
}
