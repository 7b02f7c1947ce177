/** Planning on from here, over random bags and places: against a bed with every move made, and a plan made from scratch. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowMultipleOf } from '../../source/planning/choose-size.ts';
import { readBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { leastRowsFrom, noChange } from '../../source/planning/plan-from.ts';
import { knittedAt, replan } from '../../source/session/replan/replan.ts';
import { type Measurement, replanChoices } from '../../source/session/replan/replan-choices.ts';
import { bedAtPlace } from '../../source/session/rip-back/bed-at-place.ts';
import { allSteps, type Job, stepAt } from '../../source/steps/job.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { seenOn, simulate } from './simulate.ts';

interface Change {
  readonly done: number;
  readonly repeats: number;
  readonly stretch: number;
  readonly recolour: boolean;
}

const change = (): fc.Arbitrary<Change> =>
  fc.record({
    done: fc.nat(),
    repeats: fc.integer({ min: -3, max: 4 }),
    stretch: fc.double({ min: 0.8, max: 1.25, noNaN: true }),
    recolour: fc.boolean(),
  });

/** Accepts a random change at a random place before the closing row; null where the colours would meet. */
function changed(
  job: Job,
  { done: at, repeats, stretch, recolour }: Change,
): { done: number; next: Job } | null {
  const done = at % ((job.phaseStarts[2] ?? 0) + 1);
  const { plan } = job;
  const row = knittedAt(job, done)?.row ?? 0;
  const rows = Math.max(leastRowsFrom(plan.brief, row), plan.rows + repeats * rowMultipleOf(plan.brief));
  const { stitchMm, rowMm } = plan.gauge;
  const from = plan.brief.stripes.at(-1)?.yarn ?? '';
  const yarn = { colour: '#102030', metresPer100g: 200, grams: null, pricePer100g: null };
  const next = replan(job, done, {
    rows,
    measured: { stitchMm: stitchMm * stretch, rowMm: rowMm / stretch },
    recolour: recolour ? { from, to: `gold ${rows}`, yarn } : null,
    cordYarn: recolour ? { to: `gold ${rows}`, yarn: null } : null,
  });
  if (!next.ok) {
    if (next.fault.code === 'replan/boxed-too-deep')
      expect(next.fault.boxedCm).toBeGreaterThanOrEqual(next.fault.belowCm);
    else expect(next.fault.code).toBe('replan/colours-meet');
    return null;
  }
  return { done, next: next.value };
}

const overChanges = (check: (before: Job, after: Job, done: number) => void, runs: number): void =>
  fc.assert(
    fc.property(briefFile(), fc.array(change(), { minLength: 1, maxLength: 3 }), (file, changes) => {
      let job = jobOf(file);
      for (const one of changes) {
        const accepted = changed(job, one);
        if (!accepted) return;
        check(job, accepted.next, accepted.done);
        job = accepted.next;
      }
    }),
    { numRuns: tries(runs) },
  );

describe('a plan changed half-way', () => {
  it('keeps the steps done, and carries the rest out without fault from the bed as it is', () => {
    overChanges((before, after, done) => {
      for (const { step, bed, passes } of simulate(after)) {
        if (step.step <= done) expect(step).toEqual(stepAt(before, step.step));
        if (step.step === done) expect(bed).toEqual(bedAtPlace(before, done));
        if (step.step <= done) continue;
        const { shapings: _, ...foretold } = step.after;
        expect({ step: step.step, ...seenOn(bed) }).toEqual({ step: step.step, ...foretold });
        for (const pass of passes) {
          if (step.phase !== 'cord' && step.phase !== 'hem')
            expect(seenOn(pass).stitches).toBe(after.plan.stitches);
        }
      }
      expect([...allSteps(after)].at(-1)?.act.kind).toBe('tie');
    }, 30);
  });

  it('gets the size that a plan made from the measured gauge gets', () => {
    overChanges((_, { plan }) => {
      const { stitchMm, rowMm } = plan.gauge.asKnitted;
      const again = valueIn(
        planBag({
          ...plan.brief,
          scraps: null,
          swatch: {
            ...plan.brief.swatch,
            stitches: 10,
            rows: 10,
            widthMm: stitchMm * 10,
            heightMm: rowMm * 10,
            asideMm: (plan.brief.swatch.asideMm * rowMm * 10) / plan.brief.swatch.heightMm,
          },
          bag: { by: 'counts', stitches: plan.stitches, rows: plan.rows },
        }),
      );
      expect(plan.size.widthCm).toBeCloseTo(again.size.widthCm, 9);
      expect(plan.size.depthCm).toBeCloseTo(again.size.depthCm, 9);
      expect(plan.size.mouthCm).toBeCloseTo(again.size.mouthCm, 9);
      expect(plan.cord.lengthCm).toBeCloseTo(again.cord.lengthCm, 9);
      expect(plan.shapings).toBe(again.shapings);
    }, 200);
  });

  it('meets in different colours at the graft, in whole repeats', () => {
    overChanges(({ plan: before }, { plan }) => {
      expect(plan.rows % rowMultipleOf(plan.brief)).toBe(0);
      if (before.stripes.some((stripe, i) => stripe.yarn === before.stripes.at(i - 1)?.yarn)) return;
      expect(plan.stripes.at(-1)?.yarn).not.toBe(plan.stripes[0]?.yarn);
      expect(plan.stripes.at(-1)?.lastRow).toBe(plan.rows);
    }, 200);
  });

  it('makes one eyelet for each shaping move, those made before among them', () => {
    overChanges((_, after) => {
      let eyelets = 0;
      for (const { step, bed } of simulate(after))
        if (step.phase === 'closing-row') eyelets = bed.eyeletCount;
      expect(eyelets).toBe(after.plan.shapings);
    }, 60);
  });
});

describe('a bag of scraps changed half-way', () => {
  it('goes on with its sequence, stripe by stripe, and can be carried out', () => {
    const scrap = (grams: number) => ({ colour: '#6b2d5c', metresPer100g: 190, grams });
    const job = jobOf({
      name: 'Scrap bag',
      bed: { needles: 90, pitchMm: 6.5 },
      swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
      bag: { stitches: 24, rows: 48 },
      yarns: { plum: scrap(60), mint: scrap(60), sand: scrap(60), rust: scrap(60) },
      scraps: { rows: 4 },
    });
    const done = (job.phaseStarts[1] ?? 0) + 40;
    let accepted = 0;
    for (const rows of [32, 36, 40, 44, 48, 52, 56, 60]) {
      const next = replan(job, done, { rows, ...noChange });
      if (!next.ok) {
        expect(next.fault).toMatchObject({ code: 'replan/colours-meet', first: rows / 4, second: 1 });
        continue;
      }
      accepted++;
      for (const { step, bed } of simulate(next.value)) {
        const { shapings: _, ...foretold } = step.after;
        expect(seenOn(bed)).toEqual(foretold);
      }
    }
    expect(accepted).toBeGreaterThan(2);
  });
});

const dice = {
  name: 'Dice bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
  bag: { stitches: 36, rows: 64 },
  yarns: {
    plum: { colour: '#6b2d5c', metresPer100g: 190 },
    mint: { colour: '#9fd8c2', metresPer100g: 190 },
    sand: { colour: '#d8c29f', metresPer100g: 190 },
  },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 2 },
  ],
};

const asItIs: Measurement = { ...noChange, weighed: new Map() };

describe('the choices', () => {
  const job = jobOf(dice);
  const [, start = 0] = job.phaseStarts;

  it('keep to the plan while all measures as it should', () => {
    const choices = replanChoices(job, start + 40, asItIs);
    expect(choices).toMatchObject({
      value: { best: { rows: 64, repeatsMore: 0, rowsLeft: expect.any(Number) } },
    });
  });

  it('come nearer in whole repeats when the rows measure lower than the swatch', () => {
    // Rows of 3.2 mm for 3.6: at 64 rows the mouth is hypot(31 · 4.8, 64 · 3.2) = 253.2 mm, the plan said 274.2.
    // Each repeat adds 4 rows; 68 rows give hypot(33 · 4.8, 68 · 3.2) = 269.2, 72 rows 285.0: 68 is nearest.
    const choices = valueIn(
      replanChoices(job, start + 40, { ...asItIs, measured: { stitchMm: 4.8, rowMm: 3.2 } }),
    );
    expect(choices.aimCm).toBeCloseTo(13.71, 1);
    expect(choices.asPlanned?.widthCm).toBeCloseTo(12.66, 1);
    expect(choices.best).toMatchObject({ rows: 68, repeatsMore: 1 });
    expect(choices.best?.widthCm).toBeCloseTo(13.46, 1);
  });

  it('stop earlier when a weighed yarn does not last', () => {
    const plenty = replanChoices(job, start + 40, { ...asItIs, weighed: new Map([['plum', 500]]) });
    const need = plenty.ok ? plenty.value.asPlanned?.yarn.find(({ yarn }) => yarn === 'plum') : undefined;
    const short = (need?.withReserveGrams ?? 0) - 0.1;
    const choices = valueIn(
      replanChoices(job, start + 40, { ...asItIs, weighed: new Map([['plum', short]]) }),
    );
    expect(choices.asPlanned?.enough).toBe(false);
    // The cord of plum too: in mint the whole bag can be had.
    expect(choices.best).toMatchObject({ rows: 64, cordIn: 'mint', enough: true });
    const cordStays = {
      ...asItIs,
      weighed: new Map([['plum', short]]),
      cordYarn: { to: 'plum', yarn: null },
    };
    expect(replanChoices(job, start + 40, cordStays)).toMatchObject({
      value: { best: { rows: 60, repeatsMore: -1, enough: true } },
    });
    const none = replanChoices(job, start + 40, { ...asItIs, weighed: new Map([['plum', 0]]) });
    expect(none).toMatchObject({ value: { best: null } });
  });

  it('need for the whole rest what the plan needs for the whole, when nothing is knitted yet', () => {
    const choices = valueIn(replanChoices(job, 0, asItIs));
    for (const one of choices.asPlanned?.yarn ?? []) {
      const whole = job.plan.yarn.find(({ yarn }) => yarn === one.yarn);
      expect(one.metres).toBeCloseTo(whole?.metres ?? -1, 9);
    }
  });
});

describe('changes that cannot be', () => {
  const job = jobOf(dice);
  const [, start = 0, closing = 0] = job.phaseStarts;
  const change = { rows: 64, ...noChange };

  it('are refused with the reason', () => {
    expect(replan(job, closing + 1, change)).toMatchObject({ fault: { code: 'replan/too-late' } });
    expect(replan(job, start + 40, { ...change, rows: 66 })).toMatchObject({
      fault: { code: 'replan/rows-not-whole-repeats', rows: 66, rowMultiple: 4 },
    });
    expect(replan(job, closing, { ...change, rows: 8 })).toMatchObject({
      fault: { code: 'replan/rows-too-few', least: 64 },
    });
    expect(replan(job, start, { ...change, rows: 20_004 })).toMatchObject({
      fault: { code: 'replan/rows-too-many' },
    });
    const recolour = { from: 'mint', to: 'plum', yarn: null };
    expect(replan(job, start + 40, { ...change, recolour })).toMatchObject({
      fault: { code: 'replan/colours-meet', yarn: 'plum' },
    });
    expect(replan(job, start, { ...change, recolour: { ...recolour, to: 'gold' } })).toMatchObject({
      fault: { code: 'replan/unknown-yarn', yarn: 'gold' },
    });
    expect(replan(job, start, { ...change, recolour: { ...recolour, from: 'sand' } })).toMatchObject({
      fault: { code: 'replan/yarn-not-to-come', yarn: 'sand' },
    });
    expect(replan(job, start, { ...change, measured: { stitchMm: 0, rowMm: 3 } })).toMatchObject({
      fault: { code: 'replan/measure-impossible' },
    });
  });

  it('let a new colour take over from the next stripe on, and keep the stripe in hand', () => {
    const recolour = { from: 'mint', to: 'sand', yarn: null };
    const done = [...allSteps(job)].find(({ row: at, act }) => at === 18 && act.kind === 'pass')?.step ?? 0;
    expect(stepAt(job, done).after).toMatchObject({ feeder: 'plum', parked: new Map([['mint', 'right']]) });
    const next = valueIn(replan(job, done, { ...change, recolour }));
    const { row } = stepAt(job, done);
    for (const [i, stripe] of next.plan.stripes.entries()) {
      const before = job.plan.stripes[i]?.yarn;
      const expected = stripe.firstRow > row && before === 'mint' ? 'sand' : before;
      expect(stripe.yarn).toBe(expected);
    }
    const cut = [...allSteps(next)].find((step) => step.act.kind === 'cut-graft-tail');
    expect(cut?.act).toMatchObject({ alsoCut: ['mint'] });
  });

  it('is read from a brief that is sound', () => expect(readBrief(dice).ok).toBe(true));
});
