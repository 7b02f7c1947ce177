/** The record of a bag: what was done, weighed and noted. */

import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';
import { yarnName } from './forms.en.ts';

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
  another: (forShell: string) =>
    `To make another, with this brief, its changes and these notes: slantwise work --like ${forShell}`,
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

export type RecordWords = ReturnType<typeof record>;
