/**
 * Gauge and loop length. A stitch of plain knitting is l/kw wide and l/kc high; kw and kc depend on how the piece has
 * rested. So l = √(ks · w · h) with ks = kc · kw, and a stitch measured in one state has another size in the next: w · kw/kw',
 * h · kc/kc'. Dry- and wet-relaxed: D. L. Munden 1959, Journal of the Textile Institute 50, T448, for wool. Fully-relaxed:
 * Knapton and others, 1968 (from memory: Textile Research Journal 38, 999). A measured loop length always beats the model.
 */
import type { Side } from '../bed/bed.ts';
import type { Learned, RelaxedState, Swatch } from './brief.ts';

/** Constants of plain knitting: courses kc and wales kw, each times the loop length; ks = kc · kw as published. */
export const loopConstants: Readonly<
  Record<RelaxedState, { readonly kc: number; readonly kw: number; readonly ks: number }>
> = {
  'dry-relaxed': { kc: 5.0, kw: 3.8, ks: 19.0 },
  'wet-relaxed': { kc: 5.3, kw: 4.1, ks: 21.6 },
  'fully-relaxed': { kc: 5.5, kw: 4.2, ks: 23.1 },
};

export interface StitchSize {
  readonly stitchMm: number;
  readonly rowMm: number;
}

/** A stitch, and how far the columns of stitches lean towards the leading edge, seen from the purl side as it hangs. */
export interface LeaningStitch extends StitchSize {
  readonly skewRad: number;
  /** What finished bags of this swatch came to over what it foretells; null where there are none. */
  readonly learned: Pick<Learned, 'widthFactor' | 'depthFactor'> | null;
}

export interface Gauge extends LeaningStitch {
  /** As the swatch measures it; `stitchMm` and `rowMm` themselves are those of the state in which the bag is used. */
  readonly asKnitted: StitchSize;
  readonly loopLengthMm: number;
  readonly loopLengthMeasured: boolean;
}

/** Yarn in one stitch, in the unit of the stitch width and row height given. */
export const modelLoopLength = (stitchWidth: number, rowHeight: number, state: RelaxedState): number =>
  Math.sqrt(loopConstants[state].ks * stitchWidth * rowHeight);

/** The size that a stitch measured in one state has in another. */
export function stitchInState(
  { stitchMm, rowMm }: StitchSize,
  from: RelaxedState,
  to: RelaxedState,
): StitchSize {
  if (from === to) return { stitchMm, rowMm };
  const [was, is] = [loopConstants[from], loopConstants[to]];
  return { stitchMm: (stitchMm * was.kw) / is.kw, rowMm: (rowMm * was.kc) / is.kc };
}

export function gaugeOf(brief: {
  readonly swatch: Swatch;
  readonly finishState: RelaxedState;
  readonly crawl: Side;
  readonly learned: Learned | null;
}): Gauge {
  const { swatch, finishState } = brief;
  const asKnitted = { stitchMm: swatch.widthMm / swatch.stitches, rowMm: swatch.heightMm / swatch.rows };
  const { stitchMm, rowMm } = stitchInState(asKnitted, swatch.state, finishState);
  return {
    stitchMm,
    rowMm,
    skewRad: skewOf(swatch, brief.crawl),
    learned: brief.learned,
    asKnitted,
    loopLengthMm: swatch.loopLengthMm ?? modelLoopLength(asKnitted.stitchMm, asKnitted.rowMm, swatch.state),
    loopLengthMeasured: swatch.loopLengthMm !== null,
  };
}

/** With the knit side facing, right is where work that crawls left is going: the maker saw its purl side on the bed. */
function skewOf({ asideMm, heightMm }: Swatch, crawl: Side): number {
  const lean = Math.atan2(asideMm, heightMm);
  return crawl === 'left' ? lean : -lean;
}
