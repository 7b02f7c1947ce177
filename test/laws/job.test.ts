/** Laws that every bag obeys, over random briefs: the steps' formulas against a bed on which every move is made. */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgesOf } from '../../source/bed/bed.ts';
import { parseNeedle } from '../../source/bed/needles.ts';
import { allSteps, type Job, stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';
import { seenOn, simulate } from './simulate.ts';

const overJobs = (check: (job: Job) => void, runs = 500): void =>
  fc.assert(
    fc.property(briefFile(), (file) => check(jobOf(file))),
    { numRuns: tries(runs) },
  );

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** A cord as the moves thread it, hole by hole. Gaps of the mouth are numbered by the hole in use before them, from 0. */
interface ThreadedCord {
  readonly holes: readonly number[];
  readonly sides: readonly string[];
  readonly sideIn: ReadonlyMap<number, string>;
  /** The gap that it does not span. */
  readonly endsIn: number;
}

function threadedCords(job: Job): readonly ThreadedCord[] {
  const cords = new Map<string, { eyelet: number; towards: string }[]>();
  for (const { act, moves } of allSteps(job)) {
    if (act.kind !== 'thread-eyelets') continue;
    const threaded = moves.flatMap((move) => (move.move === 'thread' ? [move] : []));
    cords.set(act.draw, [...(cords.get(act.draw) ?? []), ...threaded]);
  }
  const { used } = job.plan.eyelets;
  return [...cords.values()].map((cord) => {
    let side = 'outside';
    const sideIn = new Map<number, string>();
    for (const [i, { eyelet, towards }] of cord.entries()) {
      // Through the cloth: it comes out on the other side, and goes on to the next hole round the mouth.
      expect(towards).not.toBe(side);
      side = towards;
      const next = cord[i + 1];
      if (!next) continue;
      const gap = used.indexOf(eyelet);
      expect(next.eyelet).toBe(used[(gap + 1) % used.length]);
      sideIn.set(gap, side);
    }
    const endsIn = used.findIndex((_, gap) => !sideIn.has(gap));
    return { holes: cord.map(({ eyelet }) => eyelet), sides: cord.map((one) => one.towards), sideIn, endsIn };
  });
}

/** Gaps of the mouth in cm after the cords have been drawn out little by little: what is drawn out is taken from all that a cord spans. */
function pulled({ plan }: Job, cords: readonly ThreadedCord[]): readonly number[] {
  const { gapsCm, acrossCm } = plan.eyelets;
  const gaps = [...gapsCm, acrossCm];
  for (let pull = 0; pull < 400; pull++)
    for (const { sideIn } of cords) for (const gap of sideIn.keys()) gaps[gap] = (gaps[gap] ?? 0) * 0.96;
  return gaps;
}

/** How many needles knit in a pass of this step; what a section of the hem has picked up is held against the mouth elsewhere. */
function stitchesIn({ plan }: Job, { phase, after }: Step): number {
  if (phase === 'cord') return plan.cord.stitches;
  return phase === 'hem' ? after.stitches : plan.stitches;
}

const inStripes = (step: Step): boolean => step.phase === 'stripes' || step.phase === 'closing-row';

describe('every job', () => {
  it('can be carried out move by move, and leaves the bed that each step foretells', () => {
    overJobs((job) => {
      // The matcher is far slower than the comparison, so it is called once for all the differences.
      const wrong: unknown[] = [];
      for (const { step, bed, passes } of simulate(job)) {
        const { shapings: _, ...foretold } = step.after;
        const seen = seenOn(bed);
        if (!isDeepStrictEqual(seen, foretold)) wrong.push({ step: step.step, seen, foretold });
        for (const pass of passes) {
          const { stitchCount } = edgesOf(pass);
          const due = stitchesIn(job, step);
          if (stitchCount !== due) wrong.push({ step: step.step, stitchCount, due });
        }
      }
      expect(wrong).toEqual([]);
    });
  });

  it('knits every row of the bag with its number on the row counter, where the bed has one', () => {
    overJobs((job) => {
      const has = !job.plan.brief.bed.without.includes('counter');
      const shown = [...simulate(job)].filter(
        ({ step }) => step.act.kind === 'pass' || step.act.kind === 'closing-pass',
      );
      expect(shown.map(({ bed }) => bed.counter)).toEqual(shown.map((_, i) => (has ? i + 1 : null)));
    }, 100);
  });

  it('makes one eyelet for each shaping move', () => {
    overJobs((job) => {
      let eyelets = 0;
      for (const { step, bed } of simulate(job)) if (step.phase === 'closing-row') eyelets = bed.eyeletCount;
      expect(eyelets).toBe(job.plan.shapings);
      const moves = [...allSteps(job)].filter((step) => step.act.kind === 'decrease');
      expect(moves.map((step) => step.after.shapings)).toEqual(moves.map((_, i) => i + 1));
    });
  });

  it('keeps every hanging inside the margins of the bed', () => {
    overJobs((job) => {
      const { needles, marginNeedles } = job.plan.brief.bed;
      const hanging = [...allSteps(job)].filter((step) => inStripes(step) && step.after.left !== null);
      expect(hanging.length).toBeGreaterThan(job.plan.rows);
      const isInside = (name: string | null): boolean => {
        const place = name === null ? null : parseNeedle(needles, name);
        return place !== null && place >= marginNeedles && place < needles - marginNeedles;
      };
      expect(hanging.filter(({ after }) => !isInside(after.left) || !isInside(after.right))).toEqual([]);
    });
  });

  it('rehangs no fewer times than the room on the bed demands, each time at home and with a gain', () => {
    overJobs((job) => {
      const { hangings, shapings, stitches, brief } = job.plan;
      const room = brief.bed.needles - 2 * brief.bed.marginNeedles - stitches;
      expect(hangings.length).toBeGreaterThanOrEqual(Math.ceil(shapings / room));
      for (const [i, hanging] of hangings.entries()) {
        expect(hanging.fromRow).toBe((hangings[i - 1]?.throughRow ?? 0) + 1);
        if (i < hangings.length - 1) expect(hanging.throughRow % 2).toBe(0);
        if (i > 0) expect(hanging.shapingsBefore).toBeGreaterThan(hangings[i - 1]?.shapingsBefore ?? 0);
      }
      expect(hangings.at(-1)?.throughRow).toBe(job.plan.knittedRows);
    });
  });

  it('knits each row in the colour of its stripe, and the colours differ across the graft', () => {
    overJobs((job) => {
      const colours = [...allSteps(job)]
        .filter((step) => step.act.kind === 'pass' || step.act.kind === 'closing-pass')
        .map((step) => step.after.feeder);
      const asked = job.plan.brief.stripes.flatMap((stripe) => Array<string>(stripe.rows).fill(stripe.yarn));
      expect(colours).toEqual(Array.from({ length: job.plan.rows - 1 }, (_, i) => asked[i % asked.length]));
      if (job.plan.brief.stripes.length > 1) expect(colours.at(-1)).not.toBe(colours[0]);
    });
  });

  it('grafts along the path of a knitted row', () => {
    overJobs((job) => {
      const { stitches } = job.plan;
      const movements = [...allSteps(job)]
        .flatMap((step) => step.moves)
        .filter((move) => move.move === 'graft');
      const entered = new Map<string, number>();
      for (const { edge, down, up } of movements)
        for (const loop of [down, up])
          if (loop !== null) entered.set(`${edge}${loop}`, (entered.get(`${edge}${loop}`) ?? 0) + 1);
      expect(entered.size).toBe(2 * stitches);
      const once = [...entered].filter(([, times]) => times === 1).map(([loop]) => loop);
      expect(once.toSorted()).toEqual([`A${stitches}`, 'B1'].toSorted());
      expect(sum([...entered.values()])).toBe(2 * job.plan.graft.entries);
      // The thread as it runs: through the work and back in turn, from a loop of one edge to its fellow of the other.
      const path = movements.flatMap(({ edge, down, up }) => [
        ...(down === null ? [] : [{ edge, loop: down, to: 'back' }]),
        ...(up === null ? [] : [{ edge, loop: up, to: 'front' }]),
      ]);
      for (const [i, { edge, loop, to }] of path.entries()) {
        const before = path[i - 1];
        if (!before) continue;
        expect(to).not.toBe(before.to);
        // In front of the work it lies over the ends of the loops, from edge to edge; behind it runs along one edge.
        if (before.to === 'front') expect(edge).not.toBe(before.edge);
        else expect([edge, loop]).toEqual([before.edge, before.loop + 1]);
        if (before.to === 'front') expect(loop).toBe(before.edge === 'A' ? before.loop : before.loop - 1);
      }
    }, 100);
  });

  it('threads each cord so that both its ends come out on the outside, and two of them against each other', () => {
    overJobs((job) => {
      const { used } = job.plan.eyelets;
      const cords = threadedCords(job);
      expect(cords.length).toBe(used.length === 0 ? 0 : job.plan.brief.cord.draws);
      for (const cord of cords) {
        expect(cord.holes.toSorted((a, b) => a - b)).toEqual(used);
        expect(cord.sides.at(-1)).toBe('outside');
      }
      const [first, second] = cords;
      if (first) expect(first.holes).toEqual(used);
      if (!first || !second) return;
      const ends = second.endsIn;
      // One inside where the other is outside, in every gap of the mouth.
      for (const [gap, side] of second.sideIn) {
        if (gap !== first.endsIn) expect(first.sideIn.get(gap)).not.toBe(side);
      }
      expect(first.sideIn.get(ends)).toBe('inside');
      expect(second.sideIn.get(first.endsIn)).toBe('inside');
      const [before = 0, after = 0] = [used[ends], used[ends + 1]];
      const offHalf = Math.abs((before + after) / 2 - (job.plan.eyelets.made + 1) / 2);
      expect(offHalf).toBeLessThanOrEqual(job.plan.eyelets.widestGapIntervals);
    }, 400);
  });

  it('closes the whole mouth when two cords are pulled at both sides, where one leaves a gap', () => {
    overJobs((job) => {
      const [first, second] = threadedCords(job);
      if (!first) return;
      const open = pulled(job, [first]);
      expect(open.filter((gap) => gap > 1e-3)).toHaveLength(1);
      expect(open[first.endsIn]).toBeGreaterThan(1e-3);
      if (second) for (const gap of pulled(job, [first, second])) expect(gap).toBeLessThan(1e-3);
    }, 100);
  });

  it('takes half the rows from each side of the seam', () => {
    overJobs((job) => {
      const taken = { front: 0, back: 0 };
      for (const move of [...allSteps(job)].flatMap((step) => step.moves)) {
        if (move.move === 'bars') taken[move.side] += move.count;
      }
      expect(taken).toEqual({ front: job.plan.rows / 2, back: job.plan.rows / 2 });
    }, 100);
  });

  it('gives the same step at an index, whichever was asked for before', () => {
    overJobs((job) => {
      const inOrder = [...allSteps(job)];
      expect(inOrder.map((step) => step.step)).toEqual(inOrder.map((_, i) => i + 1));
      for (const number of [job.stepCount, 1, Math.ceil(job.stepCount / 2)]) {
        expect(stepAt(job, number)).toEqual(inOrder[number - 1]);
      }
    }, 100);
  });
});
