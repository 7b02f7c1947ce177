import type { Plan } from '../../planning/plan.ts';
import { reserveOf } from '../../planning/yarn-needs.ts';
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

export const yarnTitles = ({ gauge }: Plan, { sheet }: Words): readonly string[] => [
  sheet.mark,
  sheet.yarn,
  sheet.forWhat,
  sheet.needs,
  sheet.withReserve(Math.round(100 * reserveOf(gauge)) - 100),
  sheet.youHave,
];

export function yarnRows(plan: Plan, words: Words): readonly YarnRow[] {
  const marks = markYarns(plan, 'print');
  const { amounts } = words;
  return plan.yarn.map((need) => ({
    name: inSentence(need.yarn),
    mark: marks.get(need.yarn) ?? null,
    use: useOf(plan, need.yarn, words),
    length: amounts.yarnNeeded(need.metres),
    weight: need.withReserveGrams === null ? '' : amounts.massNeeded(need.withReserveGrams),
    have: haveText(need, words),
  }));
}

function useOf({ brief, stripes, cord }: Plan, yarn: string, { sheet }: Words): string {
  if (yarn === brief.waste.yarn) return sheet.wasteRows;
  const uses = [
    ...(stripes.some((stripe) => stripe.yarn === yarn) ? [sheet.stripesUse] : []),
    ...(stripes.at(-1)?.yarn === yarn ? [sheet.graftAndSeam] : []),
    ...(cord.yarn === yarn ? [sheet.cordUse] : []),
  ];
  return uses.length > 0 ? uses.join(', ') : sheet.notUsed;
}

function haveText({ haveGrams, shortGrams }: Plan['yarn'][number], { sheet, amounts }: Words): string {
  if (haveGrams === null) return '';
  const have = amounts.mass(haveGrams);
  return shortGrams ? sheet.short(have, amounts.massNeeded(shortGrams)) : sheet.enough(have);
}
