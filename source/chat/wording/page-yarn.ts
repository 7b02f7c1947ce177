import type { SharedYarn } from '../../planning/party.ts';
import type { Plan } from '../../planning/plan.ts';
import { reserveOf, type YarnNeed } from '../../planning/yarn-needs.ts';
import { say } from '../../shared/say.ts';
import { formatMass, formatMassNeeded, formatYarnNeeded, type Units } from '../../shared/units.ts';
import { table, wrap } from './page.ts';
import { sayYarn } from './yarns.ts';

/** Names longer than this stand in a line of their own, above their numbers. */
const mostBeside = 20;

export function yarnLines({ yarn, brief, gauge }: Plan, units: Units): readonly string[] {
  const reserve = Math.round(100 * reserveOf(gauge)) - 100;
  return [
    ...yarnTable(yarn, [brief.waste.yarn], say`with ${reserve} %`, units),
    `  ${say`The ${reserve} % is a reserve (rule of thumb); nobody asked what waste yarn weighs.`}`,
  ];
}

export const sharedYarnLines = (
  yarn: readonly SharedYarn[],
  waste: readonly string[],
  units: Units,
): readonly string[] => yarnTable(yarn, waste, say`with reserve`, units);

type Need = Omit<YarnNeed & SharedYarn, 'colour'>;

function yarnTable(
  yarn: readonly Need[],
  waste: readonly string[],
  withReserve: string,
  units: Units,
): readonly string[] {
  const head = ['', say`length`, say`weight`, withReserve, say`you have`, ''];
  const rows = yarn.map((need) => yarnRow(need, waste.includes(need.yarn), units));
  const lines = table([head, ...rows.map(([name = '', ...cells]) => [isShort(name) ? name : '', ...cells])]);
  return lines.flatMap((line, i) => {
    const name = rows[i - 1]?.[0] ?? '';
    const above = isShort(name) ? [] : wrap(name, 76).map((part) => `  ${part}`);
    return [...above, `  ${line}`];
  });
}

const isShort = (name: string): boolean => name.length <= mostBeside;

function yarnRow(need: Need, waste: boolean, units: Units): readonly string[] {
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

function verdict({ enough, shortGrams }: Need, units: Units): string {
  if (enough === null) return say`not weighed`;
  return enough ? say`enough` : say`short by ${formatMassNeeded(shortGrams ?? 0, units)}`;
}
