/** Every fault in one plain sentence: what is wrong, where, and how to mend it. A new code does not compile without one. */
import type { BedFault } from '../bed/bed.ts';
import { formatNeedle } from '../bed/needles.ts';
import type { BriefFault, Neighbour, PlanFault } from '../planning/fault.ts';
import type { SessionFault } from '../session/command.ts';
import { isOf } from '../shared/result.ts';
import { formatBriefFault } from './brief-faults.ts';
import { sayBedFault } from './faults.en.ts';
import { formatRipBackFault } from './finding.ts';
import { formatCordFault, formatMeasuredFault, formatWeighFault } from './measured.ts';
import { formatReplanFault } from './replan.ts';
import { quote } from './values.ts';
import type { Words } from './words.ts';

export type Fault = BedFault | BriefFault | PlanFault | SessionFault;

/** Weights in the maker's units; a brief's own fields are in the units of the brief. */
export function formatFault(fault: Fault, words: Words): string {
  if (isOf(fault, 'weigh')) return formatWeighFault(fault, words);
  if (isOf(fault, 'measured')) return formatMeasuredFault(fault, words);
  if (isOf(fault, 'cord')) return formatCordFault(fault, words);
  if (isOf(fault, 'rip-back')) return formatRipBackFault(fault, words);
  if (isOf(fault, 'replan')) return formatReplanFault(fault, words);
  if (fault.code === 'bed/needle-off-bed') return offBed(fault, words);
  if (isOf(fault, 'bed')) return sayBedFault(words.faults.bed, fault);
  switch (fault.code) {
    case 'plan/rows-not-whole-repeats':
      return notWholeRepeats(fault, words);
    case 'plan/too-few-stitches':
      return words.faults.tooFewStitches(fault.stitches, stitches(fault.least, words));
    case 'plan/bed-too-short':
      return bedTooShort(fault, words);
    case 'plan/boxed-too-deep':
      return words.faults.boxedTooDeep(fault.boxedCm, roundedDown(fault.belowCm, words));
    case 'plan/scraps-cord-short':
      return words.faults.scrapsCordShort(fault.yarn, Math.ceil(fault.shortGrams));
    case 'plan/scraps-no-closer':
      return words.faults.scrapsNoCloser(fault.scraps);
    case 'plan/scraps-too-little':
      return scrapsTooLittle(fault, words);
    case 'plan/yarn-not-weighed':
      return words.faults.yarnNotWeighed;
    case 'plan/yarn-for-no-bag':
      return words.faults.yarnForNoBag(
        fault.yarn,
        Math.ceil(fault.shortGrams),
        sizeOf(fault.smallest, words),
      );

    case 'session/nothing-to-confirm':
      return words.faults.nothingToConfirm;
    case 'session/too-many-steps':
      return fault.left === 1
        ? words.faults.tooManySteps(fault.count)
        : words.faults.fewerLeft(fault.count, fault.left);
    case 'session/nothing-to-take-back':
      return words.faults.nothingToTakeBack;
    case 'session/nothing-to-redo':
      return words.faults.nothingToRedo;
    case 'session/no-such-step':
      return words.faults.noSuchStep(fault.step, fault.stepCount);
    case 'session/already-there':
      return fault.done === 0 ? words.faults.alreadyThere : words.faults.alreadyAt(fault.done);
    case 'session/not-a-name':
      return words.logs.notAName(fault.most);
    case 'session/nothing-to-say':
      return fault.what === 'note' ? words.faults.nothingToSay : words.faults.markWithoutName;

    case 'way/on-the-way':
      return words.slips.onTheWay(fault.back, fault.at, fault.of);
    case 'way/not-on-one':
      return words.slips.notOnOne;
    case 'way/no-such-mend':
      return words.slips.noSuchMend;
    case 'way/between-places':
      return words.slips.betweenPlaces;

    default:
      return formatBriefFault(fault, words);
  }
}

type FaultOf<C extends Fault['code']> = Extract<Fault, { readonly code: C }>;

const stitches = (howMany: number, words: Words): string => words.counted.stitch(howMany);

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
