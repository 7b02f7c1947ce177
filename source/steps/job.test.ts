/** What the acts of a job say, followed by hand after the rules at the heads of the files that make them; the bags are invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import type { Act } from './act.ts';
import { isGuarded } from './acts.ts';
import { allSteps } from './job.ts';
import type { Step } from './step.ts';

const bag = stripedBrief(12, 64, 60);

const stepsOf = (change: object): readonly Step[] => [...allSteps(jobOf({ ...bag, ...change }))];

const actsOf = <Kind extends Act['kind']>(steps: readonly Step[], kind: Kind) =>
  steps.flatMap(({ row, act }) =>
    act.kind === kind ? [{ row, act: act as Extract<Act, { kind: Kind }> }] : [],
  );

/** Two rows of plum, ten of mint, four of sand, again and again. */
const unevenStripes = {
  yarns: { ...bag.yarns, sand: { colour: '#e0c090', metresPer100g: 190 } },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 10 },
    { yarn: 'sand', rows: 4 },
  ],
};

describe('a row', () => {
  it('is counted in its stripe', () => {
    const passes = actsOf(stepsOf(unevenStripes), 'pass').slice(0, 17);
    expect(passes.map(({ act }) => `${act.yarn} ${act.rowInStripe} of ${act.stripeRows}`)).toEqual([
      ...[1, 2].map((row) => `plum ${row} of 2`),
      ...[1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((row) => `mint ${row} of 10`),
      ...[1, 2, 3, 4].map((row) => `sand ${row} of 4`),
      'plum 1 of 2',
    ]);
  });

  it('is counted in all where the bed has no counter, and only there', () => {
    const counted = actsOf(stepsOf({ bed: { ...bag.bed, without: ['counter'] } }), 'pass');
    expect(counted.map(({ act }) => act.rowInAll)).toEqual(counted.map(({ row }) => row));
    expect(actsOf(stepsOf({}), 'pass').every(({ act }) => act.rowInAll === null)).toBe(true);
  });
});

describe('a step that is looked at first', () => {
  const steps = stepsOf(unevenStripes);

  it('is each that cuts, and the first pass of a stripe', () => {
    const cuts = steps.filter(({ moves }) => moves.some(({ move }) => move === 'cut'));
    expect(cuts.length).toBeGreaterThan(3);
    expect(cuts.every(isGuarded)).toBe(true);
    const [first, second] = steps.filter(({ act }) => act.kind === 'pass');
    expect([first, second].map((step) => step && isGuarded(step))).toEqual([true, false]);
  });

  it('is none that moves needles or loops by hand', () => {
    const byHand = steps.filter(({ act }) =>
      ['increase', 'move-weights', 'bars', 'graft-pair'].includes(act.kind),
    );
    expect(byHand.length).toBeGreaterThan(40);
    expect(byHand.filter(isGuarded)).toEqual([]);
  });
});

describe('a strand that waits', () => {
  const crossed = (steps: readonly Step[], yarn: string): readonly number[] =>
    actsOf(steps, 'pass').flatMap(({ row, act }) => (act.crosses.includes(yarn) ? [row] : []));

  it('longer than six rows is crossed whenever four have gone by', () => {
    const steps = stepsOf(unevenStripes);
    // Plum is knitted in rows 1 and 2, 17 and 18, 33 and 34, and for the last time in 49 and 50.
    expect(crossed(steps, 'plum')).toEqual([7, 11, 15, 23, 27, 31, 39, 43, 47]);
    // Sand in rows 13 to 16, 29 to 32, 45 to 48 and 61 on: it is not there before.
    expect(crossed(steps, 'sand')).toEqual([21, 25, 37, 41, 53, 57]);
    // Mint waits for six rows, and that is not too long.
    expect(crossed(steps, 'mint')).toEqual([]);
  });

  it('is crossed together with others that wait', () => {
    const steps = stepsOf({
      ...unevenStripes,
      stripes: [
        { yarn: 'plum', rows: 2 },
        { yarn: 'sand', rows: 4 },
        { yarn: 'mint', rows: 10 },
      ],
    });
    // In row 11 plum has waited for eight rows and sand for four.
    expect(actsOf(steps, 'pass').find(({ row }) => row === 11)?.act.crosses).toEqual(['plum', 'sand']);
  });
});

describe('the weight on the work', () => {
  it('goes from the comb to claws once twenty rows hang, which are moved up every ten', () => {
    const steps = stepsOf({});
    // Eight rows of waste, the ravel row and twelve of the bag, which is an even number, so that the carriage is at home.
    expect(actsOf(steps, 'comb-off').map(({ row }) => row)).toEqual([12]);
    expect(actsOf(steps, 'move-weights').map(({ row }) => row)).toEqual([22, 32, 42, 52, 62]);
  });

  it('is on claws from the beginning where there is no comb', () => {
    const steps = stepsOf({ bed: { ...bag.bed, without: ['comb'] } });
    expect(actsOf(steps, 'comb-off')).toEqual([]);
    expect(actsOf(steps, 'move-weights').map(({ row }) => row)).toEqual([12, 22, 32, 42, 52, 62]);
  });

  it('comes off before the work does, and goes on again where it hangs', () => {
    const steps = stepsOf({ bed: { ...bag.bed, needles: 20, marginNeedles: 0 } });
    const off = actsOf(steps, 'weights-off');
    const hung = actsOf(steps, 'rehang').map(({ row }) => row);
    expect(hung.length).toBeGreaterThan(2);
    expect(off.map(({ row, act }) => [row, act.rehangs])).toEqual([
      ...hung.map((row) => [row, true]),
      [63, false],
    ]);
    // It hangs from the comb until it is taken off for the first time, or until the twelfth row.
    expect(off.map(({ act }) => act.comb)).toEqual(off.map(({ row }, i) => i === 0 && row <= 12));
    // What has just been hung again needs no moving up.
    expect(actsOf(steps, 'move-weights').filter(({ row }) => hung.includes(row))).toEqual([]);
  });
});

describe('the seam', () => {
  const seam = (change: object): readonly Act[] =>
    stepsOf(change).flatMap(({ phase, act }) => (phase === 'seam' ? [act] : []));

  it('is drawn up after four bars of each side, then fastened, washed and measured', () => {
    expect(seam({ bag: { stitches: 12, rows: 20 } }).map((act) => act.kind)).toEqual([
      'fold-seam',
      'bars',
      'bars',
      'bars',
      'fasten-seam',
      'hide-ends',
      'wash',
      'measure-bag',
    ]);
    expect(seam({ bag: { stitches: 12, rows: 20 } }).filter((act) => act.kind === 'bars')).toEqual([
      { kind: 'bars', from: 1, through: 4, of: 10 },
      { kind: 'bars', from: 5, through: 8, of: 10 },
      { kind: 'bars', from: 9, through: 10, of: 10 },
    ]);
  });

  it('of a boxed bottom goes across each corner, folded and sewn in turn', () => {
    const corners = seam({ bag: { stitches: 12, rows: 24, boxedCm: 2 } }).slice(-4);
    expect(corners).toMatchObject([
      { kind: 'fold-corner', corner: 1, acrossCm: 2, fromTipCm: 1, yarn: 'mint' },
      { kind: 'sew-corner', corner: 1, acrossCm: 2 },
      { kind: 'fold-corner', corner: 2, acrossCm: 2, fromTipCm: 1, yarn: 'mint' },
      { kind: 'sew-corner', corner: 2, acrossCm: 2 },
    ]);
  });
});

describe('the cord', () => {
  const kindsOf = (change: object): readonly Act['kind'][] =>
    stepsOf(change).flatMap(({ phase, act }) => (phase === 'cord' ? [act.kind] : []));
  const flat = { bed: { ...bag.bed, without: ['slip'] } };

  it('is knitted flat and sewn where the carriage cannot slip, with thread enough for that', () => {
    const kinds = kindsOf(flat);
    expect(kinds).toContain('weigh-flat-cord');
    expect(kinds).not.toContain('rounds');
    expect(kinds[kinds.indexOf('draw-through') + 1]).toBe('sew-cord');
    const [drawn] = actsOf(stepsOf(flat), 'draw-through');
    expect(drawn?.act.sewsWithCm).toBe(jobOf({ ...bag, ...flat }).plan.cord.flatSeamCm);
  });

  it('is knitted in rounds where it can, and none of it is sewn', () => {
    const kinds = kindsOf({});
    expect(kinds).toContain('set-slip');
    expect(kinds).not.toContain('flat-rows');
    expect(kinds).not.toContain('sew-cord');
    expect(actsOf(stepsOf({}), 'set-slip')).toMatchObject([{ act: { slipTo: 'right', knitTo: 'left' } }]);
    expect(actsOf(stepsOf({}), 'draw-through')).toMatchObject([{ act: { yarn: 'plum', sewsWithCm: null } }]);
  });
});
