import { describe, expect, it } from 'vitest';
import { bedAfter, bedOf, draw, faultOf } from '../../test/fixtures/drawn-bed.ts';
import { edgesOf } from './bed.ts';

describe('work off the bed', () => {
  const work = bedOf('..1112..');

  it('leaves every needle out of work and its loops counted', () => {
    const bed = bedAfter(work, { move: 'take-off' });
    expect(draw(bed)).toBe('........');
    expect([bed.loopsOff, edgesOf(bed).left]).toEqual([5, null]);
  });

  it('goes back on the same number of needles elsewhere, all working, one loop each', () => {
    const bed = bedAfter(
      work,
      { move: 'take-off' },
      { move: 'work', needles: ['L4', 'L3', 'L2', 'L1', 'R1'] },
      { move: 'rehang', left: 'L4', right: 'R1' },
    );
    expect(draw(bed)).toBe('11111...');
    expect(bed.loopsOff).toBe(0);
  });

  it.each([
    ['L4', 'L1', 4],
    ['L4', 'R2', 6],
    ['R2', 'L1', 0],
  ])('does not go on needles %s to %s, which are %i', (left, right, needleCount) => {
    expect(faultOf(bedAfter(work, { move: 'take-off' }), { move: 'rehang', left, right })).toEqual({
      code: 'bed/loops-differ',
      loopsOff: 5,
      needleCount,
    });
  });

  it('does not go on needles that are out of work', () => {
    const bed = bedAfter(work, { move: 'take-off' }, { move: 'work', needles: ['L4', 'L3', 'L1', 'R1'] });
    expect(faultOf(bed, { move: 'rehang', left: 'L4', right: 'R1' })).toEqual({
      code: 'bed/needle-out-of-work',
      needle: 'L2',
    });
  });

  it.each([
    ['.ooo', 'L2', 'R1', 'L2'],
    ['oo.o', 'L2', 'R1', 'R1'],
  ])('does not go on %s from %s to %s, where an end is out of work', (drawing, left, right, needle) => {
    expect(faultOf(bedOf(drawing, { loopsOff: 3 }), { move: 'rehang', left, right })).toEqual({
      code: 'bed/needle-out-of-work',
      needle,
    });
  });

  it('goes on its needles alone, which then knit', () => {
    const bed = bedAfter(bedOf('.ooo.', { loopsOff: 3 }), { move: 'rehang', left: 'L1', right: 'R2' });
    expect(draw(bed)).toBe('.111.');
    expect(bed.needles.map(({ working }) => working)).toEqual([false, true, true, true, false]);
  });

  it('drops by a pass with nothing in the feeder, after which the carriage stands there', () => {
    const bare = { ...work, feeder: null };
    const bed = bedAfter(bare, { move: 'take-off', to: 'left' });
    expect([draw(bed), bed.carriage, bed.loopsOff]).toEqual(['........', 'left', 5]);
    expect(faultOf(work, { move: 'take-off', to: 'left' })).toEqual({
      code: 'bed/yarn-in-feeder',
      held: 'plum',
    });
    expect(faultOf(bare, { move: 'take-off', to: 'right' })).toEqual({
      code: 'bed/carriage-already-there',
      side: 'right',
    });
  });

  it('does not go over work that still hangs', () => {
    expect(faultOf({ ...work, loopsOff: 2 }, { move: 'rehang', left: 'L4', right: 'L3' })).toEqual({
      code: 'bed/bed-not-empty',
      stitchCount: 4,
    });
  });

  it('does not go on needles that the bed does not have', () => {
    expect(
      faultOf(bedAfter(work, { move: 'take-off' }), { move: 'rehang', left: 'L5', right: 'L1' }),
    ).toEqual({
      code: 'bed/needle-off-bed',
      needle: 'L5',
      needleCount: 8,
    });
  });

  it('must have hung there before', () => {
    expect(faultOf(bedOf('.oo.'), { move: 'take-off' })).toEqual({ code: 'bed/nothing-to-take-off' });
  });
});
