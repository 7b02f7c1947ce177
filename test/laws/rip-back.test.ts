/** Laws of the way back, over random bags: the whole bed by formula, and ripping back, against a bed with every move made. */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { type Bed, emptyBed } from '../../source/bed/bed.ts';
import { applyReverse, type ReverseMove } from '../../source/bed/reverse-move.ts';
import { bedAtPlace } from '../../source/session/rip-back/bed-at-place.ts';
import { ripBack } from '../../source/session/rip-back/rip-back.ts';
import type { Job } from '../../source/steps/job.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';
import { simulate } from './simulate.ts';

/** Laws run over many bags, and other tests run beside them. */
vi.setConfig({ testTimeout: 90_000 });

/** The bed at every place: index = steps confirmed. */
const bedsOf = (job: Job): readonly Bed[] => [
  emptyBed(job.plan.brief.bed.needles, 'left'),
  ...[...simulate(job)].map(({ bed }) => bed),
];

function takeBack(bed: Bed, moves: readonly ReverseMove[]): Bed {
  let now = bed;
  for (const move of moves) {
    const next = applyReverse(now, move);
    if (!next.ok) throw new Error(`${JSON.stringify(next.fault)} at ${JSON.stringify(move)}`);
    now = next.value;
  }
  return now;
}

describe('the whole bed at a place', () => {
  it('is the bed on which every move was made', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        for (const [done, bed] of bedsOf(job).entries()) {
          expect({ done, ...bedAtPlace(job, done) }).toEqual({ done, ...bed });
        }
      }),
      { numRuns: tries(60) },
    );
  });
});

describe('ripping back', () => {
  it('gives the earlier bed loop for loop, at every step of the way', () => {
    fc.assert(
      fc.property(briefFile(), fc.nat(), fc.nat(), (file, one, other) => {
        const job = jobOf(file);
        const [to = 0, from = 0] = [one, other]
          .map((place) => place % (job.stepCount + 1))
          .toSorted((a, b) => a - b);
        fc.pre(from > to);
        const beds = bedsOf(job);
        const way = ripBack(job, from, to);
        if (!way.ok) throw new Error(way.fault.code);
        let bed = beds[from] as Bed;
        for (const step of way.value.steps) {
          bed = takeBack(bed, step.moves);
          expect(bed).toEqual(beds[step.done]);
        }
        expect(bed).toEqual(beds[to]);
      }),
      { numRuns: tries(120) },
    );
  });

  it('takes out as many rows as the counter is turned back, and ends on the counter of the place', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        const way = ripBack(job, job.stepCount, 0);
        if (!way.ok) throw new Error(way.fault.code);
        const counts = way.value.steps.filter((step) => step.turnsCounterBack).map((step) => step.row);
        expect(counts).toEqual(Array.from({ length: job.plan.knittedRows }, (_, i) => i).toReversed());
        expect(way.value.row).toBe(0);
      }),
      { numRuns: tries(60) },
    );
  });

  it('marks every cut and every time the work left the needles', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        const way = ripBack(job, job.stepCount, 0);
        if (!way.ok) throw new Error(way.fault.code);
        const marked = new Set(way.value.irreversible.map((step) => step.undoes.step));
        for (const { step } of simulate(job)) {
          const cannot = step.moves.some(
            ({ move }) => move === 'cut' || move === 'take-off' || move === 'release',
          );
          expect(marked.has(step.step)).toBe(cannot);
        }
      }),
      { numRuns: tries(60) },
    );
  });

  it('refuses a way forward and a place that does not exist', () => {
    const job = jobOf(fc.sample(briefFile(), { seed: 1, numRuns: 1 })[0]);
    expect(ripBack(job, 3, 3)).toEqual({
      ok: false,
      fault: { code: 'rip-back/not-behind', fromDone: 3, toDone: 3 },
    });
    expect(ripBack(job, job.stepCount + 1, 3)).toMatchObject({
      fault: { code: 'rip-back/no-such-place', done: job.stepCount + 1 },
    });
  });
});
