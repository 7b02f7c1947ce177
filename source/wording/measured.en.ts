import type { Amounts } from './amounts.ts';

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
