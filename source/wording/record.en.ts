/** What became of a bag: its record, its end, what was measured, and its log played again. */

import type { InUse } from '../journal/fault.ts';
import type { MatchWish } from '../journal/match.ts';
import type { PlayerFault, PlayerView } from '../journal/player.ts';
import { forShell } from '../shared/plain-text.ts';
import { exhaustive } from '../shared/result.ts';
import type { Amounts } from './amounts.ts';
import { counted, yarnName } from './forms.en.ts';

export const record = ({ list, mass, massNeeded }: Amounts) => ({
  titles: {
    time: 'TIME',
    byPhase: 'BY PART',
    byStripe: 'BY STRIPE',
    slowPlaces: 'SLOW PLACES',
    size: 'SIZE',
    sizeMeasured: 'SIZE, MEASURED',
    stripes: 'STRIPES',
    yarnByPlan: 'YARN, BY THE PLAN',
    yarnWeighed: 'YARN, WEIGHED',
    bed: 'BED',
    notes: 'NOTES',
  },
  begun: (day: string) => `begun ${day}`,
  finishedOn: (day: string) => `finished ${day}`,
  lastWorkedOn: (day: string, done: number, stepCount: number) =>
    `last worked on ${day}, ${done} of ${stepCount} steps done`,
  inSittings: (duration: string, sittings: number) => `${duration} in ${counted.sitting(sittings)}`,
  rests: (duration: string) => `, and rests of ${duration}`,
  bench: 'at work',
  row: 'a row',
  withMoves: (duration: string) => `${duration}, shaping moves included`,
  backLabel: 'back ',
  takenBack: (times: number) => `${counted.time(times)} something was taken back`,
  stepAndRow: (step: number, row: number) => `step ${step}, row ${row}`,
  usually: (duration: string) => `usually ${duration}`,
  step: (step: number) => `step ${step}`,
  another: (path: string) =>
    `To make another, with this brief, its changes and these notes: slantwise work --like ${forShell(path)}`,
  leftLastTime: (left: string, yarn: string) =>
    `Last time ${left} of ${yarn} were left: this bag is planned with that.`,
  usedLastTime: (usedGrams: number, yarn: string, left: string) =>
    `Last time ${mass(usedGrams)} of ${yarn} were used and ${left} left: this bag is planned with what is left.`,
  noteAtEnd: (text: string) => `Last time, at the end: ${text}`,
  noteAtStep: (step: number, text: string) => `Last time, at step ${step}: ${text}`,
  weighed: (yarn: string, used: string) => `Weighed ${yarnName(yarn)}: ${used}.`,
  planned: (planned: number) => `planned ${massNeeded(planned)}`,
  weighedAfterStep: (done: number) => `weighed after step ${done}`,
  left: (left: string) => `${left} left`,
  usedOfLeft: (usedGrams: number, left: string, haveGrams: number) =>
    `${mass(usedGrams)} used, ${left} of ${mass(haveGrams)} left`,
  noSuchYarn: (yarn: string, known: readonly string[]) =>
    `${yarn} is not a yarn of this bag: it has ${list(known.map(yarnName))}.`,
  notAWeight: (weight: string, yarn: string) =>
    `${weight} of ${yarnName(yarn)} cannot be weighed: give 0 or more.`,
  moreThanBefore: (before: string, yarn: string, left: string) =>
    `There were ${before} of ${yarnName(yarn)} before the work, so ${left} cannot be left: weigh it once more.`,
  bagBegun: (name: string, day: string) => `${name}, begun ${day}`,
  bagFinished: 'The bag is finished.',
  logEnds: 'The log ends here; the bag is not finished.',
  backAtBench: (day: string) => `Back at the machine, ${day}`,
  placeToPause: 'A place to pause',
});

/** Why the player stays where it is. A replay can go to fewer places than a maker can, and knows no other words. */
export type CannotPlay = PlayerFault | { readonly code: 'player/cannot-go-there' };

/** Why the player stands, or that it plays. */
type Playing = Pick<PlayerView, 'playing' | 'ended' | 'last'>;

const fault = (why: CannotPlay, decimal: Amounts['decimal']): string => {
  switch (why.code) {
    case 'player/at-start':
      return 'This is the beginning of the log.';
    case 'player/at-end':
      return 'This is the end of the log.';
    case 'player/no-more-marks':
      return 'There is no mark further on.';
    case 'player/fastest':
      return `${decimal(why.speed)} times is as fast as it goes.`;
    case 'player/slowest':
      return `${decimal(why.speed)} times is as slow as it goes.`;
    case 'player/phase-not-reached':
      return `The log never comes to this part of the work: ${why.phase}.`;
    case 'player/stripe-not-reached':
      return `The log never comes to stripe ${why.stripe}.`;
    case 'player/cannot-go-there':
      return 'A replay goes to a part of the work or to a stripe. For example: go graft, or go stripe 3.';
    default:
      return exhaustive(why);
  }
};

export const player = ({ decimal }: Amounts) => ({
  note: 'note',
  lesson: 'lesson',
  play: 'play',
  fault: (why: CannotPlay) => fault(why, decimal),
  /** Both as a clock shows them. */
  time: (elapsed: string, total: string) => `${elapsed} of ${total}`,
  speed: (times: number) => `${decimal(times)}x`,
  state: ({ playing, ended, last }: Playing): string => {
    if (playing) return 'playing';
    if (ended) return 'the end';
    if (last?.event.do === 'mark') return `mark: ${last.event.name}`;
    return last?.event.do === 'pause' ? 'a place to pause' : 'paused';
  },
  /** From the longest to the shortest. */
  keys: [
    'Space: pause  ← →: a step  + -: speed  N: next mark  E: end  Q: leave  go stripe 3',
    'Space pause  ← → step  + - speed  N next mark  E end  Q leave',
    'Space, ← →, + -, N mark, E end, Q leave',
    'Q leaves',
  ] as readonly string[],
  /** The bag is open elsewhere, and there is no screen to show it on. */
  howToLook: (path: string) => `To look: slantwise replay ${path}`,
  /** The bag is open elsewhere, so this one may look. */
  onlyLooking: ({ pid, host }: InUse) =>
    `Another Slantwise (process ${pid}${host === null ? '' : ` on ${host}`}) has this bag open: here you only look, as far as it has come. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
});

/** The end of a bag, and another to match. */
const andRests = (rests: string | null): string => (rests === null ? '' : `, and rests of ${rests}`);

export const bagEnd = ({ length, list, massNeeded }: Amounts) => ({
  finished: (name: string, bench: string, sittings: number, rests: string | null) =>
    `${name} is finished: ${bench} at the bench in ${counted.sitting(sittings)}${andRests(rests)}.`,
  soFar: (name: string, bench: string, sittings: number, rests: string | null) =>
    `${name} so far: ${bench} at the bench in ${counted.sitting(sittings)}${andRests(rests)}.`,
  planned: (widthCm: number, depthCm: number) => `Planned: ${length(widthCm)} wide, ${length(depthCm)} deep.`,
  measureIt: (planned: string) =>
    `${planned} Measure it sewn and lying flat, and type measured, its width and its depth: the next bag learns from it.`,
  weighIt: (open: readonly { readonly yarn: string; readonly grams: number }[]) =>
    `By the plan it took ${list(open.map(({ yarn, grams }) => `${massNeeded(grams)} of ${yarn}`))}. Weigh what is left, and type such as: weigh ${open[0]?.yarn} 22`,
  next: [
    'draw bag shows it again, record this page; tag FILE.html writes a gift tag.',
    'another makes one like it; another larger, another turned or another in sand and mint changes it.',
  ],
  another: (name: string, before: string, wish: MatchWish['is'], widthCm: number, depthCm: number) => {
    const how = {
      same: 'the same again',
      turned: 'its colours turned round',
      yarns: 'in other colours',
      larger: 'a size up, a fifth wider and deeper (rule of thumb)',
      smaller: 'a size down (rule of thumb)',
      size: 'another size',
    }[wish];
    return `${name}, to match ${before}: ${how}, ${length(widthCm)} wide and ${length(depthCm)} deep by the plan.`;
  },
  cannotMatch: (why: string) => `No such bag can be made: ${why}`,
});

/** What is measured: the bag and its cord, and a swatch before them. */

const sides = { width: 'Width', depth: 'Depth' };

export const measured = ({ length, lengthNeeded }: Amounts) => ({
  got: (widthCm: number, depthCm: number) => `Measured: ${length(widthCm)} wide, ${length(depthCm)} deep.`,
  asPlanned: (side: 'width' | 'depth') => `${sides[side]} as planned.`,
  beside: (side: 'width' | 'depth', offCm: number, doubtCm: number) =>
    `${sides[side]} ${length(Math.abs(offCm))} ${offCm > 0 ? 'more' : 'less'} than planned, ${
      Math.abs(offCm) > doubtCm ? 'beyond' : 'within'
    } the ± ${length(doubtCm)} of the plan.`,
  impossible: (widthCm: number, depthCm: number) =>
    `No bag is ${length(widthCm)} by ${length(depthCm)}: type its width and then its depth, as in measured 13.6 18.`,
  cord: {
    planned: (rounds: number, left: number, lengthCm: number) =>
      left === 0
        ? `That is long enough for ${lengthNeeded(lengthCm)} of cord.`
        : `${rounds} rounds in all make ${lengthNeeded(lengthCm)}: ${left} more to knit.`,
    ofSecond: ' The second cord takes as many.',
    notAsked: 'The cord is measured at the step that asks for it, when 20 rounds of it are knitted.',
    impossible: (lengthCm: number) =>
      `Rounds of cord are not ${length(lengthCm)} long: type their length, as in cord 7.4.`,
    notALength: (text: string, usage: string) => `${text} is not a length. For example: ${usage}.`,
  },
});

/** A swatch knitted by guidance. */
export const swatchGuide = ({ units }: Amounts) => ({
  offer: 'knit, to be guided through one',
  place: (at: number, of: number) => `the swatch, step ${at} of ${of}`,
  dial: 'Set the stitch size that you would take for this yarn. What does the dial show?',
  castOn: (stitches: number, first: string, last: string, comb: boolean) =>
    `Carriage on the right. Bring ${counted.needle(stitches)} into work, ${first} to ${last}; needle hooks are sharp. Wind waste yarn once round each, from ${first} to ${last}, and knit 6 rows${comb ? '; hang the comb after two' : ''}.`,
  thread: 'Cut the waste yarn and thread the yarn of the bag. Row counter to 0.',
  rows: (from: number, through: number, of: number) => `Knit rows ${from} to ${through} of ${of}.`,
  'take-off':
    'Thread waste yarn and knit 6 rows. Weights off, a hand under them, feet clear; cut the yarn, and pass the carriage once with the feeder empty, holding the work: it drops.',
  rest: 'Let it rest as the bag will be used: soak it, press the water out, and dry it flat without pulling. This may take a day: quit keeps your place.',
  width: (stitches: number) =>
    `Lay it flat. How wide are the ${counted.stitch(stitches)}, the waste rows left out?`,
  height: (rows: number) => `And how high are the ${counted.row(rows)}?`,
  aside:
    'Knit side up: how far does the top edge stand aside of the bottom edge? To the left it is below 0; straight is 0.',
  'row-yarn': (stitches: number) =>
    `Unravel one row of ${counted.stitch(stitches)} and stretch its yarn straight: how long is it? All yarn figures get better by it.`,
  asIn:
    units.length === 'cm'
      ? { dial: '6', width: '19.2', height: '21.6', aside: '0.5', 'row-yarn': '68' }
      : { dial: '6', width: '7 1/2', height: '8 1/2', aside: '0.2', 'row-yarn': '27' },
  confirms: 'confirms that it is done',
  passesBy: 'passes by',
  also: 'back, stop leaves the swatch; answers, quit',
  enterWhenDone: 'Press Enter when it is done; back goes one step back, stop leaves the swatch.',
  notAMeasure: {
    width: 'Type how wide it is, as in 19.2 cm.',
    height: 'Type how high it is, as in 21.6 cm.',
    aside: 'Type how far, as in 0.5 or -0.5, or 0 where it is straight; Enter passes by.',
    'row-yarn': 'Type how long the yarn is, as in 68 cm; Enter passes by.',
  },
});
