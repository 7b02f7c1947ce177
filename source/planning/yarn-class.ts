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
