/**
 * What is taken where nobody has swatched or weighed: a stitch in the middle of what the pitch knits easily, in the shape
 * of plain knitting (kc/kw), and a yarn that makes it as tight as plain knitting normally is at least, so that its weight
 * is rather over- than underrated. Rules of thumb, all three.
 */
import { normalTightness } from './fabric.ts';
import { loopConstants, modelLoopLength } from './gauge.ts';
import { easyShareOfPitch } from './yarn-class.ts';

export interface MeasuredSwatch {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly heightCm: number;
}

const state = 'wet-relaxed';
const stitches = 40;
const rows = 60;

export function usualSwatch(pitchMm: number): MeasuredSwatch {
  const { kc, kw } = loopConstants[state];
  const stitchMm = (pitchMm * (easyShareOfPitch.least + easyShareOfPitch.most)) / 2;
  const rowMm = (stitchMm * kw) / kc;
  return {
    stitches,
    rows,
    widthCm: toTenth((stitches * stitchMm) / 10),
    heightCm: toTenth((rows * rowMm) / 10),
  };
}

/** Metres that weigh 100 g, to the next 10, of a yarn that suits the swatch. */
export function usualMetresPer100g(swatch: MeasuredSwatch): number {
  const stitchMm = (swatch.widthCm * 10) / swatch.stitches;
  const rowMm = (swatch.heightCm * 10) / swatch.rows;
  const tex = (normalTightness.least * modelLoopLength(stitchMm, rowMm, state)) ** 2;
  return Math.min(100_000, Math.max(10, Math.round(10_000 / tex) * 10));
}

const toTenth = (value: number): number => Math.round(value * 10) / 10;
