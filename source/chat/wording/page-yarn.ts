import type { Plan } from '../../planning/plan.ts';
import type { YarnNeed } from '../../planning/yarn-needs.ts';
import { say } from '../../shared/say.ts';
import { formatMass, formatMassNeeded, formatYarnNeeded, type Units } from '../../shared/units.ts';
import { table, wrap } from './page.ts';
import { sayYarn } from './yarns.ts';

/** Names longer than this stand in a line of their own, above their numbers. */
const mostBeside = 20;

export function yarnLines(plan: Plan, units: Units): readonly string[] {
  const head = ['', say`length`, say`weight`, say`with 10 %`, say`you have`, ''];
  const rows = plan.yarn.map((need) => yarnRow(need, need.yarn === plan.brief.waste.yarn, units));
  const lines = table([head, ...rows.map(([name = '', ...cells]) => [isShort(name) ? name : '', ...cells])]);
  const shown = lines.flatMap((line, i) => {
    const name = rows[i - 1]?.[0] ?? '';
    const above = isShort(name) ? [] : wrap(name, 76).map((part) => `  ${part}`);
    return [...above, `  ${line}`];
  });
  return [...shown, `  ${say`The 10 % is a reserve (rule of thumb); nobody asked what waste yarn weighs.`}`];
}

const isShort = (name: string): boolean => name.length <= mostBeside;

function yarnRow(need: YarnNeed, waste: boolean, units: Units): readonly string[] {
  const grams = (amount: number | null, format: typeof formatMass): string =>
    amount === null ? '' : format(amount, units);
  return [
    waste && need.yarn !== 'waste' ? say`${need.yarn} (waste)` : sayYarn(need.yarn),
    formatYarnNeeded(need.metres, units),
    grams(need.grams, formatMassNeeded),
    grams(need.withReserveGrams, formatMassNeeded),
    grams(need.haveGrams, formatMass),
    waste ? '' : verdict(need, units),
  ];
}

function verdict({ enough, shortGrams }: YarnNeed, units: Units): string {
  if (enough === null) return say`not weighed`;
  return enough ? say`enough` : say`short by ${formatMassNeeded(shortGrams ?? 0, units)}`;
}
