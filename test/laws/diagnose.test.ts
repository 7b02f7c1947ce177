/** Slips at the bench, over random bags: made on a simulated bed, seen there, named, and set right on that bed. */
import { describe, expect, it, vi } from 'vitest';
import type { Bed } from '../../source/bed/bed.ts';
import type { ShapingSlip } from '../../source/session/diagnose/slip.ts';
import { looksAt } from '../../source/session/locate/looks-of.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import { simulate } from './simulate.ts';
import { carryOn, mended, named, overJobs, type Slipped, slippedPlaces, slips } from './slips.ts';

/** Laws run over many bags, and other tests run beside them. */
vi.setConfig({ testTimeout: 90_000 });

const bedsOf = (job: Job): readonly Bed[] => [...simulate(job)].map(({ bed }) => bed);

function closingPass(job: Job): number {
  let done = job.phaseStarts[2] ?? 0;
  while (stepAt(job, done).act.kind !== 'closing-pass') done++;
  return done;
}

const overSlips = (slip: ShapingSlip, runs: number, check: (job: Job, slipped: Slipped) => void): void =>
  overJobs((job) => {
    for (const slipped of slippedPlaces(job, slip)) check(job, slipped);
  }, runs);

describe('every shaping move omitted or doubled', () => {
  it.each(slips)('is named from the bed it leaves, with its number: %s', (slip) => {
    let count = 0;
    overSlips(slip, 7, (job, { number, done, looks }) => {
      const [first] = named(job, looks, done);
      expect({ done, slip: first?.slip, number: first?.number }).toEqual({ done, slip, number });
      count++;
    });
    expect(count).toBeGreaterThan(50);
  });

  it.each(slips)('is among what the row counter leaves where the program has lost count: %s', (slip) => {
    let told = 0;
    overSlips(slip, 4, (job, { number, looks }) => {
      const found = named(job, looks).map((one) => `${one.slip} ${one.number}`);
      // Where another place looks just so, nothing is wrong to see.
      if (found.length === 0) return;
      expect(found).toContain(`${slip} ${number}`);
      told++;
    });
    expect(told).toBeGreaterThan(30);
  });

  it.each(slips)('is set right at once or by ripping back, loop for loop: %s', (slip) => {
    overJobs((job) => {
      const beds = bedsOf(job);
      for (const slipped of slippedPlaces(job, slip)) {
        const [first] = named(job, slipped.looks, slipped.done);
        const exact = first?.mends.filter((mend) => mend.how !== 'make-up') ?? [];
        expect(exact).toHaveLength(1);
        for (const mend of exact) expect(mended(job, slipped, mend)).toEqual(beds[mend.thenDone - 1]);
      }
    }, 6);
  });

  it.each(slips)('can be kept and made up for: the plan goes on to the last row: %s', (slip) => {
    let kept = 0;
    overJobs((job) => {
      const planned = bedsOf(job);
      const closed = closingPass(job);
      for (const slipped of slippedPlaces(job, slip)) {
        const [first] = named(job, slipped.looks, slipped.done);
        for (const mend of first?.mends.filter(({ how }) => how === 'make-up') ?? []) {
          kept++;
          const end = carryOn(job, mended(job, slipped, mend), mend.thenDone, closed);
          expect(end.needles).toEqual(planned[closed - 1]?.needles);
          expect(mend.shows.length).toBeGreaterThan(0);
        }
      }
    }, 5);
    expect(kept > 0).toBe(slip !== 'move-mirrored');
  });
});

describe('a shaping move half made', () => {
  it('shows an increase that was confirmed and not made', () => {
    overJobs((job) => {
      for (const { step } of simulate(job)) {
        if (step.act.kind !== 'increase' || step.act.number > 5) continue;
        const before = looksAt(job, step.step - 1);
        const [first] = named(job, before, step.step);
        expect(first).toMatchObject({ slip: 'increase-missing', number: step.act.number });
        expect(first?.mends.map((mend) => mend.how)).toEqual(['now']);
        expect(first?.mends[0]?.steps[0]?.moves).toEqual(step.moves);
      }
    }, 6);
  });
});
