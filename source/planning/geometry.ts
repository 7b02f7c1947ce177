/**
 * The slanting strip as a tube. Each shaping move shifts both edges by one stitch, so once round the tube leads K stitches
 * along the rows and T rows along the columns. Columns that lean by φ are not at right angles to the rows:
 * C² = (K·w)² + (T·h)² + 2·K·w·T·h·sin φ. The flat width is half of C, the depth the strip's area N·w·T·h·cos φ over C,
 * less the one stitch that the bottom seam takes (plane geometry, no source needed; that plain knitting of twisty yarn
 * leans is documented: ISO 16322).
 */
import type { LeaningStitch } from './gauge.ts';

/** What fixes the size of a bag. `rows` counts round the tube, the grafted row included. */
export interface Counts {
  readonly stitches: number;
  readonly rows: number;
  readonly shapeEveryRows: number;
}

type Round = Omit<Counts, 'stitches'>;

/** Shaping moves in all: one after every `shapeEveryRows` rows, but none after the grafted row. */
export const shapingsIn = ({ rows, shapeEveryRows }: Round): number => rows / shapeEveryRows - 1;

/** From a stitch to another so many stitches and rows away, in mm; stitches count towards the leading edge. */
export function distanceMm(
  stitches: number,
  rows: number,
  { stitchMm, rowMm, skewRad }: Omit<LeaningStitch, 'learned'>,
): number {
  const [along, up] = [stitches * stitchMm, rows * rowMm];
  return Math.sqrt(along ** 2 + up ** 2 + 2 * along * up * Math.sin(skewRad));
}

/** As `distanceMm` along an edge of the strip, which finished bags may have shown to be longer or shorter. */
export const alongEdgeMm = (stitches: number, rows: number, size: LeaningStitch): number =>
  distanceMm(stitches, rows, size) * (size.learned?.widthFactor ?? 1);

/** Mouth circumference in mm. */
export const mouthMm = (counts: Round, size: LeaningStitch): number =>
  alongEdgeMm(shapingsIn(counts), counts.rows, size);

/** Flat, finished width in cm. */
export const widthCm = (counts: Round, size: LeaningStitch): number => mouthMm(counts, size) / 20;

/** How deep one stitch across the strip lies in the finished bag, in cm. */
export function stitchDepthCm(counts: Round, size: LeaningStitch): number {
  const areaMm2 = size.stitchMm * counts.rows * size.rowMm * Math.cos(size.skewRad);
  const onceRoundMm = distanceMm(shapingsIn(counts), counts.rows, size);
  return ((areaMm2 / onceRoundMm) * (size.learned?.depthFactor ?? 1)) / 10;
}

/** Finished, sewn depth in cm. */
export const depthCm = (counts: Counts, size: LeaningStitch): number =>
  (counts.stitches - 1) * stitchDepthCm(counts, size);

/** Depth below the cord, which runs through eyelets half a stitch past the edge stitches, in cm. */
export const depthBelowCordCm = (counts: Counts, edgeStitches: number, size: LeaningStitch): number =>
  (counts.stitches - 1 - (edgeStitches + 0.5)) * stitchDepthCm(counts, size);

/** Angle of the stripes with the bottom edge, in degrees. */
export function stripeAngleDeg(counts: Round, { stitchMm, rowMm, skewRad }: LeaningStitch): number {
  const up = counts.rows * rowMm;
  const along = shapingsIn(counts) * stitchMm + up * Math.sin(skewRad);
  return (Math.atan2(up * Math.cos(skewRad), along) * 180) / Math.PI;
}
