/**
 * The yarn's weight class from its gauge: stitches to 4 inches of plain knitting (Craft Yarn Council, Standard Yarn
 * Weight System). The ranges leave gaps and overlap at 23 to 24, so a gauge can lie between two classes.
 */
import { mmPerInch } from '../shared/units.ts';

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

export const stitchesPer4In = (stitchMm: number): number => (4 * mmPerInch) / stitchMm;

/** The class of a gauge, or the two it lies between; none where it is finer than lace. */
export function classesOfGauge(perFourInches: number): readonly YarnClass[] {
  const within = yarnClasses.filter(({ least, most }) => perFourInches >= least && perFourInches <= most);
  if (within.length > 0) return within;
  const coarser = yarnClasses.findIndex(({ most }) => perFourInches > most);
  return coarser > 0 ? yarnClasses.slice(coarser - 1, coarser + 1) : [];
}

/** A bed knits well when the stitch is this share of the needle pitch (rule of thumb). */
export const easyShareOfPitch = { least: 0.6, most: 0.9 };

/** The classes that a bed of this pitch knits well, finest first (rule of thumb). */
export function classesOfPitch(pitchMm: number): readonly YarnClass[] {
  const finest = stitchesPer4In(pitchMm * easyShareOfPitch.least);
  const coarsest = stitchesPer4In(pitchMm * easyShareOfPitch.most);
  return yarnClasses.filter(({ least, most }) => least <= finest && most >= coarsest);
}
