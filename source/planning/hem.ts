/**
 * A hem, so that the mouth does not roll: plain rows picked up along the mouth edge while the strip still lies open, a loose row
 * to fold on, as many rows again, and the picked-up loops hung on the same needles; a loose row through both and a chain
 * close it on the inside (common practice, from memory, as folded neckbands are made before the last seam). It takes a loop
 * of the edge for each stitch of the mouth's own length, and no more than one from a row. Where the bed is too short for all of
 * them it is knitted in sections side by side; their ends are sewn together like the two at the graft.
 */
import type { Brief } from './brief.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthBelowCordCm, depthCm, mouthMm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';
import { endTailCm } from './tails.ts';

export interface Hem {
  readonly yarn: string;
  /** Plain rows of each layer. */
  readonly rows: number;
  /** Loops picked up in all, and those of each section, from the start of the strip to its end. */
  readonly stitches: number;
  readonly sections: readonly number[];
  /** Passes of each section: two layers, the row of the fold and the one that closes it. */
  readonly passes: number;
  /** What it adds above the old edge: a layer and half the row of the fold. */
  readonly heightCm: number;
  /** From the fold, which is the mouth now, down to the cord line. */
  readonly foldToCordCm: number;
  /** With an end of yarn at the start and at the end of each section, which sews it to the next. */
  readonly metres: number;
}

/** How much deeper the bag is for its hem, in cm; 0 without one. */
export const hemHeightCm = ({ hem }: Pick<Brief, 'hem'>, { rowMm }: Pick<Gauge, 'rowMm'>): number =>
  hem ? ((hem.rows + 0.5) * rowMm) / 10 : 0;

/** Finished, sewn depth in cm, the hem included. */
export const bagDepthCm = (brief: Pick<Brief, 'hem'>, counts: Counts, gauge: Gauge): number =>
  depthCm(counts, gauge) + hemHeightCm(brief, gauge);

export function planHem(brief: Brief, gauge: Gauge, counts: Counts): Hem | null {
  const { hem, edgeStitches } = brief;
  if (!hem) return null;
  const knittedRows = counts.rows - 1;
  const stitches = Math.min(knittedRows, Math.max(2, Math.round(mouthMm(counts, gauge) / gauge.stitchMm)));
  const sections = evenParts(stitches, Math.ceil(stitches / usableNeedles(brief)));
  const passes = 2 * hem.rows + 2;
  const heightCm = hemHeightCm(brief, gauge);
  const aboveCordCm = depthCm(counts, gauge) - depthBelowCordCm(counts, edgeStitches, gauge);
  return {
    yarn: hem.yarn,
    rows: hem.rows,
    stitches,
    sections,
    passes,
    heightCm,
    foldToCordCm: heightCm + aboveCordCm,
    metres: (passes * stitches * gauge.loopLengthMm) / 1000 + (sections.length * 2 * endTailCm) / 100,
  };
}

/** `total` in so many parts that differ by one at the most. */
export const evenParts = (total: number, parts: number): readonly number[] =>
  Array.from(
    { length: parts },
    (_, i) => Math.floor(((i + 1) * total) / parts) - Math.floor((i * total) / parts),
  );
