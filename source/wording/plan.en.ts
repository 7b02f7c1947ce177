/** What a plan says beside the bag that was asked for: other choices, what to know before the first stitch, and what it takes. */

import type { Cost } from '../journal/bag-cost.ts';
import type { Learned, RelaxedState } from '../planning/brief.ts';
import type { Kit } from '../planning/kit.ts';
import type { NearShape } from '../planning/near-shapes.ts';
import type { Saving } from '../planning/savings.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './plurals.en.ts';

export const plan = ({ length, time, decimal, list }: Amounts) => {
  const percentOff = (factor: number, more: string, less: string): string =>
    `${decimal(100 * Math.abs(factor - 1), 1)} % ${factor < 1 ? less : more}`;
  return {
    learned: 'learned',
    toldByBags: ({ bags, setAside, widthFactor, depthFactor, spread }: Learned) => {
      const width = percentOff(widthFactor, 'wider', 'narrower');
      const depth = percentOff(depthFactor, 'deeper', 'shallower');
      const aside =
        setAside === 0
          ? ''
          : `; ${setAside === 1 ? 'one that lies' : `${setAside} that lie`} far off not counted`;
      return `${bags} bags of this swatch came out ${width} and ${depth} than it foretells, ± ${decimal(100 * spread, 1)} % from bag to bag${aside}; that is counted in`;
    },

    repeat: 'repeat',
    repeatBesideDoubt: (repeatCm: number, doubtCm: number) =>
      `one makes ${length(repeatCm)} of width; the doubt is ± ${length(doubtCm)}`,

    saves: 'saves one',
    saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }: Saving) => {
      const counts = `${rows} rows of ${stitches} stitches`;
      const choice = by === 'rarer-moves' ? `a move every ${shapeEveryRows} rows, ${counts}` : counts;
      return `${choice}: hung ${hangings === 1 ? 'once' : `${hangings} times`}, ${length(widthCm)} by ${length(depthCm)}`;
    },
    time: 'time',
    onTheBench: (
      totalS: number,
      parts: readonly (readonly [phase: string, seconds: number])[],
      bags: number,
    ) => {
      const each = parts.map(([phase, seconds]) => `${phase} ${time(seconds)}`).join(', ');
      const pace =
        bags === 0
          ? 'a rule of thumb for each act'
          : `at the pace of ${bags === 1 ? 'your finished bag' : `your ${bags} finished bags`}`;
      return `about ${time(totalS)} on the bench: ${each}; ${pace}`;
    },
    timeLeft: (phase: string, phaseS: number, bagS: number, bags: number) =>
      `About ${time(phaseS)} to the end of the ${phase}, ${time(bagS)} to the end of the bag (${
        bags === 0 ? 'rule of thumb' : 'at the pace of your finished bags'
      }).`,

    cost: 'cost',
    costs: ({ yarn, unpriced, hours, work, total, currency }: Cost) => {
      const money = (amount: number): string =>
        `${amount.toFixed(2)}${currency === null ? '' : ` ${currency}`}`;
      const parts = [
        ...yarn.map((one) => `${one.yarn} ${money(one.cost)}`),
        ...(work === null ? [] : [`${time(3600 * hours)} ${money(work)}`]),
      ];
      const without = unpriced.length === 0 ? '' : `; no price for ${list(unpriced)}`;
      return `${money(total)}: ${parts.join(', ')}${without}`;
    },

    orElse: 'or else',
    nearShape: ({ stitches, rows, widthCm, depthCm, shapeShare, areaShare }: NearShape) => {
      const off = Math.max(1, Math.round(100 * Math.abs(shapeShare - 1)));
      const shape = `${off} % ${shapeShare < 1 ? 'shallower' : 'deeper'} in shape`;
      const more = `${Math.round(100 * (areaShare - 1))} % more bag`;
      return `${stitches} stitches and ${rows} rows, ${length(widthCm)} by ${length(depthCm)}: ${shape}, ${more}`;
    },
  };
};

export type PlanWords = ReturnType<typeof plan>;

/** What a maker should know of a plan before the first stitch. */
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

export const kit = ({ list, yarnNeeded, massNeeded, lengthNeeded }: Amounts) => ({
  tools: ({ prongs, hasComb, clips }: Kit) =>
    `Tools: ${list([
      `transfer tool with ${prongs === 1 ? '1 prong' : `${prongs} prongs`}`,
      ...(hasComb ? ['cast-on comb'] : []),
      '2 claw weights and a small one',
      `${clips} yarn clips`,
      'latch tool',
      'blunt needle',
      'scissors',
      'tape measure',
    ])}.`,
  ravelCord: ({ ravelCordCm }: Kit) =>
    ravelCordCm === null ? '' : `Also ${lengthNeeded(ravelCordCm)} of smooth ravel cord.`,
  materials: ({ yarns, ravelCordCm }: Kit) =>
    `Materials: ${list([
      ...yarns.map(({ yarn, metres, grams }) =>
        grams === null
          ? `${yarnNeeded(metres)} of ${yarn === 'waste' ? 'waste yarn' : `${yarn}, the waste yarn`}`
          : `${yarnNeeded(metres)} of ${yarn} (${massNeeded(grams)} with its reserve)`,
      ),
      ...(ravelCordCm === null ? [] : [`${lengthNeeded(ravelCordCm)} of smooth ravel cord`]),
    ])}.`,
});

export type KitWords = ReturnType<typeof kit>;
