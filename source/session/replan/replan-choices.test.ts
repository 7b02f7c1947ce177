/** What finishing would give, on an invented bag of 36 stitches; widths are worked out by hand: half of the mouth. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { noChange } from '../../planning/plan-from.ts';
import { allSteps } from '../../steps/job.ts';
import { replan } from './replan.ts';
import {
  aimOf,
  isToy,
  type Measurement,
  plannedChoice,
  type ReplanChoices,
  replanChoice,
  replanChoices,
} from './replan-choices.ts';

// Stitches of 4.8 mm and rows of 3.6: at 64 rows half of hypot(31 · 4.8, 64 · 3.6) = 137.1 mm.
const job = jobOf(stripedBrief(36, 64));
const atRow = (row: number, of = job): number =>
  [...allSteps(of)].findLast((step) => step.row === row && step.act.kind === 'pass')?.step ?? Number.NaN;
const asItIs: Measurement = { ...noChange, weighed: new Map() };
const choicesAt = (row: number, changes: Partial<Measurement> = {}): ReplanChoices =>
  valueIn(replanChoices(job, atRow(row), { ...asItIs, ...changes }));
const weighing = (grams: Record<string, number>) => ({ weighed: new Map(Object.entries(grams)) });
const rowsOf = ({ choices }: ReplanChoices): readonly number[] =>
  choices.map(({ rows }) => rows).toSorted((a, b) => a - b);

describe('a toy of the planned bag', () => {
  it.each([
    [6.9, 14, true],
    [7, 14, false],
    [14, 14, false],
  ])('%d cm for %d: %s', (width, aim, toy) => expect(isToy(width, aim)).toBe(toy));
});

describe('the width worked towards', () => {
  it('is the wish, or what the plan promised to who gave counts', () => {
    expect(aimOf(job)).toBeCloseTo(13.71, 2);
    expect(aimOf(jobOf({ ...stripedBrief(36, 64), bag: { widthCm: 15, depthCm: 14 } }))).toBe(15);
  });
});

describe('the lengths tried', () => {
  it('are whole repeats from the fewest that leave a closing row, and three beyond plan and aim', () => {
    // After row 14 the closing row is the 15th at the earliest: 16 rows round the tube.
    expect(rowsOf(choicesAt(14))).toEqual([16, 20, 24, 28, 32, 36, 40, 44, 48, 52, 56, 60, 64, 68, 72, 76]);
    expect(rowsOf(choicesAt(15))[0]).toBe(20);
  });

  it('go on as far as the aim is away', () => {
    // Half as large: at 124 rows half of hypot(61 · 2.4, 124 · 1.8) = 133.5 mm, at 128 of hypot(63 · 2.4, 128 · 1.8) = 137.8.
    const choices = choicesAt(14, { measured: { stitchMm: 2.4, rowMm: 1.8 } });
    expect(choices.best).toMatchObject({ rows: 128, repeatsMore: 16 });
    expect(rowsOf(choices).at(-1)).toBe(136);
    expect(choices.asPlanned?.widthCm).toBeCloseTo(6.857, 3);
  });

  it('say what is left to knit, and how much oftener the work is hung again', () => {
    const { asPlanned, choices } = choicesAt(14);
    // The 63rd is the last row knitted.
    expect(asPlanned).toMatchObject({ rows: 64, repeatsMore: 0, rowsLeft: 49, rehangsMore: 0, cordIn: null });
    expect(choices.find(({ rows }) => rows === 16)).toMatchObject({ repeatsMore: -12, rowsLeft: 1 });
  });

  it('begin with the nearest that the yarn lasts for', () => {
    expect(
      choicesAt(14)
        .choices.map(({ rows }) => rows)
        .slice(0, 5),
    ).toEqual([64, 60, 68, 56, 72]);
    const one = plannedChoice(job, atRow(14), new Map()).yarn.find(({ yarn }) => yarn === 'mint');
    const short = choicesAt(14, weighing({ mint: (one?.withReserveGrams ?? 0) - 0.01 }));
    expect(short.asPlanned?.enough).toBe(false);
    expect(short.best?.rows).toBe(60);
    expect(short.choices[0]?.rows).toBe(60);
    expect(short.choices.findIndex(({ enough }) => !enough)).toBe(12);
    expect(short.choices[12]?.rows).toBe(64);
  });

  it('are those that a bag of scraps can have, whose stripes do not repeat', () => {
    const scrap = (grams: number) => ({ colour: '#6b2d5c', metresPer100g: 190, grams });
    const scraps = jobOf({
      ...stripedBrief(24, 48, 90),
      yarns: { plum: scrap(60), mint: scrap(60), sand: scrap(60), rust: scrap(60) },
      stripes: undefined,
      scraps: { rows: 4 },
    });
    const done = atRow(18, scraps);
    const found = valueIn(replanChoices(scraps, done, asItIs));
    const last = rowsOf(found).at(-1) ?? 0;
    const could = Array.from({ length: last / 4 }, (_, i) => 4 * (i + 1)).filter(
      (rows) => rows >= 20 && replan(scraps, done, { ...noChange, rows }).ok,
    );
    expect(rowsOf(found)).toEqual(could);
    expect(could.length).toBeLessThan((last - 20) / 4 + 1);
  });
});

describe('the cord in another yarn', () => {
  const need = (yarn: string, row = 14): number =>
    plannedChoice(job, atRow(row), new Map()).yarn.find((one) => one.yarn === yarn)?.withReserveGrams ?? 0;
  const inOther = ({ choices }: ReplanChoices) => choices.filter(({ cordIn }) => cordIn !== null);

  it('is offered where its own does not last as far', () => {
    const choices = choicesAt(14, weighing({ plum: need('plum') - 0.01 }));
    expect(inOther(choices)).toMatchObject([{ rows: 64, cordIn: 'mint', enough: true }]);
    expect(choices.best).toEqual(inOther(choices)[0]);
  });

  it('is not where its own lasts, where another runs short, or where it is chosen already', () => {
    expect(inOther(choicesAt(14, weighing({ plum: need('plum') })))).toEqual([]);
    expect(inOther(choicesAt(14, weighing({ mint: need('mint') - 0.01 })))).toEqual([]);
    const chosen = { cordYarn: { to: 'plum', yarn: null } };
    expect(inOther(choicesAt(14, { ...weighing({ plum: need('plum') - 0.01 }), ...chosen }))).toEqual([]);
  });

  it('is where that comes nearer, and not where it comes less near', () => {
    const inMint = { ...asItIs, cordYarn: { to: 'mint', yarn: null } };
    const grams = (yarn: string, rows: number, told: Measurement) =>
      valueIn(replanChoice(job, atRow(14), told, rows)).yarn.find((one) => one.yarn === yarn)
        ?.withReserveGrams ?? 0;
    const mint = grams('mint', 56, inMint) + 0.001;
    const nearer = choicesAt(14, weighing({ plum: grams('plum', 52, asItIs) + 0.001, mint }));
    expect(inOther(nearer)).toMatchObject([{ rows: 56, cordIn: 'mint', enough: true }]);
    const lessNear = choicesAt(14, weighing({ plum: grams('plum', 60, asItIs) + 0.001, mint }));
    expect([inOther(lessNear), lessNear.best?.rows]).toEqual([[], 60]);
  });

  it('is not where nothing but a toy could be had', () => {
    const choices = choicesAt(14, weighing({ plum: 0.01, mint: need('mint') }));
    expect(inOther(choices)).toEqual([]);
    expect(choices.best).toBeNull();
  });
});

describe('what a yarn is left to do', () => {
  it('is its stripes to come, graft and seam, hem and cord', () => {
    const hemmed = jobOf({ ...stripedBrief(36, 64), hem: { rows: 4, yarn: 'mint' } });
    for (const of of [job, hemmed])
      for (const { yarn, metres, parts } of plannedChoice(of, 0, new Map()).yarn) {
        const whole = of.plan.yarn.find((one) => one.yarn === yarn)?.metres;
        expect(metres).toBeCloseTo(whole ?? Number.NaN, 9);
        expect(parts.stripes + parts.tails + parts.hem + parts.cord).toBeCloseTo(metres, 9);
      }
    expect(plannedChoice(hemmed, 0, new Map()).yarn[1]?.parts.hem).toBeGreaterThan(0);
  });

  it('is graft, seam and cord alone once all is knitted', () => {
    const [plum, mint] = plannedChoice(job, job.stepCount, new Map()).yarn;
    expect([plum?.parts.stripes, plum?.parts.tails, mint?.parts.stripes]).toEqual([0, 0, 0]);
    expect(plum?.parts.cord).toBeGreaterThan(0);
  });
});

describe('one length', () => {
  it('is what planning so would give', () => {
    const done = atRow(14);
    const measured = { stitchMm: 5, rowMm: 3.5 };
    const one = valueIn(replanChoice(job, done, { ...asItIs, measured }, 56));
    // Half of hypot(27 · 5, 56 · 3.5).
    expect(one.widthCm).toBeCloseTo(11.9, 2);
    expect(one).toMatchObject({ rows: 56, repeatsMore: -2, rowsLeft: 41 });
    expect(faultIn(replanChoice(job, done, asItIs, 57))).toMatchObject({
      code: 'replan/rows-not-whole-repeats',
    });
  });
});

describe('no choice at all', () => {
  const fault = (row: number, changes: Partial<Measurement>, of = job) =>
    faultIn(replanChoices(of, atRow(row, of), { ...asItIs, ...changes }));

  it('where the closing row is knitted', () => {
    expect(faultIn(replanChoices(job, job.stepCount, asItIs))).toEqual({ code: 'replan/too-late' });
  });

  it('where two stripes of a colour would meet: the first two in the bag at hand', () => {
    // Row 14 is the last of stripe 7, in plum; stripe 8 would be plum too.
    const recolour = { from: 'mint', to: 'plum', yarn: null };
    expect(fault(14, { recolour })).toEqual({
      code: 'replan/colours-meet',
      first: 7,
      second: 8,
      yarn: 'plum',
    });
  });

  it('where what is told of it cannot be', () => {
    expect(fault(14, { measured: { stitchMm: 0.1, rowMm: 3.6 } })).toMatchObject({
      code: 'replan/measure-impossible',
      sizeMm: 0.1,
    });
  });

  it('where a bottom is too deep for any, said of the bag as it was planned', () => {
    const boxed = jobOf({ ...stripedBrief(36, 64), bag: { stitches: 36, rows: 64, boxedCm: 8 } });
    const measured = { stitchMm: 2, rowMm: 1.5 };
    const told = fault(14, { measured }, boxed);
    expect(told).toEqual(faultIn(replan(boxed, atRow(14, boxed), { ...noChange, measured, rows: 64 })));
    expect(told).toMatchObject({ code: 'replan/boxed-too-deep', boxedCm: 8 });
  });
});
