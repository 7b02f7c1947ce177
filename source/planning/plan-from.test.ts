/** A plan changed half-way, on an invented bag of plum and mint by turns: counted by hand. */
import { describe, expect, it } from 'vitest';
import { planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import { leastRowsFrom, noChange, planFrom, planWithCordOf } from './plan-from.ts';

const sand = { colour: '#d8c49a', metresPer100g: 200, grams: 30, pricePer100g: null };
const plan = planOf({
  ...stripedBrief(20, 24),
  yarns: { ...stripedBrief(20, 24).yarns, sand: { colour: '#d8c49a', metresPer100g: 190 } },
});
const knitted = { row: 14, colouredThrough: 14 };

describe('rows from here on', () => {
  it('leave the closing row still to knit', () => {
    // One more row than the closing row makes the tube whole.
    expect([0, 2, 3, 6, 7, 14, 15].map((row) => leastRowsFrom(plan.brief, row))).toEqual([
      4, 4, 8, 8, 12, 16, 20,
    ]);
  });
});

describe('one yarn in the place of another', () => {
  const change = { rows: 32, ...noChange, recolour: { from: 'mint', to: 'sand', yarn: null } };
  const yarns = (from: object, at = knitted) =>
    valueIn(planFrom(plan, at, { ...change, ...from }))
      .stripes.map(({ yarn }) => yarn[0])
      .join('');

  it('comes from the next stripe on, and in the repeats that are added', () => {
    // Rows 15 and 16 are stripe 8; 32 rows are sixteen stripes.
    expect(yarns({})).toBe('pmpmpmp' + 'spspspsps');
    expect(yarns({ rows: 24 })).toBe('pmpmpmp' + 'spsps');
    // Its yarn is in the feeder already.
    expect(yarns({ rows: 24 }, { row: 14, colouredThrough: 15 })).toBe('pmpmpmpm' + 'psps');
  });

  it('new to the bag is known with what is told of it', () => {
    const recolour = { from: 'mint', to: 'gold', yarn: sand };
    const next = valueIn(planFrom(plan, knitted, { ...change, rows: 24, recolour }));
    expect(next.brief.yarns.get('gold')).toEqual(sand);
    expect(next.yarn.map(({ yarn }) => yarn)).toContain('gold');
    expect(plan.brief.yarns.has('gold')).toBe(false);
  });

  it.each([
    [
      { from: 'gold', to: 'sand', yarn: null },
      { code: 'replan/yarn-not-to-come', yarn: 'gold' },
    ],
    [
      { from: 'mint', to: 'gold', yarn: null },
      { code: 'replan/unknown-yarn', known: ['plum', 'mint', 'sand'] },
    ],
    [
      { from: 'mint', to: 'plum', yarn: null },
      { code: 'replan/colours-meet', first: 7, second: 8, yarn: 'plum' },
    ],
  ])('is not %j', (recolour, fault) => {
    expect(faultIn(planFrom(plan, knitted, { ...change, rows: 24, recolour }))).toMatchObject(fault);
  });
});

describe('what was measured', () => {
  const measured = (stitchMm: number, rowMm: number) =>
    planFrom(plan, knitted, { rows: 24, ...noChange, measured: { stitchMm, rowMm } });

  it('takes the place of the swatch, which leans as it did', () => {
    const { gauge, size } = valueIn(measured(5, 3));
    expect([gauge.stitchMm, gauge.rowMm]).toEqual([expect.closeTo(5, 9), expect.closeTo(3, 9)]);
    // Half of hypot(11 · 5, 24 · 3) mm.
    expect(size.widthCm).toBeCloseTo(4.53, 2);
  });

  it.each([
    [0.19, 3, 0.19],
    [61, 3, 61],
    [5, 0.1, 0.1],
    [5, 60.1, 60.1],
    [Number.NaN, 3, Number.NaN],
  ])('cannot be %d by %d mm', (stitchMm, rowMm, sizeMm) => {
    expect(faultIn(measured(stitchMm, rowMm))).toEqual({ code: 'replan/measure-impossible', sizeMm });
  });

  it('may be as small and as large as any gauge', () => {
    expect([measured(0.2, 0.2).ok, measured(60, 60).ok]).toEqual([true, true]);
  });
});

describe('the hangings', () => {
  const narrow = planOf(stripedBrief(8, 24, 16));

  it('that have begun stay, and the rest is hung as the new plan has it', () => {
    const through = narrow.hangings.filter(({ fromRow }) => fromRow <= 9);
    const next = valueIn(planFrom(narrow, { row: 8, colouredThrough: 8 }, { rows: 40, ...noChange }));
    expect(next.hangings.slice(0, through.length)).toEqual(through);
    expect(next.hangings.at(-1)?.throughRow).toBe(39);
    expect(next.begun).toBe(true);
    expect(next.neighbours.every(({ stitches }) => stitches === 8)).toBe(true);
  });
});

describe('the cord of another yarn', () => {
  it('takes its yarn from that, and nothing else', () => {
    const next = valueIn(planWithCordOf(plan, { to: 'mint', yarn: null }));
    const metres = (of: typeof plan, name: string) => of.yarn.find(({ yarn }) => yarn === name)?.metres ?? 0;
    const cord = metres(plan, 'plum') - metres(next, 'plum');
    expect(cord).toBeGreaterThan(1);
    expect(metres(next, 'mint') - metres(plan, 'mint')).toBeCloseTo(cord, 9);
    expect({ ...next, brief: plan.brief, cord: plan.cord, yarn: plan.yarn }).toEqual(plan);
    expect(faultIn(planWithCordOf(plan, { to: 'gold', yarn: null }))).toMatchObject({
      code: 'replan/unknown-yarn',
    });
  });
});
