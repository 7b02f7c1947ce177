/** Which slips are suspected, by what is told: counted by hand on invented bags. */
import { describe, expect, it } from 'vitest';
import { leftCrawler, stepAtRow } from '../../../test/fixtures/diagnosed.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import type { Look } from '../locate/seen.ts';
import { type Slip, shapingSlips } from '../mend/slip.ts';
import { farReach, nearReach, supposed } from './suppose.ts';

const job = leftCrawler;
const tight = jobOf(stripedBrief(8, 8, 14));

const work = { left: 'R5', right: 'R24' } as const;
const at = (done: number, look: Look = work, reach = farReach, of = job): readonly Slip[] =>
  supposed(of, look, done, reach);
const only = (slips: readonly Slip[], is: Slip['is']): readonly object[] =>
  slips.filter((slip) => slip.is === is).map(({ is: _, ...facts }) => facts);

describe('suspected after the decrease of move 4', () => {
  const done = stepAtRow(8, 'decrease');
  const all = at(done);

  it('is every slip at each of the last moves, the newest first', () => {
    for (const is of shapingSlips) expect(only(all, is)).toEqual([4, 3, 2, 1].map((move) => ({ move })));
    const near = at(done, work, nearReach);
    for (const is of shapingSlips) expect(only(near, is)).toEqual([4, 3].map((move) => ({ move })));
    const far = at(stepAtRow(22, 'pass'));
    expect(only(far, 'move-missing')).toHaveLength(10);
  });

  it('are rows too many after each row and move, those just now first', () => {
    const first = all.slice(0, 3);
    expect(first).toEqual([1, 2, 3].map((rows) => ({ is: 'rows-too-many', rows, step: done })));
    const steps = new Set(only(all, 'rows-too-many').map((facts) => (facts as { step: number }).step));
    const expected = [8, 7, 6, 5, 4, 3, 2, 1].map((row) => stepAtRow(row, 'pass'));
    const moves = [8, 6, 4, 2].map((row) => stepAtRow(row, 'decrease'));
    expect([...steps].toSorted((a, b) => b - a)).toEqual([...expected, ...moves].toSorted((a, b) => b - a));
  });

  it('are rows too few up to each row', () => {
    expect(only(all, 'rows-too-few').slice(0, 4)).toEqual([
      { rows: 1, step: stepAtRow(8, 'pass') },
      { rows: 2, step: stepAtRow(8, 'pass') },
      { rows: 3, step: stepAtRow(8, 'pass') },
      { rows: 1, step: stepAtRow(7, 'pass') },
    ]);
    expect(only(all, 'rows-too-few')).toHaveLength(24);
    // Rows 7 and 8: then two moves and two stripes are behind.
    expect(only(at(done, work, nearReach), 'rows-too-few')).toHaveLength(6);
  });

  it('is the other yarn of each stripe', () => {
    const stripes = [
      { stripe: 4, used: 'plum' },
      { stripe: 3, used: 'mint' },
      { stripe: 2, used: 'plum' },
      { stripe: 1, used: 'mint' },
    ];
    expect(only(all, 'stripe-in-other-yarn')).toEqual(stripes);
    expect(only(all, 'yarns-swapped')).toEqual(stripes);
    expect(only(at(done, work, nearReach), 'yarns-swapped')).toEqual(stripes.slice(0, 2));
  });

  it('is what was told of: another colour, carriage, feeder, a stitch', () => {
    expect(only(all, 'row-in-other-yarn')).toEqual([]);
    expect(only(at(done, { ...work, lastColour: 'mint' }), 'row-in-other-yarn')).toEqual([]);
    expect(only(at(done, { ...work, lastColour: 'plum' }), 'row-in-other-yarn')).toEqual([
      { step: stepAtRow(8, 'pass'), used: 'plum' },
    ]);
    expect(only(at(done, { ...work, lastColour: 'waste' }), 'row-in-other-yarn')).toEqual([]);
    expect(only(all, 'carriage-wrong-side')).toEqual([]);
    expect(only(at(done, { ...work, carriage: 'left' }), 'carriage-wrong-side')).toEqual([{}]);
    expect(only(all, 'wrong-yarn-in-feeder')).toEqual([]);
    expect(only(at(done, { ...work, feeder: 'mint' }), 'wrong-yarn-in-feeder')).toEqual([]);
    expect(only(at(done, { ...work, feeder: null }), 'wrong-yarn-in-feeder')).toEqual([{ held: null }]);
    expect(only(all, 'stitch-dropped')).toEqual([]);
    expect(only(at(done, { ...work, stitches: 19 }), 'stitch-dropped')).toEqual([{}]);
  });
});

describe('before the first row', () => {
  it('no rows and no moves are suspected', () => {
    const slips = at(stepAtRow(0, 'thread'), { ...work, lastColour: 'mint', carriage: 'left' });
    expect(new Set(slips.map(({ is }) => is))).toEqual(
      new Set(['stripe-in-other-yarn', 'yarns-swapped', 'carriage-wrong-side']),
    );
    expect(at(stepAtRow(0, 'trim-ravel-cord'))).toEqual([]);
  });
});

describe('an empty bed', () => {
  const empty = { left: null, right: null };
  it.each([
    // The pass to come took hold of nothing, or the one before it.
    [stepAtRow(7, 'pass'), [stepAtRow(8, 'pass'), stepAtRow(7, 'pass')]],
    [stepAtRow(8, 'pass'), [stepAtRow(8, 'pass')]],
    [stepAtRow(8, 'decrease'), [stepAtRow(9, 'pass')]],
    [stepAtRow(8, 'thread'), [stepAtRow(9, 'pass')]],
    [stepAtRow(0, 'thread'), [stepAtRow(1, 'pass')]],
  ])('after step %d comes of the passes %j', (done, steps) => {
    expect(at(done, empty)).toEqual(steps.map((step) => ({ is: 'work-dropped', step })));
  });

  it('half told is work that hangs', () => {
    expect(only(at(stepAtRow(8, 'pass'), { left: null }), 'work-dropped')).toEqual([]);
    expect(only(at(stepAtRow(8, 'pass'), { left: null, right: 'R4' }), 'work-dropped')).toEqual([]);
  });
});

describe('work that was hung again', () => {
  const done = stepAtRow(6, 'release-waste', tight);
  const hung = (look: Look) => at(done, look, farReach, tight);

  it('may not have been, or aside by as much as its edge is off', () => {
    expect(only(hung({ left: 'L3', right: 'R5' }), 'rehang-missing')).toEqual([{ row: 6 }]);
    expect(only(hung({ left: 'L3', right: 'R5' }), 'rehang-shifted')).toEqual([]);
    // L5 lies two needles to the left of L3, R1 three to the right.
    expect(only(hung({ left: 'L5', right: 'R3' }), 'rehang-shifted')).toEqual([{ row: 6, by: -2 }]);
    expect(only(hung({ left: 'R1' }), 'rehang-shifted')).toEqual([{ row: 6, by: 3 }]);
    expect(only(hung({ right: 'R6' }), 'rehang-shifted')).toEqual([{ row: 6, by: 1 }]);
  });

  it('is not suspected where it was not due', () => {
    expect(at(stepAtRow(8, 'pass')).filter(({ is }) => is.startsWith('rehang'))).toEqual([]);
  });
});

describe('once the strip is off', () => {
  it('nothing of its rows is suspected', () => {
    for (const kind of ['graft-start', 'bars', 'rounds'] as const)
      expect(at(stepAtRow(23, kind), { ...work, carriage: 'left', stitches: 3 })).toEqual([]);
  });
});
