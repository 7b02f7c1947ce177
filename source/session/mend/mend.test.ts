/** Work of the hands outside the plan, and what they cannot take back. The bag is invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { emptyBed } from '../../bed/bed.ts';
import type { Act } from '../../steps/act.ts';
import { allSteps } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { afterHandStep, applyMends, handStep, irreversibleOf, standingAfter } from './mend.ts';

const job = jobOf(stripedBrief(8, 8, 14));
const steps = [...allSteps(job)];
const one = (kind: Act['kind'], row = 0): Step => {
  const step = steps.find(({ act, row: at }) => act.kind === kind && at >= row);
  if (!step) throw new Error(`no ${kind}`);
  return step;
};

describe('what cannot be taken back', () => {
  it.each<[Act['kind'], number, object | null]>([
    ['trim-ravel-cord', 0, { why: 'cut', yarn: 'waste' }],
    ['thread-waste', 6, { why: 'cut', yarn: 'plum' }],
    ['weights-off', 6, { why: 'cut', yarn: 'waste' }],
    ['take-off', 6, { why: 'off-the-needles' }],
    ['release-waste', 6, { why: 'released', what: 'waste' }],
    ['pull-ravel-cord', 7, { why: 'released', what: 'ravel cord' }],
    ['cut-graft-tail', 7, { why: 'cut', yarn: 'mint' }],
    ['draw-through', 7, { why: 'drawn-through', yarn: 'plum' }],
    ['pass', 1, null],
    ['increase', 2, null],
    ['thread', 2, null],
    ['rehang', 6, null],
    ['bars', 7, null],
  ])('%s from row %d on: %j', (kind, row, why) => expect(irreversibleOf(one(kind, row))).toEqual(why));
});

describe('the planned steps whose work hangs there', () => {
  const step = one('pass');
  it.each([
    [{ done: 4, stands: 5, planned: step }, 4],
    [{ done: 0, stands: 5, planned: step }, 0],
    [{ stands: 5, planned: step }, 5],
    [{ stands: 0, planned: step }, 0],
    [{ planned: step }, step.step],
    [{}, null],
  ])('after %j', (given, stands) => {
    expect(standingAfter(handStep({ moves: [], row: 1, ...given }))).toBe(stands);
  });
});

describe('the bed after one thing done', () => {
  const before = bedAtPlace(job, one('pass', 2).step);
  const knit = { move: 'knit', to: 'left' } as const;

  it('has its counter set by hand where that is said, and where there is one', () => {
    const counterAfter = (given: object, bed = before) =>
      valueIn(afterHandStep(bed, handStep({ moves: [knit], row: 9, ...given }), 8)).counter;
    expect(before.counter).toBe(2);
    expect(counterAfter({})).toBe(3);
    expect(counterAfter({ setsCounter: true })).toBe(9);
    const without = { ...before, counter: null };
    expect([counterAfter({}, without), counterAfter({ setsCounter: true }, without)]).toEqual([null, null]);
  });

  it('forgets a cord that is laid aside: the bag is what came off the needles last', () => {
    const bare = { ...emptyBed(14, 'right', true), loopsOff: 3 };
    const aside = handStep({ moves: [], row: 7, care: { is: 'cord-aside', finished: true } });
    expect(valueIn(afterHandStep(bare, aside, 8)).loopsOff).toBe(8);
    expect(valueIn(afterHandStep(bare, handStep({ moves: [], row: 7 }), 8)).loopsOff).toBe(3);
  });

  it('is none where something stands in the way, and the bed before it stays', () => {
    const step = handStep({ moves: [knit, { move: 'knit', to: 'left' }], row: 3 });
    expect(faultIn(afterHandStep(before, step, 8))).toMatchObject({ code: expect.any(String) });
    expect(before).toEqual(bedAtPlace(job, one('pass', 2).step));
  });

  it('is the same after work away from it', () => {
    expect(applyMends(before, [{ move: 'measure', lengthCm: 3 }])).toEqual({ ok: true, value: before });
  });
});
