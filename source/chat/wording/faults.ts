/** Every fault in one plain sentence: what is wrong, where, and how to mend it. A new code does not compile without one. */

import type { BedFault } from '../../bed/fault.ts';
import { formatNeedle } from '../../bed/needles.ts';
import { opposite } from '../../bed/side.ts';
import type { BriefFault, PlanFault } from '../../planning/fault.ts';
import type { Neighbour } from '../../planning/neighbour.ts';
import type { SessionFault } from '../../session/command.ts';
import type { Words } from '../../wording/words.ts';
import { formatBriefFault } from './brief-faults.ts';
import { formatCordFault } from './cord.ts';
import { formatRipBackFault } from './finding.ts';
import { formatReplanFault } from './finding-replan.ts';
import { formatMeasuredFault } from './measured.ts';
import { quote } from './values.ts';
import { formatWeighFault } from './weighed.ts';

export type Fault = BedFault | BriefFault | PlanFault | SessionFault;

/** Weights in the maker's units; a brief's own fields are in the units of the brief. */
export function formatFault(fault: Fault, words: Words): string {
  switch (fault.code) {
    case 'bed/needle-off-bed':
      return offBed(fault, words);
    case 'bed/needle-holds-loop':
      return words.say`Needle ${fault.needle} still holds a loop: move the loop before you push the needle out of work.`;
    case 'bed/needle-empty':
      return words.say`Needle ${fault.needle} has no loop to lift: look again where the edge of the work is.`;
    case 'bed/needle-out-of-work':
      return words.say`Needle ${fault.needle} is out of work: bring it into work before a loop goes on it.`;
    case 'bed/yarn-in-feeder':
      return words.say`The feeder holds ${fault.held}, so the carriage would knit: take ${fault.held} out before the work is dropped.`;
    case 'bed/no-counter':
      return words.say`This bed has no row counter: the rows are counted on the screen.`;
    case 'bed/loop-on-resting-needle':
      return words.say`Needle ${fault.needle} rests but holds a loop: bring it into work before the pass.`;
    case 'bed/cast-on-ends-far':
      return words.say`The carriage is on the ${fault.side}: wrap the needles towards it, so that the yarn ends there and not at ${fault.needle}.`;
    case 'bed/feeder-empty':
      return words.say`The feeder is empty, so a pass to the ${fault.to} would drop every stitch: thread a yarn first.`;
    case 'bed/feeder-full':
      return words.say`The feeder holds ${fault.held}: take ${fault.held} out before you thread ${fault.yarn}.`;
    case 'bed/yarn-not-in-feeder':
      return fault.held === null
        ? words.say`The feeder is empty, so ${fault.yarn} cannot be parked from it: thread ${fault.yarn} first.`
        : words.say`The feeder holds ${fault.held}, not ${fault.yarn}: park ${fault.held} instead.`;
    case 'bed/yarn-not-here':
      return words.say`There is no ${fault.yarn} to cut, in the feeder or parked: thread ${fault.yarn} first.`;
    case 'bed/carriage-already-there':
      return words.say`The carriage is already on the ${fault.side}: make this pass to the ${opposite(fault.side)}.`;
    case 'bed/no-working-needles':
      return words.say`No needle is working: bring the needles you want to knit on into work first.`;
    case 'bed/transfer-uneven':
      return words.say`A transfer from ${words.count(fault.fromCount, 'needle')} cannot go to ${words.count(fault.toCount, 'needle')}: name as many to set down on as to lift from.`;
    case 'bed/nothing-to-take-off':
      return words.say`The bed holds no loops, so there is nothing to take off: go on to the next step.`;
    case 'bed/bed-not-empty':
      return words.say`The bed still holds ${stitches(fault.stitchCount, words)}: take the work off first.`;
    case 'bed/loops-differ':
      return words.say`${words.count(fault.loopsOff, 'loop')} came off but ${words.count(fault.needleCount, 'needle')} would take them: choose as many needles as loops.`;

    case 'plan/rows-not-whole-repeats':
      return notWholeRepeats(fault, words);
    case 'plan/too-few-stitches':
      return words.say`bag.stitches is ${fault.stitches}: two edges that move need at least ${stitches(fault.least, words)}.`;
    case 'plan/bed-too-short':
      return bedTooShort(fault, words);
    case 'plan/scraps-cord-short':
      return words.say`${fault.yarn} is ${Math.ceil(fault.shortGrams)} g too little for the cord alone: name a longer yarn in cord.yarn, or shorten cord.tieCm.`;
    case 'plan/scraps-no-closer':
      return words.say`None of ${words.amounts.list(fault.scraps)} is enough for the last stripe, which also grafts and sews: add a longer leftover.`;
    case 'plan/scraps-too-little':
      return scrapsTooLittle(fault, words);
    case 'plan/yarn-not-weighed':
      return words.say`No yarn of the brief has been weighed: give its grams, or leave out --from-yarn.`;
    case 'plan/yarn-for-no-bag':
      return words.say`${fault.yarn} is ${Math.ceil(fault.shortGrams)} g short even for the smallest bag of this shape, ${sizeOf(fault.smallest, words)}: weigh it again, or take another yarn.`;

    case 'session/nothing-to-confirm':
      return words.say`The bag is finished: there is no step left to confirm.`;
    case 'session/too-many-steps':
      return fault.left === 1
        ? words.say`Only the last step is left, so ${fault.count} cannot be confirmed at once: confirm 1.`
        : words.say`${fault.count} steps cannot be confirmed: ${fault.left} are left, so give a whole number from 1 to ${fault.left}.`;
    case 'session/nothing-to-take-back':
      return words.say`There is nothing to take back: this is where the work began.`;
    case 'session/nothing-to-redo':
      return words.say`There is nothing to do again: nothing was taken back since the last step.`;
    case 'session/no-such-step':
      return words.say`There is no step ${fault.step}: this bag has steps 1 to ${fault.stepCount}.`;
    case 'session/already-there':
      return fault.done === 0
        ? words.say`You are there already: no step confirmed so far.`
        : words.say`You are there already: ${words.count(fault.done, 'step')} confirmed so far.`;
    case 'session/nothing-to-say':
      return fault.what === 'note'
        ? words.say`The note is empty: type what you want to remember after the word note.`
        : words.say`The mark has no name: type a name for this place after the word mark.`;

    case 'weigh/no-such-yarn':
    case 'weigh/not-a-weight':
    case 'weigh/more-than-before':
      return formatWeighFault(fault, words);
    case 'measured/not-a-size':
      return formatMeasuredFault(fault, words);
    case 'cord/not-asked':
    case 'cord/not-a-length':
      return formatCordFault(fault, words);
    case 'way/on-the-way':
      return words.slips.onTheWay(fault.kind, fault.at, fault.of);
    case 'way/not-on-one':
      return words.slips.notOnOne;
    case 'way/no-such-mend':
      return words.slips.noSuchMend;
    case 'way/between-places':
      return words.slips.betweenPlaces;
    case 'rip-back/no-such-place':
    case 'rip-back/not-behind':
      return formatRipBackFault(fault, words);
    case 'replan/rows-not-whole-repeats':
    case 'replan/rows-too-few':
    case 'replan/rows-too-many':
    case 'replan/unknown-yarn':
    case 'replan/yarn-not-to-come':
    case 'replan/colours-meet':
    case 'replan/measure-impossible':
    case 'replan/too-late':
      return formatReplanFault(fault, words);

    default:
      return formatBriefFault(fault, words);
  }
}

type FaultOf<C extends Fault['code']> = Extract<Fault, { readonly code: C }>;

const stitches = (howMany: number, words: Words): string => words.count(howMany, 'stitch', 'stitches');

function offBed({ needle, needleCount }: FaultOf<'bed/needle-off-bed'>, words: Words): string {
  const [first, last] = [formatNeedle(needleCount, 0), formatNeedle(needleCount, needleCount - 1)];
  return words.say`There is no needle ${quote(needle).slice(1, -1)}: the bed runs from ${first} to L1 and from R1 to ${last}.`;
}

function notWholeRepeats(
  { rows, stepRows, nearest }: FaultOf<'plan/rows-not-whole-repeats'>,
  words: Words,
): string {
  const choose = words.say`take ${words.amounts.choice(nearest.map(String))}`;
  return rows % stepRows === 0
    ? words.say`bag.rows is ${rows}, too few for a single shaping move: ${choose}.`
    : words.say`bag.rows is ${rows}, but whole stripe repeats and shaping moves come out every ${words.count(stepRows, 'row')}: ${choose}.`;
}

function bedTooShort(
  { stitches: wanted, usable, nearest }: FaultOf<'plan/bed-too-short'>,
  words: Words,
): string {
  const short = words.say`The bag is ${stitches(wanted, words)} deep, but the bed has ${words.count(usable, 'needle')} within its margins`;
  return nearest
    ? words.say`${short}: the nearest that can crawl is ${stitches(nearest.stitches, words)}, ${sizeOf(nearest, words)}.`
    : words.say`${short}, too few for any bag: take a longer bed, or narrower margins.`;
}

/** Rounded down: what it names must fit. */
const sizeOf = ({ widthCm, depthCm }: Neighbour, words: Words): string =>
  words.say`${roundedDown(widthCm, words)} wide and ${roundedDown(depthCm, words)} deep`;

const roundedDown = (cm: number, { amounts }: Words): string =>
  `${amounts.decimal(Math.floor(cm * 10 + 1e-9) / 10)} cm`;

function scrapsTooLittle(fault: FaultOf<'plan/scraps-too-little'>, words: Words): string {
  const { stripes: wanted, stripeRows, possible, everyOther, scraps, largest } = fault;
  const each = words.amounts.list(scraps.map(({ yarn, stripes: howMany }) => `${yarn} ${howMany}`));
  const capped = scraps.some((scrap) => scrap.stripes === everyOther);
  const why = capped ? words.say`${each}; no yarn can knit more than every other stripe` : each;
  const mend = largest
    ? words.say`the largest they make is ${sizeOf(largest, words)}, with bag.stitches ${largest.stitches} and bag.rows ${largest.rows}; or add a yarn`
    : words.say`add a yarn, or make the bag smaller`;
  return words.say`The bag has ${wanted} stripes of ${words.count(stripeRows, 'row')}, and the scraps knit ${possible} of them (${why}): ${mend}.`;
}
