/** Several bags together, against single plans added up and every order tried (invented figures). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../test/fixtures/plan-of.ts';
import { tries } from '../../test/tools/tries.ts';
import { turnColours } from '../journal/match.ts';
import { orderParty, partyKit, sharedYarn } from './party.ts';
import type { Plan } from './plan.ts';

const colours: Readonly<Record<string, string>> = { plum: '#6b2d5c', mint: '#9fd8c2', sand: '#d9b36c' };

function bag(
  rows: number,
  first: string,
  second: string,
  grams: readonly [number, number],
  edgeStitches = 2,
) {
  const yarn = (name: string, own: number) => ({ colour: colours[name], metresPer100g: 190, grams: own });
  return {
    name: `${first} and ${second}, ${rows}`,
    bed: { needles: 150, pitchMm: 6.5 },
    swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1 },
    edgeStitches,
    bag: { stitches: 20, rows },
    yarns: { [first]: yarn(first, grams[0]), [second]: yarn(second, grams[1]) },
    stripes: [
      { yarn: first, rows: 2 },
      { yarn: second, rows: 2 },
    ],
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const needs = (plan: Plan, yarn: string) => plan.yarn.find((need) => need.yarn === yarn);

const names = ['plum', 'mint', 'sand'];
const anyBag = fc
  .record({
    rows: fc.integer({ min: 2, max: 12 }).map((n) => 4 * n),
    pair: fc.shuffledSubarray(names, { minLength: 2, maxLength: 2 }),
    grams: fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 })),
  })
  .map(({ rows, pair: [first = '', second = ''], grams }) => planOf(bag(rows, first, second, grams)));
const parties = fc.array(anyBag, { minLength: 2, maxLength: 5 });

describe('a party', () => {
  it('needs of each yarn what its bags need one by one, reserve included', () => {
    fc.assert(
      fc.property(parties, (plans) => {
        for (const { yarn, metres, grams, withReserveGrams } of sharedYarn(plans)) {
          const own = plans.flatMap((plan) => needs(plan, yarn) ?? []);
          expect(metres).toBeCloseTo(sum(own.map((need) => need.metres)), 6);
          if (yarn === 'waste') continue;
          expect(grams).toBeCloseTo(sum(own.map((need) => need.grams ?? 0)), 6);
          expect(withReserveGrams).toBeCloseTo(sum(own.map((need) => need.withReserveGrams ?? 0)), 6);
        }
      }),
      { numRuns: tries(20) },
    );
  });

  it('is made in an order that leaves least over: no choice of bags that the yarn allows uses more of it', () => {
    fc.assert(
      fc.property(parties, (plans) => {
        const stock = new Map(sharedYarn(plans).map(({ yarn, haveGrams }) => [yarn, haveGrams]));
        const usedOf = (bags: readonly number[], yarn: string): number =>
          sum(bags.map((i) => (plans[i] && needs(plans[i], yarn)?.grams) || 0));
        const fits = (bags: readonly number[]): boolean =>
          names.every((yarn) => 1.1 * usedOf(bags, yarn) <= (stock.get(yarn) ?? 0) + 1e-9);
        const used = (bags: readonly number[]): number => sum(names.map((yarn) => usedOf(bags, yarn)));
        const { order, without, leftOver } = orderParty(plans);
        expect([...order, ...without].toSorted()).toEqual(plans.map((_, i) => i));
        expect(fits(order)).toBe(true);
        for (let bits = 0; bits < 1 << plans.length; bits++) {
          const choice = plans.flatMap((_, i) => (bits & (1 << i) ? [i] : []));
          if (fits(choice)) expect(used(choice)).toBeLessThanOrEqual(used(order) + 1e-6);
        }
        for (const { yarn, grams } of leftOver) {
          expect(grams).toBeCloseTo((stock.get(yarn) ?? 0) - usedOf(order, yarn), 6);
        }
      }),
      { numRuns: tries(20) },
    );
  });

  it('takes first what needs most of the scarcest', () => {
    const [small, large] = [
      planOf(bag(16, 'plum', 'mint', [90, 40])),
      planOf(bag(48, 'plum', 'mint', [90, 40])),
    ];
    expect(orderParty([small, large]).order).toEqual([1, 0]);
  });

  it('needs its tools once, and the prongs of each bag', () => {
    const kit = partyKit([
      planOf(bag(16, 'plum', 'mint', [9, 9], 1)),
      planOf(bag(16, 'plum', 'sand', [9, 9], 3)),
    ]);
    expect([kit.prongs, kit.allProngs, kit.clips, kit.ravelCordCm]).toEqual([3, [1, 3], 2, null]);
  });

  it('has a comb where one of the beds takes it', () => {
    const on = (without: readonly string[]) => {
      const one = bag(16, 'plum', 'mint', [9, 9]);
      return planOf({ ...one, bed: { ...one.bed, without } });
    };
    const [withComb, bare] = [on([]), on(['comb'])];
    const hasComb = (...plans: readonly Plan[]) => partyKit(plans).hasComb;
    expect([hasComb(withComb, bare), hasComb(bare, withComb), hasComb(bare, bare)]).toEqual([
      true,
      true,
      false,
    ]);
  });

  it('shares one ravel cord, as long as the widest bag needs it', () => {
    const plans = [20, 44].map((stitches) =>
      planOf({
        ...bag(16, 'plum', 'mint', [9, 9]),
        bag: { stitches, rows: 16 },
        waste: { yarn: 'waste', ravel: 'cord' },
      }),
    );
    expect(plans[1]?.ravelCordCm).toBeGreaterThan(plans[0]?.ravelCordCm ?? 0);
    expect(partyKit(plans).ravelCordCm).toBe(plans[1]?.ravelCordCm);
    expect(partyKit([...plans, planOf(bag(16, 'plum', 'mint', [9, 9]))]).ravelCordCm).toBe(
      plans[1]?.ravelCordCm,
    );
  });

  it('has its colours turned: after as many bags as yarns each has stood in each place', () => {
    const json = bag(16, 'plum', 'mint', [9, 9]);
    const first = [0, 1, 2].map((i) => turnColours(json, i).stripes);
    expect(first).toEqual([
      json.stripes,
      [
        { yarn: 'mint', rows: 2 },
        { yarn: 'plum', rows: 2 },
      ],
      json.stripes,
    ]);
  });
});
