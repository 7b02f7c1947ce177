import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { inSentence } from '../text.ts';
import { markYarns, type YarnMark } from '../yarn-marks.ts';

/** One yarn of the table, all in words. */
export interface YarnRow {
  readonly name: string;
  /** Null for yarns that no stripe and no cord is knitted of. */
  readonly mark: YarnMark | null;
  readonly use: string;
  readonly length: string;
  /** Weight with the reserve in it; blank where the thickness is unknown. */
  readonly weight: string;
  readonly have: string;
}

export function yarnRows(plan: Plan, words: Words): readonly YarnRow[] {
  const marks = markYarns(plan, 'print');
  return plan.yarn.map((need) => ({
    name: inSentence(need.yarn),
    mark: marks.get(need.yarn) ?? null,
    use: useOf(plan, need.yarn, words),
    length: words.amounts.yarnNeeded(need.metres),
    weight: need.withReserveGrams === null ? '' : words.amounts.massNeeded(need.withReserveGrams),
    have: haveText(need, words),
  }));
}

function useOf({ brief, stripes, cord }: Plan, yarn: string, words: Words): string {
  if (yarn === brief.waste.yarn) return words.say`waste rows`;
  const uses = [
    stripes.some((stripe) => stripe.yarn === yarn) ? words.say`stripes` : '',
    stripes.at(-1)?.yarn === yarn ? words.say`graft, seam` : '',
    cord.yarn === yarn ? words.say`cord` : '',
  ].filter((use) => use !== '');
  return uses.length > 0 ? uses.join(', ') : words.say`not used`;
}

function haveText({ haveGrams, shortGrams }: Plan['yarn'][number], words: Words): string {
  if (haveGrams === null) return '';
  const have = words.amounts.mass(haveGrams);
  return shortGrams
    ? words.say`${have}, ${words.amounts.massNeeded(shortGrams)} short`
    : words.say`${have}, enough`;
}
