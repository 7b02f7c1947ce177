/**
 * The slanting strip as a tube. Each shaping move shifts both edges by one stitch, so once round the tube is the
 * vector (K·w, T·h): the mouth is its length, the flat width half of that, and the depth is the strip's area over
 * it, less the one stitch that the bottom seam takes (plane geometry, no source needed).
 */
import type { Gauge } from './gauge.ts';

/** What fixes the size of a bag. `rows` counts round the tube, the grafted row included. */
export interface Counts {
  readonly stitches: number;
  readonly rows: number;
  readonly shapeEveryRows: number;
}

type StitchSize = Pick<Gauge, 'stitchMm' | 'rowMm'>;

/** Shaping moves in all: one after every `shapeEveryRows` rows, but none after the grafted row. */
export const shapingsIn = ({ rows, shapeEveryRows }: Omit<Counts, 'stitches'>): number =>
  rows / shapeEveryRows - 1;

/** Mouth circumference in mm. */
export const mouthMm = (counts: Omit<Counts, 'stitches'>, { stitchMm, rowMm }: StitchSize): number =>
  Math.hypot(shapingsIn(counts) * stitchMm, counts.rows * rowMm);

/** Flat, finished width in cm. */
export const widthCm = (counts: Omit<Counts, 'stitches'>, size: StitchSize): number =>
  mouthMm(counts, size) / 20;

/** How deep one stitch across the strip lies in the finished bag, in cm. */
export const stitchDepthCm = (counts: Omit<Counts, 'stitches'>, size: StitchSize): number =>
  (size.stitchMm * counts.rows * size.rowMm) / mouthMm(counts, size) / 10;

/** Finished, sewn depth in cm. */
export const depthCm = (counts: Counts, size: StitchSize): number =>
  (counts.stitches - 1) * stitchDepthCm(counts, size);

/** Depth below the cord, which runs through eyelets half a stitch past the edge stitches, in cm. */
export const depthBelowCordCm = (counts: Counts, edgeStitches: number, size: StitchSize): number =>
  (counts.stitches - 1 - (edgeStitches + 0.5)) * stitchDepthCm(counts, size);

/** Angle of the stripes with the bottom edge, in degrees. */
export const stripeAngleDeg = (counts: Omit<Counts, 'stitches'>, { stitchMm, rowMm }: StitchSize): number =>
  (Math.atan2(counts.rows * rowMm, shapingsIn(counts) * stitchMm) * 180) / Math.PI;
