/** What is measured: the bag and its cord, and a swatch before them. */
import type { Amounts } from './amounts.ts';
import { counted } from './plurals.en.ts';

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

export type MeasuredWords = ReturnType<typeof measured>;

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

export type SwatchGuideWords = ReturnType<typeof swatchGuide>;
