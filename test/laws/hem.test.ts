/**
 * The hem over random bags, against a walk along the mouth edge and a count of every loop: how many are picked up, that the bed holds
 * them, that it folds in its middle, and where fold and eyelets come to lie. The ways of the craft are common practice, from memory.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseNeedle } from '../../source/bed/needles.ts';
import { benchView } from '../../source/chat/view.ts';
import { startSession } from '../../source/session/session.ts';
import { allSteps, type Job } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';

const overHems = (check: (job: Job, steps: readonly Step[]) => void, runs = 200): void =>
  fc.assert(
    fc.property(briefFile(), fc.constantFrom(2, 4, 6, 12), (file, rows) => {
      const job = jobOf({ ...file, hem: { rows } });
      check(job, [...allSteps(job)]);
    }),
    { numRuns: tries(runs) },
  );

/** From the start of the strip to its end along the mouth edge, row by row: each row climbs, and each move steps aside. */
function edgeMm({ plan }: Job): number {
  const { stitchMm, rowMm, skewRad } = plan.gauge;
  let [x, y] = [0, 0];
  for (let row = 1; row <= plan.rows; row++) {
    x += rowMm * Math.sin(skewRad);
    y += rowMm * Math.cos(skewRad);
    if (row % plan.brief.shapeEveryRows === 0 && row < plan.rows) x += stitchMm;
  }
  return Math.hypot(x, y);
}

const picked = (steps: readonly Step[], of: 'edge' | 'first-row') =>
  steps.flatMap(({ moves }) =>
    moves.flatMap((move) => (move.move === 'pick-up' && move.of === of ? [move] : [])),
  );

describe('the hem', () => {
  it('picks up a loop for each stitch that fits along the mouth, and never two from a row', () => {
    overHems((job, steps) => {
      const count = steps.reduce((sum, { act }) => sum + (act.kind === 'pick-up' ? act.count : 0), 0);
      const fit = edgeMm(job) / job.plan.gauge.stitchMm;
      const rows = job.plan.rows - 1;
      if (fit > rows + 0.5) expect(count).toBe(rows);
      else expect(Math.abs(count - fit)).toBeLessThanOrEqual(0.5 + 1e-6);
      const from = steps.reduce((sum, { act }) => sum + (act.kind === 'pick-up' ? act.rows : 0), 0);
      expect(from).toBe(rows);
      for (const { act } of steps)
        if (act.kind === 'pick-up') expect(act.count).toBeLessThanOrEqual(act.rows);
    });
  });

  it('hangs within the margins, in no more sections than the bed asks for', () => {
    overHems((job, steps) => {
      const { needles, marginNeedles } = job.plan.brief.bed;
      const room = needles - 2 * marginNeedles;
      const sections = picked(steps, 'edge');
      const counts = sections.map(({ left, right }) => {
        const [first, last] = [left, right].map((name) => parseNeedle(needles, name) ?? -1);
        expect(first).toBeGreaterThanOrEqual(marginNeedles);
        expect(last).toBeLessThan(needles - marginNeedles);
        return (last ?? 0) - (first ?? 0) + 1;
      });
      const all = counts.reduce((sum, count) => sum + count, 0);
      expect(counts.length).toBe(Math.ceil(all / room));
      expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      // Each section hangs its first row again where its edge hung.
      expect(picked(steps, 'first-row').map(({ left, right }) => [left, right])).toEqual(
        sections.map(({ left, right }) => [left, right]),
      );
    });
  });

  it('folds in the middle: as many plain rows before the fold as after it, and one row through both', () => {
    overHems((job, steps) => {
      const { hem } = job.plan.brief;
      let rows: string[] = [];
      const sections: string[][] = [];
      for (const { act, moves, phase } of steps) {
        if (phase !== 'hem') continue;
        for (const { move } of moves) {
          if (move === 'pick-up' && act.kind === 'pick-up') rows = [];
          if (move === 'pick-up' && act.kind === 'hang-fold') rows.push('hung');
          if (move === 'knit') rows.push(act.kind === 'hem-rows' ? 'plain' : act.kind);
          if (move === 'bind-off') sections.push(rows);
        }
      }
      const plain = Array<string>(hem?.rows ?? 0).fill('plain');
      for (const section of sections)
        expect(section).toEqual([...plain, 'fold-row', ...plain, 'hung', 'hem-close']);
      expect(sections.length).toBe(picked(steps, 'edge').length);
    });
  });

  it('adds a layer and half the row of the fold to the depth, and the eyelets lie that much further from the fold', () => {
    overHems((job) => {
      const { plan } = job;
      const { size, hem, gauge, brief, stitches } = plan;
      const heightCm = (((brief.hem?.rows ?? 0) + 0.5) * gauge.rowMm) / 10;
      expect(hem?.heightCm).toBeCloseTo(heightCm, 9);
      const stripCm =
        ((stitches - 1) * gauge.stitchMm * plan.rows * gauge.rowMm * Math.cos(gauge.skewRad)) /
        edgeMm(job) /
        10;
      expect(size.depthCm).toBeCloseTo(stripCm + heightCm, 6);
      expect(hem?.foldToCordCm).toBeCloseTo(size.depthCm - size.depthBelowCordCm, 6);
    });
  });

  it('leaves a bag without one as it was', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const { hem: _, ...without } = file;
        const job = jobOf(without);
        expect(job.plan.hem).toBeNull();
        for (const { phase, act } of allSteps(job)) {
          expect(phase).not.toBe('hem');
          expect(act.kind).not.toBe('join-hem');
        }
      }),
      { numRuns: tries(50) },
    );
  });

  it('is seen with two loops on each needle before the row that closes it', () => {
    overHems((job, steps) => {
      const closing = steps.filter(({ act }) => act.kind === 'hem-close');
      expect(closing).toHaveLength(job.plan.hem?.sections.length ?? 0);
      const doubled = closing.map(
        ({ step }) => benchView({ ...startSession(job), done: step - 1 }).bed.doubled.length,
      );
      expect(doubled).toEqual(job.plan.hem?.sections);
    }, 30);
  });
});
