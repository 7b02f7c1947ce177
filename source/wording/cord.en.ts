import type { Amounts } from './amounts.ts';

export const cord = ({ length, lengthNeeded }: Amounts) => ({
  usage: 'cord LENGTH',
  summary: 'how long the first rounds of the cord are: its rest is counted by that',
  gist: 'the measured cord',
  planned: (rounds: number, left: number, lengthCm: number) =>
    left === 0
      ? `That is long enough for ${lengthNeeded(lengthCm)} of cord.`
      : `${rounds} rounds in all make ${lengthNeeded(lengthCm)}: ${left} more to knit.`,
  notAsked: 'The cord is measured at the step that asks for it, when 20 rounds of it are knitted.',
  impossible: (lengthCm: number) =>
    `Rounds of cord are not ${length(lengthCm)} long: type their length, as in cord 7.4.`,
  notALength: (text: string, usage: string) => `${text} is not a length. For example: ${usage}.`,
});

export type CordWords = ReturnType<typeof cord>;
