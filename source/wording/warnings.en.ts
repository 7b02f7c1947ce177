/** What a maker should know of a plan before the first stitch. */
import type { RelaxedState } from '../planning/brief.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

export const warnings = ({ decimal, length, list, massNeeded, small, fixed }: Amounts) => ({
  yarnShort: (yarn: string, shortGrams: number, reservePercent: number) =>
    `${yarn} is ${massNeeded(shortGrams)} short, with a reserve of ${decimal(reservePercent)} % counted in: find more, or make a smaller bag.`,
  scrapUnused: (yarns: readonly string[]) =>
    `${list(yarns)} is left over: too little for a stripe, or no stripe is left for it.`,
  scrapsUnused: (yarns: readonly string[]) =>
    `${list(yarns)} are left over: too little for a stripe, or no stripe is left for it.`,
  manyYarnsAtOnce: (yarns: number) =>
    `${yarns} yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.`,
  widthFarOff: (gotCm: number, wantedCm: number) =>
    `Whole stripe repeats make it ${length(gotCm)} wide, not ${length(wantedCm)} as asked: a shorter repeat comes nearer.`,
  depthFarOff: (gotCm: number, wantedCm: number) =>
    `Whole stitches make it ${length(gotCm)} deep, not ${length(wantedCm)} as asked.`,
  baseTooNarrow: (thicknessCm: number, boxedCm: number) =>
    `What goes in is ${length(thicknessCm)} thick and cannot stand on a bottom ${length(boxedCm)} deep: box the corners as deep as it is thick.`,
  eyeletsTooFew: 'There are too few eyelets for a cord with both ends outside: choose more rows.',
  rehangNeeded: (afterRows: string) =>
    `The bed is too short to crawl all the way: rehang the work ${afterRows}.`,
  swatchGuessed:
    'The swatch is a guess from the bed (rule of thumb), and so are the size and the yarn: knit one and measure it.',
  swatchToBeWashed: (finishState: RelaxedState) =>
    `The swatch was measured dry, and the bag will be used ${finishState}: its size in that state is worked out, but a swatch that was washed like the bag tells more.`,
  swatchTurned:
    'Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.',
  stitchShapeOdd: (aspect: number) =>
    `A stitch ${fixed(aspect, 2)} times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.`,
  loopLengthOdd: (measuredMm: number, modelMm: number) =>
    `The measured loop of ${small(measuredMm)} is far from the ${small(modelMm)} that the gauge suggests: measure it again, all yarn figures depend on it.`,
  fabricLimp: (tightness: number, least: number, most: number) =>
    `Tightness ${fixed(tightness, 2)} is low (hand yarns have ${least} to ${most} by their labels): the fabric will be limp and see-through.`,
  fabricJams: (tightness: number, jamTightness: number) =>
    `Tightness ${fixed(tightness, 2)} is high (loops of wool jam near ${fixed(jamTightness, 2)}): the carriage may jam; take a thinner yarn or a larger stitch size.`,
  stitchWiderThanPitch: (stitchMm: number, pitchMm: number) =>
    `A stitch of ${fixed(stitchMm, 1)} mm is wider than the needle pitch of ${decimal(pitchMm)} mm: measure the swatch again, or use a bed of a coarser gauge.`,
  yarnTooFine: (pitchMm: number, classes: string) =>
    `The yarn is finer than a pitch of ${decimal(pitchMm)} mm usually knits (${classes}; rule of thumb): check the swatch, or use a finer bed.`,
  yarnTooThick: (pitchMm: number, classes: string) =>
    `The yarn is thicker than a pitch of ${decimal(pitchMm)} mm usually knits (${classes}; rule of thumb): check the swatch, or use a coarser bed.`,
  stripesAlike: (first: number, second: number, yarn: string) =>
    `Stripes ${first} and ${second} meet in the same colour, ${yarn}, and read as one wide stripe.`,
  shadesAlike: (first: string, second: string) =>
    `Stripes of ${first} and ${second} lie side by side and look much alike: choose one lighter or darker to tell them apart.`,
  shadesAlikeFor: (first: string, second: string, eyes: string) =>
    `Stripes of ${first} and ${second} lie side by side and look much alike to people with ${eyes} colour vision: choose one lighter or darker to tell them apart.`,
  or: 'or',
  afterRow: (row: number) => `after row ${row}`,
  afterRows: (rows: string[]) => `after rows ${list(rows)}`,
  oftenFrom: (times: number, first: number) => `${counted.time(times)}, the first time after row ${first}`,
});

export type WarningsWords = ReturnType<typeof warnings>;
