/** Why something cannot be done, on the bed, in a plan, in a session or on a disk, and what to do instead. */
import { type BedFault, opposite } from '../bed/bed.ts';
import { forShell } from '../shared/plain-text.ts';
import type { Amounts } from './amounts.ts';
import type { SayingsBy } from './by-kind.ts';
import { counted } from './forms.en.ts';

/** Of a needle that the bed has not, its name may be anything that was typed: `faults.ts` makes it harmless. */
export type PlainBedFault = Exclude<BedFault, { readonly code: 'bed/needle-off-bed' }>;

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
  } satisfies SayingsBy<'code', PlainBedFault>,
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
  rowsOdd: (rows: number, rowMultiple: number, choose: string) =>
    `bag.rows is ${rows}, but whole stripe repeats and shaping moves come out every ${counted.row(rowMultiple)}: ${choose}.`,
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

/** What is wrong with a file, a disk or a log, and what to do about it. */
export const files = (_: Amounts) => ({
  line: {
    'not-text': 'holds bytes that are not text',
    'not-json': 'is not JSON',
    'no-checksum': 'has lost its checksum',
    checksum: 'does not fit its checksum: it was changed, or a line before it is missing',
    'wrong-fields': 'does not have the fields it should',
    'out-of-place': 'says too early that the bag is finished',
  },
  notALog: 'This file is not a Slantwise log. Name a file that Slantwise wrote.',
  noHeader:
    'This log was cut off before anything was recorded in it. Start the bag from its brief, in a new log.',
  newerVersion: (version: number, known: number) =>
    `This log is written in format ${version} and this program reads up to ${known}: open it with a newer Slantwise.`,
  damagedLine: (line: number, reason: string) => `Line ${line} ${reason}.`,
  stepDiffers: (line: number, recorded: number, reached: number, soundPart: string) =>
    `Line ${line} says ${counted.step(recorded)} were done, but it comes to ${reached}. ${soundPart}`,
  commandRefused: (line: number, code: string, soundPart: string) =>
    `Line ${line} holds something that cannot be done there (${code}). ${soundPart}`,
  unknownEvent: (line: number, name: string) =>
    `Line ${line} records "${name}", which this program does not know: open the log with a newer Slantwise.`,
  brief: (code: string, program: string) =>
    `This program cannot plan the brief in this log (${code}): open it with Slantwise ${program}, which began it.`,
  planDiffers: (figure: string, planned: string, recorded: string, program: string) =>
    `This program plans the bag differently (${figure}: ${planned}, in the log ${recorded}): open it with Slantwise ${program}, which began it.`,
  nothingAfter: 'Nothing after it can be used.',
  lineOneSound: 'Line 1 is sound.',
  linesSound: (through: number) => `Lines 1 to ${through} are sound.`,
  laterLines: (step: number) => `Later lines say that ${counted.step(step)} were done.`,
  tornTail: (keptAs: string) =>
    `The last line of the log was cut off, by a crash perhaps. It is kept in ${keptAs}; all before it is sound.`,
  cutOff: (line: number) =>
    `Line ${line}, the last, was cut off and belongs to no confirmed step. All before it is sound: open the log to go on from there.`,
  noSuchEvent: (after: number, events: number) =>
    `There is no event ${after}: the log has ${counted.event(events)}.`,
  disk: {
    'disk-full': 'the disk is full',
    'read-only': 'the disk can only be read',
    'no-permission': 'there is no permission',
    gone: 'the file or its folder is gone',
    'in-use': 'another Slantwise has the log open',
    changed: 'the file was changed by something else',
    'no-answer': 'the disk does not answer',
    'disk-error': 'the disk reports an error',
  },
  missing: (path: string) => `${path} does not exist. Check the name.`,
  noFolder: (path: string) => `The folder of ${path} does not exist. Make it, or choose another.`,
  isFolder: (path: string) => `${path} is a folder. Name a file in it.`,
  exists: (path: string) => `${path} exists already and is left as it is. Choose another name.`,
  tooLarge: (path: string, mostBytes: number) =>
    `${path} is larger than ${mostBytes} KiB, too large to be a brief or a log. Check the name.`,
  notText: (path: string) => `${path} is not text in UTF-8. Save it again as UTF-8.`,
  inUseElsewhere: (path: string, pid: number, host: string) =>
    `${path} is open in another Slantwise (process ${pid} on ${host}): close that one, or just watch. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
  inUse: (path: string, pid: number) =>
    `${path} is open in another Slantwise (process ${pid}): close that one, or just watch. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
  notSaved: (trouble: string, waiting: string) =>
    `Not saved: ${trouble}. The work goes on in memory and ${waiting} to be written; saving is tried every few seconds.`,
  lineWaits: '1 line waits',
  linesWait: (lines: number) => `${lines} lines wait`,
  saveElsewhere: 'Type save and a file elsewhere, such as save ../bag.jsonl, or quit again without saving.',
  leftWithout: (missing: string) => `Closed without saving. ${missing}`,
  logNotOnDisk: (trouble: string) => `The log is not on disk: ${trouble}.`,
  lineNotOnDisk: (trouble: string) => `1 line of the log is not on disk: ${trouble}.`,
  linesNotOnDisk: (waiting: number, trouble: string) =>
    `${waiting} lines of the log are not on disk: ${trouble}.`,
  savedElsewhere: (path: string) =>
    `The whole log is in ${path}, and the work goes on there. Next time: slantwise --log ${forShell(path)}`,
  slow: (ms: number) =>
    `The disk is slow: it took ${Math.round(ms)} ms to save a press. Each press waits for it, but not longer than a second.`,
  holds:
    'The disk may hold up this terminal until it answers. You can close the window; that loses nothing more.',
});
