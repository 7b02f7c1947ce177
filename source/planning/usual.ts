/**
 * What is taken where nobody has swatched or weighed: a stitch of the share of the pitch that it knits easily, in the shape
 * of plain knitting (kc/kw), and the length that usual labels give for such a pitch;
 * and what people put into such bags, by usual measures, to be measured where it matters. All are rules of thumb, no source.
 */
import { easyShareOfPitch, loopConstants } from './gauge.ts';

export interface MeasuredSwatch {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly heightCm: number;
}

/** Within what a pitch knits easily, and in the class of yarn that it is usually for. */
const usualShareOfPitch = 0.78;

/** The stitch that a maker then knits lies within this share of the guessed one, either way. */
export const guessedShare = (easyShareOfPitch.most - easyShareOfPitch.least) / (2 * usualShareOfPitch);

const state = 'wet-relaxed';
const stitches = 40;
const rows = 60;

export function usualSwatch(pitchMm: number): MeasuredSwatch {
  const { kc, kw } = loopConstants[state];
  const stitchMm = pitchMm * usualShareOfPitch;
  const rowMm = (stitchMm * kw) / kc;
  return {
    stitches,
    rows,
    widthCm: toTenth((stitches * stitchMm) / 10),
    heightCm: toTenth((rows * rowMm) / 10),
  };
}

/** Metres that weigh 100 g by usual labels, for yarn that each pitch knits. */
const usualLabels: readonly (readonly [pitchMm: number, metresPer100g: number])[] = [
  [3.6, 700],
  [4.5, 430],
  [6.5, 220],
  [9, 115],
];

/** Metres that weigh 100 g, to the next 10; between and beyond the labels along the logarithm. */
export function usualMetresPer100g(pitchMm: number): number {
  const above = usualLabels.findIndex(([pitch]) => pitch >= pitchMm);
  const upper = above < 0 ? usualLabels.length - 1 : Math.max(1, above);
  const [lowPitch = 0, lowMetres = 1] = usualLabels[upper - 1] ?? [];
  const [highPitch = 1, highMetres = 1] = usualLabels[upper] ?? [];
  const share = (pitchMm - lowPitch) / (highPitch - lowPitch);
  const metres = lowMetres * (highMetres / lowMetres) ** share;
  return Math.max(10, Math.round(metres / 10) * 10);
}

export const toTenth = (value: number): number => Math.round(value * 10) / 10;

export interface Contents {
  readonly girthCm: number;
  readonly heightCm: number;
  /** What lies on the bottom and has to be closed over; left out, the thing is round. */
  readonly thicknessCm?: number;
}

/** A deck is in its box, seven dice lie in a heap, a jar holds about 350 g, socks are rolled up, and a book is a small paperback. */
export const usualContents = {
  cards: { girthCm: 17, heightCm: 9, thicknessCm: 2 },
  dice: { girthCm: 20, heightCm: 4, thicknessCm: 6 },
  jar: { girthCm: 24, heightCm: 11 },
  socks: { girthCm: 28, heightCm: 10, thicknessCm: 8 },
  book: { girthCm: 27, heightCm: 18, thicknessCm: 2.5 },
} satisfies Readonly<Record<string, Contents>>;

export type UsualThing = keyof typeof usualContents;

/** The girth of a box that stands as high as it is told. */
export const boxContents = (widthCm: number, heightCm: number, thicknessCm: number): Contents => ({
  girthCm: 2 * (widthCm + thicknessCm),
  heightCm,
  thicknessCm,
});
