/** A mark made in one plan, looked for in another; the bags are invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { allSteps, type Job } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import { marksOf } from './marks.ts';
import { Kept, type Mark } from './session.ts';

/** Twenty bars of seam on each side, drawn up after every four; and twelve. */
const long = jobOf(stripedBrief(20, 40, 60));
const short = jobOf(stripedBrief(20, 24, 60));
/** Stripes of four rows in place of two. */
const wide = jobOf({
  ...stripedBrief(20, 40, 60),
  stripes: [
    { yarn: 'plum', rows: 4 },
    { yarn: 'mint', rows: 4 },
  ],
});

/** Steps confirmed before the nth of those that are meant. */
function doneAt(job: Job, isMeant: (step: Step) => boolean, nth = 1): number {
  const step = [...allSteps(job)].filter(isMeant)[nth - 1];
  if (!step) throw new Error('no such step');
  return step.step - 1;
}

const bars = (step: Step): boolean => step.act.kind === 'bars';
const passOf =
  (row: number) =>
  (step: Step): boolean =>
    step.row === row && step.act.kind === 'pass';

const placeIn = (job: Job, made: Job, done: number): number | undefined =>
  marksOf({ job, marks: Kept.none.add({ name: 'here', done, job: made } as Mark) as Kept<Mark> }).get('here');

describe('a mark', () => {
  it('stays where it was made while the plan does', () => {
    for (const done of [0, 1, 40, long.stepCount]) expect(placeIn(long, long, done)).toBe(done);
  });

  it('at the beginning or the end is there in every plan', () => {
    expect(placeIn(short, long, 0)).toBe(0);
    expect(placeIn(short, long, long.stepCount)).toBe(short.stepCount);
  });

  it('before a row is before that row, whatever the number of its step', () => {
    expect(doneAt(wide, passOf(20))).not.toBe(doneAt(long, passOf(20)));
    for (const row of [2, 11, 20, 38])
      expect(placeIn(wide, long, doneAt(long, passOf(row)))).toBe(doneAt(wide, passOf(row)));
  });

  it('before something that the row does not bring in the new plan is before the next row', () => {
    const thread = (step: Step): boolean => step.row === 10 && step.act.kind === 'thread';
    expect(placeIn(wide, long, doneAt(long, thread))).toBe(doneAt(wide, passOf(11)));
  });

  it('before a row that is not knitted any more is at the closing row', () => {
    const closing = doneAt(short, ({ phase }) => phase === 'closing-row');
    expect(placeIn(short, long, doneAt(long, passOf(30)))).toBe(closing);
  });

  it('before the third bars is before the third, and at the last where there are fewer', () => {
    expect(placeIn(short, long, doneAt(long, bars, 3))).toBe(doneAt(short, bars, 3));
    expect(placeIn(short, long, doneAt(long, bars, 1))).toBe(doneAt(short, bars, 1));
    expect(placeIn(short, long, doneAt(long, bars, 5))).toBe(doneAt(short, bars, 3));
    expect(placeIn(long, short, doneAt(short, bars, 3))).toBe(doneAt(long, bars, 3));
  });

  it.each(['graft-end', 'hide-ends', 'wash', 'tie'] as const)('at the %s is at the same again', (kind) => {
    const isSame = (step: Step): boolean => step.act.kind === kind;
    expect(placeIn(short, long, doneAt(long, isSame))).toBe(doneAt(short, isSame));
  });
});
