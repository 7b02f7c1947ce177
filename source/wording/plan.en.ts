/** What a plan says beside the bag that was asked for: other choices, what to know before the first stitch, what it takes, and a change of plan. */

import type { Cost } from '../journal/bag-cost.ts';
import type { Learned } from '../planning/brief.ts';
import { jamTightness, labelTightness } from '../planning/fabric.ts';
import type { NearShape } from '../planning/near-shapes.ts';
import type { Kit } from '../planning/plan.ts';
import type { ReplanFault } from '../planning/plan-from.ts';
import type { Saving } from '../planning/savings.ts';
import type { PlanWarning } from '../planning/warnings.ts';
import type { Amounts } from './amounts.ts';
import type { SayingsBy } from './by-kind.ts';
import { counted, theYarn, yarnClass, yarnName } from './forms.en.ts';

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

export type WarningsWords = SayingsBy<'code', PlanWarning>;

/** What a maker should know of a plan before the first stitch. */
export const warnings = ({
  choice,
  decimal,
  length,
  list,
  massNeeded,
  small,
  fixed,
}: Amounts): WarningsWords => ({
  'plan/yarn-short': ({ yarn, shortGrams, reservePercent }) =>
    `${yarn} is ${massNeeded(shortGrams)} short, with a reserve of ${decimal(reservePercent)} % counted in: find more, or make a smaller bag.`,
  'plan/scraps-unused': ({ yarns }) =>
    `${list(yarns)} ${yarns.length === 1 ? 'is' : 'are'} left over: too little for a stripe, or no stripe is left for it.`,
  'plan/many-yarns-at-once': ({ yarns }) =>
    `${yarns} yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.`,
  'plan/width-far-off': ({ gotCm, wantedCm }) =>
    `Whole stripe repeats make it ${length(gotCm)} wide, not ${length(wantedCm)} as asked: a shorter repeat comes nearer.`,
  'plan/depth-far-off': ({ gotCm, wantedCm }) =>
    `Whole stitches make it ${length(gotCm)} deep, not ${length(wantedCm)} as asked.`,
  'plan/base-too-narrow': ({ thicknessCm, boxedCm }) =>
    `What goes in is ${length(thicknessCm)} thick and cannot stand on a bottom ${length(boxedCm)} deep: box the corners as deep as it is thick.`,
  'plan/eyelets-too-few': () =>
    'There are too few eyelets for a cord with both ends outside: choose more rows.',
  'plan/rehang-needed': ({ afterRows }) =>
    `The bed is too short to crawl all the way: rehang the work ${afterSome(afterRows, list)}.`,
  'plan/swatch-guessed': () =>
    'The swatch is a guess from the bed (rule of thumb), and so are the size and the yarn: knit one and measure it.',
  'plan/swatch-to-be-washed': ({ finishState }) =>
    `The swatch was measured dry, and the bag will be used ${finishState}: its size in that state is worked out, but a swatch that was washed like the bag tells more.`,
  'plan/swatch-turned': () =>
    'Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.',
  'plan/stitch-shape-odd': ({ aspect }) =>
    `A stitch ${fixed(aspect, 2)} times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.`,
  'plan/loop-length-odd': ({ measuredMm, modelMm }) =>
    `The measured loop of ${small(measuredMm)} is far from the ${small(modelMm)} that the gauge suggests: measure it again, all yarn figures depend on it.`,
  'plan/fabric-limp': ({ tightness }) =>
    `Tightness ${fixed(tightness, 2)} is low (hand yarns have ${labelTightness.least} to ${labelTightness.most} by their labels): the fabric will be limp and see-through.`,
  'plan/fabric-jams': ({ tightness }) =>
    `Tightness ${fixed(tightness, 2)} is high (loops of wool jam near ${fixed(jamTightness, 2)}): the carriage may jam; take a thinner yarn or a larger stitch size.`,
  'plan/stitch-wider-than-pitch': ({ stitchMm, pitchMm }) =>
    `A stitch of ${fixed(stitchMm, 1)} mm is wider than the needle pitch of ${decimal(pitchMm)} mm: measure the swatch again, or use a bed of a coarser gauge.`,
  'plan/yarn-unusual-for-bed': ({ than, pitchMm, usual }) =>
    `The yarn is ${than} than a pitch of ${decimal(pitchMm)} mm usually knits (${choice(usual.map(yarnClass))}; rule of thumb): check the swatch, or use a ${than === 'finer' ? 'finer' : 'coarser'} bed.`,
  'plan/stripes-alike': ({ first, second, yarn }) =>
    `Stripes ${first} and ${second} meet in the same colour, ${yarn}, and read as one wide stripe.`,
  'plan/shades-alike': ({ first, second, to }) =>
    `Stripes of ${first} and ${second} lie side by side and look much alike${to === 'everybody' ? '' : ` to people with ${to.join(' or ')} colour vision`}: choose one lighter or darker to tell them apart.`,
});

/** More rows than these are counted, not listed: the steps name each. */
export const mostListed = 6;

const afterSome = (rows: readonly number[], list: Amounts['list']): string => {
  if (rows.length === 1) return `after row ${rows[0]}`;
  return rows.length <= mostListed
    ? `after rows ${list(rows.map(String))}`
    : `${counted.time(rows.length)}, the first time after row ${rows[0]}`;
};

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

export const replan = ({ decimal, length, list, massNeeded }: Amounts) => ({
  asPlannedItCannot: 'As planned it cannot be finished.',
  asPlanned: (choice: string) => `As planned, ${choice}.`,
  noOther: 'There is no other length to choose.',
  toTakeIt: 'To go on like that type choose.',
  toTakeOne: 'To go on like one of them type choose and its number.',
  lastsForNone:
    'The weighed yarn lasts for no bag of that kind: bring in another with replan colour or, for the cord, replan cord; or rip back.',
  lastsFor: (aimCm: number, named: string) =>
    `Closest to ${length(aimCm)} wide with the yarn you have: ${named}.`,
  planIsNearest: (aimCm: number) => `The plan itself is the closest to ${length(aimCm)} wide.`,
  choiceNumber: (rows: number, number: number) => `${rows} rows, number ${number}`,
  choiceTyped: (rows: number) => `replan rows ${rows}`,
  isShort: (yarn: string, shortGrams: number, parts: readonly string[]) =>
    `${yarnName(yarn)} is ${massNeeded(shortGrams)} short${parts.length === 0 ? '' : ` of ${list(parts)}`}`,
  forStripes: (grams: number) => `${massNeeded(grams)} for stripes`,
  forTails: (grams: number) => `${massNeeded(grams)} for graft and seam`,
  forCord: (grams: number) => `${massNeeded(grams)} for the cord`,
  rows: (rows: number) => `${rows} rows`,
  more: (howMany: string) => `${howMany} more`,
  fewer: (howMany: string) => `${howMany} fewer`,
  size: (widthCm: number, depthCm: number, rowsLeft: number) =>
    `${length(widthCm)} wide, ${length(depthCm)} deep, ${counted.row(rowsLeft)} to go`,
  rehangsMore: (times: number) => `hung again ${counted.time(times)} more`,
  rehangsFewer: (times: number) => `hung again ${counted.time(times)} less`,
  cordIn: (yarn: string, neededGrams: number) =>
    `with the cord in ${theYarn(yarn)}, of which it all takes ${massNeeded(neededGrams)}`,
  but: (short: readonly string[]) => `, but ${list(short)}`,
  whichUnit: (size: string, sizeMm: number, dueMm: number, again: readonly string[]) =>
    `${size} would make one ${decimal(sizeMm)} mm, and the plan has ${decimal(dueMm)} mm. Say the unit too: ${again.join(' or ')}.`,
  faults: {
    'replan/rows-not-whole-repeats': ({ rows, rowMultiple, least }) =>
      `${rows} rows are not whole stripe repeats: choose a multiple of ${rowMultiple}, from ${least} up.`,
    'replan/rows-too-few': ({ rows, least }) =>
      `${rows} rows are fewer than the work needs from here: choose ${least} or more.`,
    'replan/rows-too-many': ({ rows, most }) =>
      `${rows} rows are more than a bag may have: choose ${most} at the most.`,
    'replan/unknown-yarn': ({ yarn, known }) =>
      `${yarn} is not a yarn of this bag (${list(known)}): give its colour and metres per 100 g too, as in ${yarn} #c2a878 210.`,
    'replan/yarn-not-to-come': ({ yarn }) =>
      `${yarn} knits no stripe from here on: name a yarn that is still to come.`,
    'replan/colours-meet': ({ first, second, yarn }) =>
      `Stripes ${first} and ${second} would meet in ${yarn} and read as one: choose another yarn.`,
    'replan/measure-impossible': ({ sizeMm }) =>
      `A stitch or row of ${decimal(sizeMm)} mm cannot be: measure the piece again.`,
    'replan/boxed-too-deep': ({ boxedCm, belowCm }) =>
      `A bottom ${length(boxedCm)} deep needs a larger bag, with so many rows it must be below ${length(belowCm)}: choose more rows.`,
    'replan/too-late': () =>
      'The closing row is begun, so the size is settled: rip back to before it to change the plan.',
    'replan/cord-begun': () =>
      'The cord is begun, so its yarn is settled: rip back to before its cast-on to change it.',
  } satisfies SayingsBy<'code', ReplanFault>,
});
