/**
 * What is taken where nobody has swatched or weighed: a stitch of the share of the pitch that it knits easily, in the shape
 * of plain knitting (kc/kw), and the length that usual labels give for such a pitch. Rules of thumb, all three.
 */
import { loopConstants } from './gauge.ts';
import { easyShareOfPitch } from './yarn-class.ts';

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
