/**
 * Several bags together: a yarn that more than one of them uses is weighed once, and must do for all. Where it does not, those
 * are made that leave least over, and first the one that takes most of what is scarcest, so that a shortfall meets a small one.
 */
import { hair } from '../shared/numbers.ts';
import { type Kit, kitOf, type Plan } from './plan.ts';
import { reserveOf, type YarnNeed } from './yarn-needs.ts';

/** One yarn's part in all bags; `haveGrams` is the most that any brief says there is. */
export interface SharedYarn extends YarnNeed {
  /** Null for waste yarn. */
  readonly colour: string | null;
}

/** Yarns of one name and colour are one yarn; in the order in which the bags name them. */
export function sharedYarn(plans: readonly Plan[]): readonly SharedYarn[] {
  const shared = new Map<string, SharedYarn>();
  for (const plan of plans)
    for (const need of plan.yarn) {
      const colour = plan.brief.yarns.get(need.yarn)?.colour.toLowerCase() ?? null;
      const key = JSON.stringify([need.yarn, colour]);
      const { metres, grams, haveGrams } = need;
      const withReserveGrams = grams === null ? null : grams * reserveOf(plan.gauge);
      const own = { yarn: need.yarn, colour, metres, grams, withReserveGrams, haveGrams };
      const before = shared.get(key);
      shared.set(key, judge(before ? together(before, own) : own));
    }
  return [...shared.values()];
}

type YarnSums = Omit<SharedYarn, 'enough' | 'shortGrams'>;

function together(one: YarnSums, other: YarnSums): YarnSums {
  const sum = (a: number | null, b: number | null): number | null =>
    a === null || b === null ? null : a + b;
  const have = [one.haveGrams, other.haveGrams].filter((grams) => grams !== null);
  return {
    ...one,
    metres: one.metres + other.metres,
    grams: sum(one.grams, other.grams),
    withReserveGrams: sum(one.withReserveGrams, other.withReserveGrams),
    haveGrams: have.length > 0 ? Math.max(...have) : null,
  };
}

function judge(amounts: YarnSums): SharedYarn {
  const { withReserveGrams, haveGrams } = amounts;
  const shortGrams =
    withReserveGrams === null || haveGrams === null ? null : Math.max(0, withReserveGrams - haveGrams);
  return { ...amounts, shortGrams, enough: shortGrams === null ? null : shortGrams === 0 };
}

/** What is over once bags are made. */
interface LeftOver {
  readonly yarn: string;
  readonly colour: string | null;
  readonly grams: number;
}

interface PartyOrder {
  /** Bags by their number, from 0, in the order in which to make them. */
  readonly order: readonly number[];
  /** For these the yarn does not reach. */
  readonly without: readonly number[];
  /** Of each yarn that was weighed. */
  readonly leftOver: readonly LeftOver[];
}

/** More bags than this are chosen one by one, the one that takes most first, instead of trying every choice. */
const mostTried = 12;

export function orderParty(plans: readonly Plan[]): PartyOrder {
  const yarns = sharedYarn(plans);
  const stock = yarns.map(({ haveGrams }) => haveGrams);
  const needs = plans.map((plan) => yarns.map(({ yarn, colour }) => needOf(plan, yarn, colour)));
  const fits = (bags: readonly number[]): boolean =>
    stock.every((have, y) => have === null || sum(bags.map((i) => needs[i]?.[y]?.withReserve ?? 0)) <= have);
  const scarcity = (i: number): number =>
    Math.max(...stock.map((have, y) => (have === null ? 0 : (needs[i]?.[y]?.withReserve ?? 0) / have)));
  const all = plans.map((_, i) => i).toSorted((a, b) => scarcity(b) - scarcity(a) || a - b);
  const used = (bags: readonly number[]): number =>
    sum(stock.map((have, y) => (have === null ? 0 : sum(bags.map((i) => needs[i]?.[y]?.grams ?? 0)))));
  const order = choose(all, fits, used);
  const leftOver = yarns.flatMap(({ yarn, colour, haveGrams }, y) =>
    haveGrams === null
      ? []
      : [{ yarn, colour, grams: haveGrams - sum(order.map((i) => needs[i]?.[y]?.grams ?? 0)) }],
  );
  return { order, without: all.filter((i) => !order.includes(i)), leftOver };
}

function choose(
  all: readonly number[],
  fits: (bags: readonly number[]) => boolean,
  used: (bags: readonly number[]) => number,
): readonly number[] {
  if (fits(all)) return all;
  if (all.length > mostTried) return oneByOne(all, fits);
  const choices = Array.from({ length: 1 << all.length }, (_, bits) =>
    all.filter((_, at) => bits & (1 << at)),
  );
  const better = (one: readonly number[], other: readonly number[]): boolean =>
    used(one) - used(other) > hair ||
    (Math.abs(used(one) - used(other)) <= hair && one.length > other.length);
  return choices
    .filter(fits)
    .reduce<readonly number[]>((best, choice) => (better(choice, best) ? choice : best), []);
}

function oneByOne(all: readonly number[], fits: (bags: readonly number[]) => boolean): readonly number[] {
  const bags: number[] = [];
  for (const bag of all) {
    bags.push(bag);
    if (!fits(bags)) bags.pop();
  }
  return bags;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function needOf(plan: Plan, yarn: string, colour: string | null) {
  const need = plan.yarn.find(
    (one) => one.yarn === yarn && (plan.brief.yarns.get(yarn)?.colour.toLowerCase() ?? null) === colour,
  );
  const grams = need?.grams ?? 0;
  return { grams, withReserve: grams * reserveOf(plan.gauge) };
}

/** Tools that do for all bags, each counted once; the yarn is that of all. */
export function partyKit(plans: readonly Plan[]): Kit & { readonly allProngs: readonly number[] } {
  const kits = plans.map(kitOf);
  const cords = kits.flatMap(({ ravelCordCm }) => (ravelCordCm === null ? [] : [ravelCordCm]));
  return {
    prongs: Math.max(...kits.map(({ prongs }) => prongs)),
    allProngs: [...new Set(kits.map(({ prongs }) => prongs))].toSorted((a, b) => a - b),
    hasComb: kits.some(({ hasComb }) => hasComb),
    clips: Math.max(...kits.map(({ clips }) => clips)),
    ravelCordCm: cords.length === 0 ? null : Math.max(...cords),
    yarns: sharedYarn(plans)
      .filter(({ metres }) => metres > 0)
      .map(({ yarn, metres, withReserveGrams }) => ({ yarn, metres, grams: withReserveGrams })),
  };
}
