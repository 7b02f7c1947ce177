/**
 * Gauge and loop length. Loop length of plain knitting follows from its gauge: l = √(ks · w · h), with ks by
 * how the swatch has rested (D. L. Munden 1959, Journal of the Textile Institute 50, T448; fully-relaxed values by
 * Knapton and others). A measured loop length always beats the model.
 */
import type { RelaxedState, Swatch } from './brief.ts';

/** Constants of plain knitting: courses kc and wales kw, each times the loop length; ks = kc · kw. */
export const loopConstants: Readonly<
  Record<RelaxedState, { readonly kc: number; readonly kw: number; readonly ks: number }>
> = {
  'dry-relaxed': { kc: 5.0, kw: 3.8, ks: 19.0 },
  'wet-relaxed': { kc: 5.3, kw: 4.1, ks: 21.6 },
  'fully-relaxed': { kc: 5.5, kw: 4.2, ks: 23.1 },
};

export interface Gauge {
  readonly stitchMm: number;
  readonly rowMm: number;
  readonly loopLengthMm: number;
  readonly loopLengthMeasured: boolean;
}

/** Yarn in one stitch, in the unit of the stitch width and row height given. */
export const modelLoopLength = (stitchWidth: number, rowHeight: number, state: RelaxedState): number =>
  Math.sqrt(loopConstants[state].ks * stitchWidth * rowHeight);

export function gaugeOf(swatch: Swatch): Gauge {
  const stitchMm = swatch.widthMm / swatch.stitches;
  const rowMm = swatch.heightMm / swatch.rows;
  return {
    stitchMm,
    rowMm,
    loopLengthMm: swatch.loopLengthMm ?? modelLoopLength(stitchMm, rowMm, swatch.state),
    loopLengthMeasured: swatch.loopLengthMm !== null,
  };
}
