import type { Amounts } from './amounts.ts';
import { theYarn, yarnName } from './forms.en.ts';
import { counted } from './plurals.en.ts';

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
  notWholeRepeats: (rows: number, rowMultiple: number, least: number) =>
    `${rows} rows are not whole stripe repeats: choose a multiple of ${rowMultiple}, from ${least} up.`,
  tooFew: (rows: number, least: number) =>
    `${rows} rows are fewer than the work needs from here: choose ${least} or more.`,
  tooMany: (rows: number, most: number) =>
    `${rows} rows are more than a bag may have: choose ${most} at the most.`,
  notAYarn: (yarn: string, known: readonly string[]) =>
    `${yarn} is not a yarn of this bag (${list(known)}): give its colour and metres per 100 g too, as in ${yarn} #c2a878 210.`,
  notToCome: (yarn: string) => `${yarn} knits no stripe from here on: name a yarn that is still to come.`,
  coloursMeet: (first: number, second: number, yarn: string) =>
    `Stripes ${first} and ${second} would meet in ${yarn} and read as one: choose another yarn.`,
  impossible: (sizeMm: number) =>
    `A stitch or row of ${decimal(sizeMm)} mm cannot be: measure the piece again.`,
  whichUnit: (size: string, sizeMm: number, dueMm: number, again: readonly string[]) =>
    `${size} would make one ${decimal(sizeMm)} mm, and the plan has ${decimal(dueMm)} mm. Say the unit too: ${again.join(' or ')}.`,
  boxedTooDeep: (boxedCm: number, belowCm: number) =>
    `A bottom ${length(boxedCm)} deep needs a larger bag, with so many rows it must be below ${length(belowCm)}: choose more rows.`,
  tooLate: 'The closing row is begun, so the size is settled: rip back to before it to change the plan.',
  cordBegun: 'The cord is begun, so its yarn is settled: rip back to before its cast-on to change it.',
});

export type ReplanWords = ReturnType<typeof replan>;
