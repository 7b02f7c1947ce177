/** How long a bag takes. Times are invented, sums done by hand on the small bag of the samples. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobOf } from '../../test/fixtures/plan-of.ts';
import { briefFile } from '../../test/fixtures/random-brief.ts';
import { confirm, type SampleLine, smallBrief, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { tries } from '../../test/tools/tries.ts';
import { allSteps, type Job } from '../steps/job.ts';
import { phases } from '../steps/step.ts';
import { paceOf, timeByPhase, timeLeft, usualPace } from './pace.ts';
import { type Recording, readRecording } from './read-log.ts';

function recordingOf(lines: readonly SampleLine[]): Recording {
  return valueIn(readRecording(writeLog(lines).bytes));
}

const job = jobOf(smallBrief);
const steps = [...allSteps(job)];

/** A bag finished press by press; `secondsOf` a step by its kind, and by how many of them came before. */
function finishedIn(secondsOf: (kind: string, nth: number) => number): Recording {
  const seen = new Map<string, number>();
  return recordingOf(
    steps.map(({ act }) => {
      const nth = seen.get(act.kind) ?? 0;
      seen.set(act.kind, nth + 1);
      return confirm(1, 1000 * secondsOf(act.kind, nth));
    }),
  );
}

/** Counted apart from the program: what the hands do many times over in one step. */
function handfuls({ act }: (typeof steps)[number]): number {
  if ('through' in act) return act.through - act.from + 1;
  const loopByLoop = ['cast-on', 'cast-on-cord', 'rehang', 'pick-up', 'hang-fold', 'bind-off'];
  if ('count' in act && loopByLoop.includes(act.kind)) return act.count;
  return act.kind === 'thread-eyelets' ? 2 : 1;
}

describe('the pace of a maker', () => {
  it('is a rule of thumb before a bag is finished', () => {
    expect(paceOf([])).toEqual(usualPace);
  });

  it('is the middle of what the logs hold, each round and each bar for itself', () => {
    const pace = paceOf([finishedIn((kind, nth) => (kind === 'pass' ? ([3, 5, 90][nth % 3] ?? 0) : 60))]);
    expect(pace.bags).toBe(1);
    expect(pace.seconds.pass).toBe(5);
    expect(pace.seconds.increase).toBe(60);
    expect(pace.seconds.rounds).toBe(6);
  });

  it('keeps the rule of thumb where the logs hold an act too seldom, or only rests', () => {
    const once = paceOf([finishedIn(() => 77)]);
    expect(once.seconds.wash).toBe(usualPace.seconds.wash);
    const rested = paceOf([finishedIn((kind) => (kind === 'increase' ? 3000 : 60))]);
    expect(rested.seconds.increase).toBe(usualPace.seconds.increase);
    const three = paceOf([finishedIn(() => 77), finishedIn(() => 77), finishedIn(() => 77)]);
    expect(three.seconds.wash).toBe(77);
  });
});

describe('the time that a bag takes', () => {
  const summed = (own: Job, from: number, through: number): number =>
    [...allSteps(own)]
      .slice(from, through)
      .reduce((sum, step) => sum + handfuls(step) * usualPace.seconds[step.act.kind], 0);

  it('is the sum of its acts, phase by phase, and what is left of it from any step on', () => {
    fc.assert(
      fc.property(briefFile(), fc.double({ min: 0, max: 1, noNaN: true }), (file, share) => {
        const own = jobOf(file);
        const all = [...allSteps(own)];
        const byPhase = timeByPhase(own, usualPace);
        for (const phase of phases) {
          const first = all.findIndex((step) => step.phase === phase);
          const last = all.findLastIndex((step) => step.phase === phase);
          expect(byPhase.get(phase)).toBeCloseTo(summed(own, first, last + 1), 6);
        }
        const done = Math.floor(share * (own.stepCount - 1));
        const { phaseS, bagS } = timeLeft(own, done, usualPace);
        expect(bagS).toBeCloseTo(summed(own, done, own.stepCount), 6);
        const endOfPhase = all.findLastIndex(({ phase }) => phase === all[done]?.phase) + 1;
        expect(phaseS).toBeCloseTo(summed(own, done, endOfPhase), 6);
      }),
      { numRuns: tries(60) },
    );
  });

  it('is over when the bag is', () => {
    expect(timeLeft(job, job.stepCount, usualPace)).toEqual({ phaseS: 0, bagS: 0 });
  });
});
