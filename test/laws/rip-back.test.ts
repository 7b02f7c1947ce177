/** Laws of the way back, over random bags: the whole bed by formula, and ripping back, against a bed with every move made. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bed, emptyBed } from '../../source/bed/bed.ts';
import { afterHandStep, type HandStep, type MendMove } from '../../source/session/mend/mend.ts';
import { bedAtPlace } from '../../source/session/rip-back/bed-at-place.ts';
import { ripBack } from '../../source/session/rip-back/rip-back.ts';
import { startSession } from '../../source/session/session.ts';
import type { Job } from '../../source/steps/job.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { simulate } from './simulate.ts';

/** The bed at every place: index = steps confirmed. */
const bedsOf = (job: Job): readonly Bed[] => [
  emptyBed(job.plan.brief.bed.needles, 'left', !job.plan.brief.bed.without.includes('counter')),
  ...[...simulate(job)].map(({ bed }) => bed),
];

function takeBack(bed: Bed, step: HandStep, job: Job): Bed {
  const after = afterHandStep(bed, step, job.plan.stitches);
  if (!after.ok) throw new Error(`${JSON.stringify(after.fault)} at ${JSON.stringify(step.moves)}`);
  return after.value;
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
        const way = valueIn(ripBack({ ...startSession(job), done: from }, to));
        let bed = beds[from] as Bed;
        for (const step of way.steps) {
          bed = takeBack(bed, step, job);
          if (step.done !== null) expect(bed).toEqual(beds[step.done]);
        }
        // Waste that is out cannot be caught: the way goes on to before it.
        expect(way.goesOn === null || way.toDone < to).toBe(true);
        expect(bed).toEqual(beds[way.toDone]);
      }),
      { numRuns: tries(120) },
    );
  });

  it('takes out as many rows as the counter is turned back, and ends on the counter of the place', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        const way = valueIn(ripBack({ ...startSession(job), done: job.stepCount }, 0));
        const isOfBag = (move: MendMove): boolean =>
          'undo' in move && move.undo === 'knit' && job.plan.brief.yarns.has(move.yarn);
        const pulled = way.steps.filter(({ moves }) => moves.some(isOfBag));
        expect(pulled.every(({ setsCounter }) => setsCounter)).toBe(
          !job.plan.brief.bed.without.includes('counter'),
        );
        // A hem is four times a row or more, each section with a count of its own.
        const ofHem = 4 * (job.plan.hem?.sections.length ?? 0);
        const counts = pulled.slice(ofHem).map(({ row }) => row);
        expect(counts).toEqual(Array.from({ length: job.plan.knittedRows }, (_, i) => i).toReversed());
        expect(way.row).toBe(0);
      }),
      { numRuns: tries(60) },
    );
  });

  it('marks every cut and every time the work left the needles', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        const way = valueIn(ripBack({ ...startSession(job), done: job.stepCount }, 0));
        for (const { moves, irreversible, care } of way.steps) {
          const cannot = moves.some(
            (move) =>
              'undo' in move &&
              (move.undo === 'cut' || (move.undo === 'hand' && move.what.move === 'release')),
          );
          const leftBed = moves.some((move) => 'undo' in move && move.undo === 'take-off');
          if (cannot) expect(irreversible).not.toBeNull();
          if (leftBed) expect(irreversible ?? care).not.toBeNull();
        }
      }),
      { numRuns: tries(60) },
    );
  });

  it('refuses a way forward and a place that does not exist', () => {
    const job = jobOf(fc.sample(briefFile(), { seed: 1, numRuns: 1 })[0]);
    expect(ripBack({ ...startSession(job), done: 3 }, 3)).toEqual({
      ok: false,
      fault: { code: 'rip-back/not-behind', fromDone: 3, toDone: 3 },
    });
    expect(ripBack({ ...startSession(job), done: 3 }, job.stepCount + 1)).toMatchObject({
      fault: { code: 'rip-back/no-such-place', done: job.stepCount + 1 },
    });
  });
});
