/** Every fault in one plain sentence: what is wrong, where, and how to mend it. A new code does not compile without one. */
import type { BedFault } from '../bed/bed.ts';
import { formatNeedle } from '../bed/needles.ts';
import type { BriefFault, Neighbour, PlanFault } from '../planning/fault.ts';
import type { ReplanFault } from '../planning/plan-from.ts';
import type { SessionFault } from '../session/command.ts';
import { isOf } from '../shared/result.ts';
import { briefFaults, quote } from './brief-faults.ts';
import { type SayingsBy, sayBy } from './by-kind.ts';
import type { PlainBedFault } from './faults.en.ts';
import { ripBackFaults } from './finding.ts';
import { cordFaults, measuredFaults, weighFaults } from './measured.ts';
import type { Words } from './words.ts';

export type Fault = BedFault | BriefFault | PlanFault | SessionFault;

/** Weights in the maker's units; a brief's own fields are in the units of the brief. */
export const formatFault = (fault: Fault, words: Words): string =>
  isOf(fault, 'replan')
    ? sayBy('code', words.replan.faults, fault)
    : isOf(fault, 'bed') && fault.code !== 'bed/needle-off-bed'
      ? sayBy('code', words.faults.bed, fault)
      : sayBy('code', sayings, fault, words);

const sayings: SayingsBy<'code', Exclude<Fault, PlainBedFault | ReplanFault>, [words: Words]> = {
  ...briefFaults,
  ...ripBackFaults,
  ...weighFaults,
  ...measuredFaults,
  ...cordFaults,
  'bed/needle-off-bed': (fault, words) => offBed(fault, words),
  'plan/rows-not-whole-repeats': (fault, words) => notWholeRepeats(fault, words),
  'plan/too-few-stitches': ({ stitches: wanted, least }, words) =>
    words.faults.tooFewStitches(wanted, stitches(least, words)),
  'plan/bed-too-short': (fault, words) => bedTooShort(fault, words),
  'plan/boxed-too-deep': ({ boxedCm, belowCm }, words) =>
    words.faults.boxedTooDeep(boxedCm, roundedDown(belowCm, words)),
  'plan/scraps-cord-short': ({ yarn, shortGrams }, words) =>
    words.faults.scrapsCordShort(yarn, Math.ceil(shortGrams)),
  'plan/scraps-no-closer': ({ scraps }, words) => words.faults.scrapsNoCloser(scraps),
  'plan/scraps-too-little': (fault, words) => scrapsTooLittle(fault, words),
  'plan/yarn-not-weighed': (_, words) => words.faults.yarnNotWeighed,
  'plan/yarn-for-no-bag': ({ yarn, shortGrams, smallest }, words) =>
    words.faults.yarnForNoBag(yarn, Math.ceil(shortGrams), sizeOf(smallest, words)),
  'session/nothing-to-confirm': (_, words) => words.faults.nothingToConfirm,
  'session/too-many-steps': ({ left, count }, words) =>
    left === 1 ? words.faults.tooManySteps(count) : words.faults.fewerLeft(count, left),
  'session/nothing-to-take-back': (_, words) => words.faults.nothingToTakeBack,
  'session/nothing-to-redo': (_, words) => words.faults.nothingToRedo,
  'session/no-such-step': ({ step, stepCount }, words) => words.faults.noSuchStep(step, stepCount),
  'session/already-there': ({ done }, words) =>
    done === 0 ? words.faults.alreadyThere : words.faults.alreadyAt(done),
  'session/not-a-name': ({ most }, words) => words.logs.notAName(most),
  'session/nothing-to-say': ({ what }, words) =>
    what === 'note' ? words.faults.nothingToSay : words.faults.markWithoutName,
  'way/on-the-way': ({ back, at, of }, words) => words.slips.onTheWay(back, at, of),
  'way/not-on-one': (_, words) => words.slips.notOnOne,
  'way/no-such-mend': (_, words) => words.slips.noSuchMend,
  'way/between-places': (_, words) => words.slips.betweenPlaces,
};

type FaultOf<C extends Fault['code']> = Extract<Fault, { readonly code: C }>;

const stitches = (howMany: number, words: Words): string => words.plurals.stitch(howMany);

function offBed({ needle, needleCount }: FaultOf<'bed/needle-off-bed'>, words: Words): string {
  const [first, last] = [formatNeedle(needleCount, 0), formatNeedle(needleCount, needleCount - 1)];
  return words.faults.noNeedle(quote(needle).slice(1, -1), first, last);
}

function notWholeRepeats(
  { rows, rowMultiple, nearest }: FaultOf<'plan/rows-not-whole-repeats'>,
  words: Words,
): string {
  const choose = words.faults.choose(nearest.map(String));
  return rows % rowMultiple === 0
    ? words.faults.rowsTooFew(rows, choose)
    : words.faults.rowsOdd(rows, rowMultiple, choose);
}

function bedTooShort(
  { stitches: wanted, usable, nearest }: FaultOf<'plan/bed-too-short'>,
  words: Words,
): string {
  const short = words.faults.tooDeep(stitches(wanted, words), usable);
  return nearest
    ? words.faults.nearestFits(short, stitches(nearest.stitches, words), sizeOf(nearest, words))
    : words.faults.noneFits(short);
}

/** Rounded down: what it names must fit. */
const sizeOf = ({ widthCm, depthCm }: Neighbour, words: Words): string =>
  words.faults.size(roundedDown(widthCm, words), roundedDown(depthCm, words));

const roundedDown = (cm: number, { amounts }: Words): string =>
  `${amounts.decimal(Math.floor(cm * 10 + 1e-9) / 10)} cm`;

function scrapsTooLittle(fault: FaultOf<'plan/scraps-too-little'>, words: Words): string {
  const { stripes: wanted, stripeRows, possible, everyOther, scraps, largest } = fault;
  const each = words.amounts.list(scraps.map(({ yarn, stripes: howMany }) => `${yarn} ${howMany}`));
  const capped = scraps.some((scrap) => scrap.stripes === everyOther);
  const why = capped ? words.faults.everyOther(each) : each;
  const mend = largest
    ? words.faults.largest(sizeOf(largest, words), largest.stitches, largest.rows)
    : words.faults.addYarn;
  return words.faults.scrapsTooFew(wanted, stripeRows, possible, why, mend);
}
