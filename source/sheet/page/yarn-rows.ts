import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
import { formatMass, formatMassNeeded, formatYarnNeeded, type Units } from '../../shared/units.ts';
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

export function yarnRows(plan: Plan, units: Units): readonly YarnRow[] {
  const marks = markYarns(plan, 'print');
  return plan.yarn.map((need) => ({
    name: inSentence(need.yarn),
    mark: marks.get(need.yarn) ?? null,
    use: useOf(plan, need.yarn),
    length: formatYarnNeeded(need.metres, units),
    weight: need.withReserveGrams === null ? '' : formatMassNeeded(need.withReserveGrams, units),
    have: haveText(need, units),
  }));
}

function useOf({ brief, stripes, cord }: Plan, yarn: string): string {
  if (yarn === brief.waste.yarn) return say`waste rows`;
  const uses = [
    stripes.some((stripe) => stripe.yarn === yarn) ? say`stripes` : '',
    stripes.at(-1)?.yarn === yarn ? say`graft, seam` : '',
    cord.yarn === yarn ? say`cord` : '',
  ].filter((use) => use !== '');
  return uses.length > 0 ? uses.join(', ') : say`not used`;
}

function haveText({ haveGrams, shortGrams }: Plan['yarn'][number], units: Units): string {
  if (haveGrams === null) return '';
  const have = formatMass(haveGrams, units);
  return shortGrams ? say`${have}, ${formatMassNeeded(shortGrams, units)} short` : say`${have}, enough`;
}
