/** The end of a bag, and another to match. */
import type { MatchWish } from '../journal/match.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

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

export type BagEndWords = ReturnType<typeof bagEnd>;
