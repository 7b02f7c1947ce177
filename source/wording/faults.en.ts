/** Why something cannot be done, on the bed, in a plan or in a session, and what to do instead. */
import { type BedFault, opposite } from '../bed/bed.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

/** Of a needle that the bed has not, its name may be anything that was typed: `faults.ts` makes it harmless. */
type PlainBedFault = Exclude<BedFault, { readonly code: 'bed/needle-off-bed' }>;

export type BedFaultWords = {
  readonly [C in PlainBedFault['code']]: (fault: Extract<PlainBedFault, { readonly code: C }>) => string;
};

export const sayBedFault = (words: BedFaultWords, fault: PlainBedFault): string =>
  (words[fault.code] as (fault: PlainBedFault) => string)(fault);

export const faults = ({ choice, list }: Amounts) => ({
  bed: {
    'bed/yarn-not-in-feeder': ({ held, yarn }) =>
      held === null
        ? `The feeder is empty, so ${yarn} cannot be parked from it: thread ${yarn} first.`
        : `The feeder holds ${held}, not ${yarn}: park ${held} instead.`,
    'bed/carriage-already-there': ({ side }) =>
      `The carriage is already on the ${side}: make this pass to the ${opposite(side)}.`,
    'bed/bed-not-empty': ({ stitchCount }) =>
      `The bed still holds ${counted.stitch(stitchCount)}: take the work off first.`,
    'bed/needle-holds-loop': ({ needle }) =>
      `Needle ${needle} still holds a loop: move the loop before you push the needle out of work.`,
    'bed/needle-empty': ({ needle }) =>
      `Needle ${needle} has no loop to lift: look again where the edge of the work is.`,
    'bed/needle-out-of-work': ({ needle }) =>
      `Needle ${needle} is out of work: bring it into work before a loop goes on it.`,
    'bed/yarn-in-feeder': ({ held }) =>
      `The feeder holds ${held}, so the carriage would knit: take ${held} out before the work is dropped.`,
    'bed/no-counter': () => 'This bed has no row counter: the rows are counted on the screen.',
    'bed/loop-out-of-work': ({ needle }) =>
      `Needle ${needle} is out of work but holds a loop: bring it into work before the pass.`,
    'bed/cast-on-ends-far': ({ side, needle }) =>
      `The carriage is on the ${side}: wrap the needles towards it, so that the yarn ends there and not at ${needle}.`,
    'bed/feeder-empty': ({ to }) =>
      `The feeder is empty, so a pass to the ${to} would drop every stitch: thread a yarn first.`,
    'bed/feeder-full': ({ held, yarn }) =>
      `The feeder holds ${held}: take ${held} out before you thread ${yarn}.`,
    'bed/yarn-not-here': ({ yarn }) =>
      `There is no ${yarn} to cut, in the feeder or parked: thread ${yarn} first.`,
    'bed/no-working-needles': () =>
      'No needle is in work: bring the needles you want to knit on into work first.',
    'bed/transfer-uneven': ({ fromCount, toCount }) =>
      `A transfer from ${counted.needle(fromCount)} cannot go to ${counted.needle(toCount)}: give as many needles to move to as from.`,
    'bed/nothing-to-take-off': () =>
      'The bed is empty, so there is nothing to take off: go on to the next step.',
    'bed/loops-differ': ({ loopsOff, needleCount }) =>
      `${counted.loop(loopsOff)} came off but ${counted.needle(needleCount)} would take them: choose as many needles as loops.`,
  } satisfies BedFaultWords,
  tooFewStitches: (stitches: number, least: string) =>
    `bag.stitches is ${stitches}: two edges that move need at least ${least}.`,
  boxedTooDeep: (boxedCm: number, below: string) =>
    `bag.boxedCm is ${boxedCm}, which leaves no room for base and sides below the cord: it must be less than ${below} in a bag of this size.`,
  scrapsCordShort: (yarn: string, grams: number) =>
    `${yarn} is ${grams} g too little for the cord alone: name in cord.yarn a yarn that you have more of, or shorten cord.tieCm.`,
  scrapsNoCloser: (scraps: readonly string[]) =>
    `None of ${list(scraps)} is enough for the last stripe, which also grafts and sews: add a larger leftover.`,
  yarnNotWeighed: 'No yarn of the brief has been weighed: give its grams, or leave out --from-yarn.',
  yarnForNoBag: (yarn: string, grams: number, smallest: string) =>
    `${yarn} is ${grams} g short even for the smallest bag of this shape, ${smallest}: weigh it again, or take another yarn.`,
  nothingToConfirm: 'The bag is finished: there is no step left to confirm.',
  tooManySteps: (count: number) =>
    `Only the last step is left, so ${count} cannot be confirmed at once: confirm 1.`,
  fewerLeft: (count: number, left: number) =>
    `${count} steps cannot be confirmed: ${left} are left, so give a whole number from 1 to ${left}.`,
  nothingToTakeBack: 'There is nothing to take back: this is where the work began.',
  nothingToRedo: 'There is nothing to redo since the last step.',
  noSuchStep: (step: number, stepCount: number) =>
    `There is no step ${step}: this bag has steps 1 to ${stepCount}.`,
  alreadyThere: 'You are there already: no step confirmed so far.',
  alreadyAt: (done: number) => `You are there already: ${counted.step(done)} confirmed so far.`,
  nothingToSay: 'The note is empty: type what you want to remember after the word note.',
  markWithoutName: 'The mark has no name: type a name for this place after the word mark.',
  noNeedle: (needle: string, first: string, last: string) =>
    `There is no needle ${needle}: the bed runs from ${first} to L1 and from R1 to ${last}.`,
  choose: (rows: string[]) => `choose ${choice(rows)}`,
  rowsTooFew: (rows: number, choose: string) =>
    `bag.rows is ${rows}, too few for a single shaping move: ${choose}.`,
  rowsOdd: (rows: number, stepRows: number, choose: string) =>
    `bag.rows is ${rows}, but whole stripe repeats and shaping moves come out every ${counted.row(stepRows)}: ${choose}.`,
  tooDeep: (stitches: string, usable: number) =>
    `The bag is ${stitches} deep, but the bed has ${counted.needle(usable)} within its margins`,
  nearestFits: (short: string, stitches: string, sizeOf: string) =>
    `${short}: the nearest that can crawl is ${stitches}, ${sizeOf}.`,
  noneFits: (short: string) => `${short}, too few for any bag: take a longer bed, or narrower margins.`,
  size: (width: string, depth: string) => `${width} wide and ${depth} deep`,
  everyOther: (each: string) => `${each}; no yarn can knit more than every other stripe`,
  largest: (sizeOf: string, stitches: number, rows: number) =>
    `the largest they make is ${sizeOf}, with bag.stitches ${stitches} and bag.rows ${rows}; or add a yarn`,
  addYarn: 'add a yarn, or make the bag smaller',
  scrapsTooFew: (wanted: number, stripeRows: number, possible: number, why: string, mend: string) =>
    `The bag has ${wanted} stripes of ${counted.row(stripeRows)}, and the scraps knit ${possible} of them (${why}): ${mend}.`,
});

export type FaultsWords = ReturnType<typeof faults>;
