import { describe, expect, it } from 'vitest';
import { bedAfter, bedOf, draw, faultOf } from '../../test/fixtures/drawn-bed.ts';
import { applyMove } from './apply-move.ts';

describe('needles', () => {
  it('come into work with the loops they have', () => {
    expect(draw(bedAfter(bedOf('.1..'), { move: 'work', needles: ['L1', 'R1'] }))).toBe('.1o.');
  });

  it('go out of work once they are empty', () => {
    expect(draw(bedAfter(bedOf('.1o.'), { move: 'rest', needles: ['R1'] }))).toBe('.1..');
  });

  it('cannot rest with a loop on them', () => {
    expect(faultOf(bedOf('.1o.'), { move: 'rest', needles: ['R1', 'L1'] })).toEqual({
      code: 'bed/needle-holds-loop',
      needle: 'L1',
    });
  });

  it('cannot rest with a loop on them, whichever is named first', () => {
    expect(faultOf(bedOf('1o'), { move: 'rest', needles: ['L1', 'R1'] })).toMatchObject({ needle: 'L1' });
  });

  it.each(['work', 'rest'] as const)('must be on the bed to %s', (move) => {
    expect(faultOf(bedOf('....'), { move, needles: ['R3'] })).toEqual({
      code: 'bed/needle-off-bed',
      needle: 'R3',
      needleCount: 4,
    });
  });
});

describe('a cast-on', () => {
  const wrap = { move: 'cast-on', yarn: 'grey', from: 'R1', to: 'L1' } as const;

  it('ends beside the carriage', () => {
    const bed = { ...bedOf('.oo.'), carriage: 'right' } as const;
    expect(faultOf(bed, wrap)).toEqual({ code: 'bed/cast-on-ends-far', side: 'right', needle: 'L1' });
    expect(draw(bedAfter(bed, { ...wrap, from: 'L1', to: 'R1' }))).toBe('.11.');
  });

  it('puts one loop on every needle in work', () => {
    expect(draw(bedAfter({ ...bedOf('.ooo.'), carriage: 'left' }, wrap))).toBe('.111.');
  });

  it('on one needle ends beside the carriage wherever that stands', () => {
    for (const carriage of ['left', 'right'] as const) {
      const bed = { ...bedOf('.o..'), carriage };
      expect(draw(bedAfter(bed, { ...wrap, from: 'L1', to: 'L1' }))).toBe('.1..');
    }
  });

  it('needs needles that the bed has', () => {
    expect(faultOf(bedOf('.oo.'), { ...wrap, from: 'R9' })).toMatchObject({ needle: 'R9' });
  });

  it('needs working needles', () => {
    expect(faultOf(bedOf('....'), wrap)).toEqual({
      code: 'bed/no-working-needles',
    });
  });

  it('needs an empty bed', () => {
    expect(faultOf(bedOf('.1o.'), wrap)).toEqual({
      code: 'bed/bed-not-empty',
      stitchCount: 1,
    });
  });
});

describe('any move', () => {
  it('leaves the bed it was given as it was', () => {
    const bed = bedOf('..111..');
    const before = structuredClone(bed);
    for (const move of [
      { move: 'knit', to: 'left' },
      { move: 'transfer', from: ['L1'], to: ['L2'] },
      { move: 'take-off' },
      { move: 'park', yarn: 'plum', end: 'left' },
    ] as const)
      applyMove(bed, move);
    expect(bed).toEqual(before);
  });

  it('may stand the carriage on either side of an empty bed, and not over loops', () => {
    expect(bedAfter(bedOf('.o.'), { move: 'stand', side: 'left' }).carriage).toBe('left');
    expect(bedAfter(bedOf('.o.'), { move: 'stand', side: 'right' }).carriage).toBe('right');
    expect(faultOf(bedOf('.1.'), { move: 'stand', side: 'left' })).toEqual({
      code: 'bed/bed-not-empty',
      stitchCount: 1,
    });
  });
});

describe('the row counter', () => {
  const work = { ...bedOf('.11.'), counter: 8 };

  it('is turned on by one at each pass, one that knits, slips or drops the work', () => {
    const bare = { ...work, feeder: null };
    expect(bedAfter(work, { move: 'knit', to: 'left' }).counter).toBe(9);
    expect(bedAfter(work, { move: 'slip', to: 'left' }).counter).toBe(9);
    expect(bedAfter(bare, { move: 'take-off', to: 'left' }).counter).toBe(9);
  });

  it('is set by hand, and stays while the carriage does', () => {
    const set = bedAfter(work, { move: 'counter', rows: 0 }, { move: 'take-off' });
    expect(set.counter).toBe(0);
  });

  it('is missed on a bed that has none', () => {
    const without = { ...work, counter: null };
    expect(bedAfter(without, { move: 'knit', to: 'left' }).counter).toBeNull();
    expect(faultOf(without, { move: 'counter', rows: 0 })).toEqual({ code: 'bed/no-counter' });
  });
});
