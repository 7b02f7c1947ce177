/** What a bag takes of each yarn, and what it costs where prices were given. */

import type { Cost } from '../journal/bag-cost.ts';
import type { SharedYarn } from '../planning/party.ts';
import type { Plan } from '../planning/plan.ts';
import { reserveOf, type YarnNeed } from '../planning/yarn-needs.ts';
import { labelled, table, wrap } from './page.ts';
import type { Words } from './words.ts';

/** Names longer than this stand in a line of their own, above their numbers. */
const mostBeside = 20;

export function yarnLines({ yarn, brief, gauge }: Plan, words: Words): readonly string[] {
  const reserve = Math.round(100 * reserveOf(gauge)) - 100;
  return [
    ...yarnTable(yarn, [brief.waste.yarn], words.page.withPercent(reserve), words),
    `  ${words.page.reserveIs(reserve)}`,
  ];
}

export const sharedYarnLines = (
  yarn: readonly SharedYarn[],
  waste: readonly string[],
  words: Words,
): readonly string[] => yarnTable(yarn, waste, words.page.withReserve, words);

type Need = Omit<YarnNeed & SharedYarn, 'colour'>;

function yarnTable(
  yarn: readonly Need[],
  waste: readonly string[],
  withReserve: string,
  words: Words,
): readonly string[] {
  const head = ['', words.page.length, words.page.weight, withReserve, words.page.youHave, ''];
  const rows = yarn.map((need) => yarnRow(need, waste.includes(need.yarn), words));
  const lines = table([head, ...rows.map(([name = '', ...cells]) => [isShort(name) ? name : '', ...cells])]);
  return lines.flatMap((line, i) => {
    const name = rows[i - 1]?.[0] ?? '';
    const above = isShort(name) ? [] : wrap(name, 76).map((part) => `  ${part}`);
    return [...above, `  ${line}`];
  });
}

const isShort = (name: string): boolean => name.length <= mostBeside;

function yarnRow(need: Need, waste: boolean, words: Words): readonly string[] {
  const { mass, massNeeded } = words.amounts;
  const grams = (amount: number | null, show: typeof mass): string => (amount === null ? '' : show(amount));
  return [
    waste && need.yarn !== 'waste' ? words.page.waste(need.yarn) : words.prompt.yarn(need.yarn),
    words.amounts.yarnNeeded(need.metres),
    grams(need.grams, massNeeded),
    grams(need.withReserveGrams, massNeeded),
    grams(need.haveGrams, mass),
    waste ? '' : verdict(need, words),
  ];
}

function verdict({ enough, shortGrams }: Need, words: Words): string {
  if (enough === null) return words.page.notWeighed;
  return enough ? words.page.enough : words.page.shortBy(shortGrams ?? 0);
}

export const costLines = (cost: Cost | null, { plan }: Words): readonly string[] =>
  cost ? labelled(plan.cost, plan.costs(cost)) : [];
