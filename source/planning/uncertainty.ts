/**
 * How far the finished bag may be from its size. Independent standard uncertainties are carried through the geometry by its
 * derivatives and doubled (GUM, JCGM 100:2008, 5.1.2 and 6.2.1, k = 2):
 * - the ruler, ±1 mm at each end of the swatch's width and height; half a stitch and half a row counted; both rectangular
 * - from swatch to piece 2 % of stitch and of row each, and 1 % of both together for tension and rest (assumptions)
 * - of a swatch that nobody has knitted, what lies between the finest and the coarsest stitch that the bed knits easily,
 *   rectangular (rule of thumb)
 * - skew ±2°, or ±0.5° where the swatch's was looked at, rectangular (assumption)
 * Once bags of the swatch have been measured, what they showed takes the place of all these: their spread holds what varies
 * from bag to bag, and what the swatch got wrong is the same in all of them and is in their factor.
 */
import type { Learned, Swatch } from './brief.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, distanceMm, shapingsIn } from './geometry.ts';
import { nextBagDoubt } from './learned.ts';
import type { Plan } from './plan.ts';
import { guessedShare } from './usual.ts';

export const coverage = 2;
const rulerMm = 1;
const countedOff = 0.5;
const swatchToPiece = 0.02;
const inCommon = 0.01;
const skewDeg = { unmeasured: 2, measured: 0.5 };

/** Standard uncertainty of something known to lie within ± `half`. */
export const rectangular = (half: number): number => half / Math.sqrt(3);

const guessedOff = rectangular(guessedShare);

/** What follows from independent inputs: each one's standard uncertainty times how much the result changes with it. */
export const propagate = (inputs: readonly (readonly [follows: number, uncertainty: number])[]): number =>
  Math.hypot(...inputs.map(([follows, uncertainty]) => follows * uncertainty));

/** Expanded uncertainties in cm, k = 2. */
interface SizeUncertainty {
  readonly widthCm: number;
  readonly depthCm: number;
}

/** Relative standard uncertainties of what the size is worked out from; the skew's in radians. */
export interface Doubts {
  readonly stitch: number;
  readonly row: number;
  readonly inCommon: number;
  readonly skewRad: number;
}

/** With `learned`, the spread of finished bags, which width and depth have in common. */
export function doubtsOf(swatch: Swatch, learned: Learned | null = null): Doubts {
  if (learned) return { stitch: 0, row: 0, skewRad: 0, inCommon: nextBagDoubt(learned) };
  return swatchDoubts(swatch);
}

function swatchDoubts({ stitches, rows, widthMm, heightMm, asideMm, guess }: Swatch): Doubts {
  const bothEndsMm = Math.SQRT2 * rectangular(rulerMm);
  const measured = (lengthMm: number, counted: number): number =>
    Math.hypot(bothEndsMm / lengthMm, rectangular(countedOff) / counted, swatchToPiece);
  const half = asideMm === 0 ? skewDeg.unmeasured : skewDeg.measured;
  return {
    stitch: measured(widthMm, stitches),
    row: measured(heightMm, rows),
    inCommon: guess ? guessedOff : inCommon,
    skewRad: (rectangular(half) * Math.PI) / 180,
  };
}

/** The bag's own size in cm; the hem's part of its depth is rows alone. */
interface Sized {
  readonly widthCm: number;
  readonly depthCm: number;
  readonly hemCm: number;
}

export function uncertaintyOf(
  counts: Counts,
  gauge: Gauge,
  doubts: Doubts,
  { widthCm, depthCm, hemCm }: Sized,
): SizeUncertainty {
  const mouth = distanceMm(shapingsIn(counts), counts.rows, gauge);
  const along = (shapingsIn(counts) * gauge.stitchMm) / mouth;
  const up = (counts.rows * gauge.rowMm) / mouth;
  const cross = along * up * Math.sin(gauge.skewRad);
  const width = {
    stitch: along ** 2 + cross,
    row: up ** 2 + cross,
    skew: along * up * Math.cos(gauge.skewRad),
  };
  const stripCm = depthCm - hemCm;
  return {
    widthCm:
      coverage *
      widthCm *
      propagate([
        [width.stitch, doubts.stitch],
        [width.row, doubts.row],
        [1, doubts.inCommon],
        [width.skew, doubts.skewRad],
      ]),
    depthCm:
      coverage *
      propagate([
        [(1 - width.stitch) * stripCm, doubts.stitch],
        [(1 - width.row) * stripCm + hemCm, doubts.row],
        [depthCm, doubts.inCommon],
        [(Math.tan(gauge.skewRad) + width.skew) * stripCm, doubts.skewRad],
      ]),
  };
}

/** What the maker can do about it, and what would be left of the doubt. */
interface SmallerDoubt extends SizeUncertainty {
  readonly by: 'larger-swatch' | 'skew-measured';
  readonly stitches: number;
  readonly rows: number;
}

/**
 * The better of a swatch twice as large each way and a look at the skew; null where neither gains a tenth (rule of thumb), and
 * where finished bags have told.
 */
export function smallerDoubt({ brief, gauge, size, hem, ...counts }: Plan): SmallerDoubt | null {
  const { swatch, shapeEveryRows, learned } = brief;
  if (learned) return null;
  const sized = { ...size, hemCm: hem?.heightCm ?? 0 };
  const twice = {
    ...swatch,
    stitches: 2 * swatch.stitches,
    rows: 2 * swatch.rows,
    widthMm: 2 * swatch.widthMm,
    heightMm: 2 * swatch.heightMm,
  };
  const tries: readonly (readonly [SmallerDoubt['by'], Swatch])[] = [
    ['larger-swatch', twice],
    ['skew-measured', { ...swatch, asideMm: swatch.asideMm || rulerMm }],
  ];
  const found = tries
    .map(([by, better]) => ({
      by,
      stitches: better.stitches,
      rows: better.rows,
      ...uncertaintyOf({ ...counts, shapeEveryRows }, gauge, doubtsOf(better), sized),
    }))
    .toSorted((a, b) => a.widthCm + a.depthCm - b.widthCm - b.depthCm)[0];
  const now = size.widthUncertaintyCm + size.depthUncertaintyCm;
  return found && found.widthCm + found.depthCm < 0.9 * now ? found : null;
}
