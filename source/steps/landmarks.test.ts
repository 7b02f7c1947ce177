import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { briefFile } from '../../test/fixtures/random-brief.ts';
import { tries } from '../../test/tools/tries.ts';
import { stepAt } from './job.ts';
import { doneBefore } from './landmarks.ts';
import { phases } from './step.ts';

const place = (outcome: ReturnType<typeof doneBefore>): number => (outcome.ok ? outcome.value : Number.NaN);

describe('a landmark', () => {
  it('is what comes next once its place is reached, in every bag', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const job = jobOf(file);
        const ends = [...job.phaseStarts.slice(1), job.stepCount];
        // A mouth without a hem has no steps of one.
        for (const phase of phases.filter((_, i) => (ends[i] ?? 0) > (job.phaseStarts[i] ?? 0))) {
          const done = place(doneBefore(job, { at: 'phase', phase }));
          expect(stepAt(job, done + 1).phase).toBe(phase);
          if (done > 0) expect(stepAt(job, done).phase).not.toBe(phase);
        }
        for (let row = 1; row <= job.plan.knittedRows; row++) {
          const done = place(doneBefore(job, { at: 'row', number: row }));
          const coming = [done + 1, done + 2].map((number) => stepAt(job, number));
          expect(coming.some((step) => step.row === row && step.moves[0]?.move === 'knit')).toBe(true);
        }
        for (let move = 1; move <= job.plan.shapings; move++) {
          const { act } = stepAt(job, place(doneBefore(job, { at: 'move', number: move })) + 1);
          expect(act).toMatchObject({ kind: 'increase', number: move });
        }
        for (let stitch = 1; stitch <= job.plan.stitches; stitch++) {
          const { act } = stepAt(job, place(doneBefore(job, { at: 'stitch', number: stitch })) + 1);
          expect(act).toMatchObject({ down: stitch });
        }
        for (let round = 1; round <= job.plan.cord.rounds; round++) {
          const { act } = stepAt(job, place(doneBefore(job, { at: 'round', number: round })) + 1);
          if (act.kind !== 'rounds' && act.kind !== 'flat-rows') throw new Error(act.kind);
          expect(act.from <= round && round <= act.through).toBe(true);
        }
        const { used } = job.plan.eyelets;
        for (let hole = 1; hole <= used.length * job.plan.cord.draws; hole++) {
          const { act } = stepAt(job, place(doneBefore(job, { at: 'hole', number: hole })) + 1);
          if (act.kind !== 'thread-eyelets') throw new Error(act.kind);
          const inDraw = ((hole - 1) % used.length) + 1;
          expect([act.hole, act.hole + 1]).toContain(inDraw);
          expect(act.draw === 'second').toBe(hole > used.length);
        }
        for (const stripe of job.plan.stripes) {
          const step = stepAt(job, place(doneBefore(job, { at: 'stripe', number: stripe.number })) + 1);
          expect(step.stripe).toBe(stripe.number);
        }
      }),
      { numRuns: tries(60) },
    );
  });

  it('that is a step comes once those before it are confirmed', () => {
    const job = jobOf(stripedBrief(46, 64));
    expect([1, 7, job.stepCount].map((number) => place(doneBefore(job, { at: 'step', number })))).toEqual([
      0,
      6,
      job.stepCount - 1,
    ]);
  });

  it.each([
    ['row', 0],
    ['row', 64],
    ['stripe', 33],
    ['move', 32],
    ['stitch', 47],
    ['round', 0],
    ['hole', 17],
    ['step', 9999],
    ['step', 1.5],
  ] as const)('%s %d is not in a bag of 64 rows', (at, number) => {
    const job = jobOf(stripedBrief(46, 64));
    const outcome = doneBefore(job, { at, number });
    expect(outcome.ok ? null : outcome.fault.code).toBe('steps/no-such-place');
  });

  it('a hem is in no bag but one that is planned with it', () => {
    const plain = doneBefore(jobOf(stripedBrief(46, 64)), { at: 'phase', phase: 'hem' });
    expect(plain.ok ? null : plain.fault).toEqual({ code: 'steps/no-such-phase', phase: 'hem' });
    const hemmed = jobOf({ ...stripedBrief(46, 64), hem: { rows: 4 } });
    const done = place(doneBefore(hemmed, { at: 'phase', phase: 'hem' }));
    expect(stepAt(hemmed, done + 1).act.kind).toBe('set-hem-needles');
  });
});
