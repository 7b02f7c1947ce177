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

/**
 * The yarn's weight class from its gauge: stitches to 4 inches of plain knitting (Craft Yarn Council, Standard Yarn
 * Weight System, in the edition that has jumbo). The table counts 4 inches as 10 cm, and
 * whole stitches. The ranges leave gaps and overlap at 23 to 24, so a gauge can lie between two classes.
 */
export interface YarnClass {
  readonly number: number;
  readonly name: string;
  /** Stitches to 4 inches, both ends of the range included. */
  readonly least: number;
  readonly most: number;
}

export const yarnClasses: readonly YarnClass[] = [
  { number: 0, name: 'lace', least: 33, most: 40 },
  { number: 1, name: 'super fine', least: 27, most: 32 },
  { number: 2, name: 'fine', least: 23, most: 26 },
  { number: 3, name: 'light', least: 21, most: 24 },
  { number: 4, name: 'medium', least: 16, most: 20 },
  { number: 5, name: 'bulky', least: 12, most: 15 },
  { number: 6, name: 'super bulky', least: 7, most: 11 },
  { number: 7, name: 'jumbo', least: 0, most: 6 },
];

/** Whole stitches to 10 cm, which labels also call 4 inches. */
export const wholeStitches = (stitchMm: number): number => Math.round(100 / stitchMm);

/** The class of a gauge, or the two it lies between; none where it is finer than lace. */
export function classesOfGauge(stitchMm: number): readonly YarnClass[] {
  const counted = wholeStitches(stitchMm);
  const within = yarnClasses.filter(({ least, most }) => counted >= least && counted <= most);
  if (within.length > 0) return within;
  const coarser = yarnClasses.findIndex(({ most }) => counted > most);
  return coarser > 0 ? yarnClasses.slice(coarser - 1, coarser + 1) : [];
}

/** A bed knits well when the stitch is this share of the needle pitch (rule of thumb). */
export const easyShareOfPitch = { least: 0.6, most: 0.9 };

/** The classes that a bed of this pitch knits well, finest first (rule of thumb). */
export function classesOfPitch(pitchMm: number): readonly YarnClass[] {
  const finest = wholeStitches(pitchMm * easyShareOfPitch.least);
  const coarsest = wholeStitches(pitchMm * easyShareOfPitch.most);
  return yarnClasses.filter(({ least, most }) => least <= finest && most >= coarsest);
}
