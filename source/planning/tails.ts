/**
 * Lengths to leave for the hand sewing. Graft: common practice is three times the width as the work lies on the
 * needles; the model is the yarn of one row and 10 % more. Seam: twice its length. Each has 15 cm to hold on to
 * (common practice, no source).
 */
import type { Brief } from './brief.ts';
import type { Gauge } from './gauge.ts';

/** Left at every start and end of a yarn, and to hold on to while sewing. */
export const endTailCm = 15;

export interface GraftTail {
  /** Pairs of entries of the needle: each loop but two is entered twice. */
  readonly entries: number;
  readonly ruleCm: number;
  readonly modelCm: number;
  /** The larger of the two, and a hand's hold. */
  readonly tailCm: number;
  /** The graft ends at the bottom, so its tail can go on to sew the seam. */
  readonly goesOnToSeam: boolean;
}

export function planGraft(brief: Brief, gauge: Gauge, stitches: number): GraftTail {
  const ruleCm = (3 * stitches * brief.bed.pitchMm) / 10;
  const modelCm = (1.1 * stitches * gauge.loopLengthMm) / 10;
  return {
    entries: 2 * stitches - 1,
    ruleCm,
    modelCm,
    tailCm: Math.max(ruleCm, modelCm) + endTailCm,
    goesOnToSeam: brief.homeSide !== brief.crawl,
  };
}

/** Left of the ravel cord at each side, to pull it out by (common practice, no source). */
export const ravelEndCm = 20;

/** The ravel cord knits one row; a tenth is kept in hand. */
export const ravelCordCm = (gauge: Gauge, stitches: number): number =>
  (1.1 * stitches * gauge.loopLengthMm) / 10 + 2 * ravelEndCm;

export interface SeamTail {
  readonly barsPerSide: number;
  readonly lengthCm: number;
  readonly tailCm: number;
}

/** The bottom, half the rows of the tube facing the other half. */
export function planSeam(rows: number, widthCm: number): SeamTail {
  return { barsPerSide: rows / 2, lengthCm: widthCm, tailCm: 2 * widthCm + endTailCm };
}

/** What is cut after the closing row: the graft's tail and, where it goes on to sew the bottom, the seam's. */
export const closingTailCm = ({
  graft,
  seam,
}: {
  readonly graft: GraftTail;
  readonly seam: SeamTail;
}): number => graft.tailCm + (graft.goesOnToSeam ? seam.tailCm : 0);

/** A bag is lined in two pieces as wide as it is and as deep as it is below the cord, with a seam all round (common practice, no source). */
const liningSeamCm = 1;

export interface Lining {
  readonly pieces: 2;
  /** Of each piece as it is cut. */
  readonly widthCm: number;
  readonly depthCm: number;
  /** Within these, along the sides, the bottom, and the top that is turned over. */
  readonly seamCm: number;
}

export const planLining = (widthCm: number, depthBelowCordCm: number): Lining => ({
  pieces: 2,
  widthCm: widthCm + 2 * liningSeamCm,
  depthCm: depthBelowCordCm + 2 * liningSeamCm,
  seamCm: liningSeamCm,
});
