/** Which holes a cord goes through, counted by hand after the rule at the head of eyelets.ts; the stitch is invented. */
import { describe, expect, it } from 'vitest';
import { cordYarnCm } from './cord.ts';
import { chooseEyelets, cordThicknessMm, threadingOrder } from './eyelets.ts';

/** A move every two rows: from eyelet to eyelet it is √(4.8² + 7.2²) mm. */
const gauge = { stitchMm: 4.8, rowMm: 3.6, skewRad: 0, learned: null };
const spacingCm = Math.hypot(0.48, 0.72);
const [thin, thick] = [0.5, 8];

const eyeletsOf = (made: number, cordMm: number, draws: 1 | 2 = 1) =>
  chooseEyelets(made, gauge, 2, cordMm, draws);

describe('a thin cord', () => {
  it('goes through every hole where their number is even', () => {
    expect(eyeletsOf(6, thin)).toMatchObject({
      used: [1, 2, 3, 4, 5, 6],
      skipped: [],
      widestGapIntervals: 2,
    });
  });

  it('passes by the one opposite the graft where it is odd', () => {
    expect(eyeletsOf(7, thin)).toMatchObject({
      used: [1, 2, 3, 5, 6, 7],
      skipped: [4],
      widestGapIntervals: 2,
    });
  });

  it('has its gaps from hole to hole, and the one over the graft, where a move is missing', () => {
    const { gapsCm, acrossCm, widestGapCm, spacingCm: spacing, graftGapCm } = eyeletsOf(7, thin);
    expect(spacing).toBeCloseTo(spacingCm, 12);
    expect(gapsCm.map((gap) => gap / spacingCm)).toEqual([1, 1, 2, 1, 1].map((gaps) => expect.closeTo(gaps)));
    // One stitch and four rows.
    for (const gap of [acrossCm, graftGapCm]) expect(gap).toBeCloseTo(Math.hypot(0.48, 1.44), 12);
    expect(widestGapCm).toBeCloseTo(2 * spacingCm, 12);
  });

  it('has none where there are no holes', () => {
    expect(eyeletsOf(0, thin, 2)).toMatchObject({ used: [], acrossCm: 0, widestGapCm: 0, secondFrom: null });
  });
});

describe('a thick cord', () => {
  it('goes through every second hole, as evenly as they can be', () => {
    expect(eyeletsOf(15, thick).used).toEqual([1, 3, 5, 7, 9, 11, 13, 15]);
    expect(eyeletsOf(17, thick).used).toEqual([1, 3, 5, 7, 10, 12, 14, 16]);
    expect(eyeletsOf(17, thick).skipped).toEqual([2, 4, 6, 8, 9, 11, 13, 15, 17]);
  });

  it('goes through all but the middle one where that would leave fewer than eight', () => {
    expect(eyeletsOf(13, thick).used).toEqual([1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 13]);
  });

  it('is one that makes its way longer by a tenth in winding through', () => {
    const longer = (ratio: number) => Math.sqrt(ratio * ratio - 1) * spacingCm * 10;
    expect(eyeletsOf(15, longer(1.09)).used).toHaveLength(14);
    expect(eyeletsOf(15, longer(1.11)).used).toHaveLength(8);
    // Three stitches are 1.2 stitches thick, six twice as much.
    expect(cordThicknessMm(3, gauge)).toBeCloseTo(5.76, 12);
    expect(cordThicknessMm(6, gauge)).toBeCloseTo(11.52, 12);
  });
});

describe('a second cord', () => {
  it.each([
    [6, 4, [4, 5, 6, 1, 2, 3]],
    [10, 6, [6, 7, 8, 9, 10, 1, 2, 3, 4, 5]],
    // Two gaps are as near to half-way round: the first of them.
    [8, 4, [4, 5, 6, 7, 8, 1, 2, 3]],
  ])('of %i holes begins at hole %i and goes round from there', (made, from, order) => {
    const eyelets = eyeletsOf(made, thin, 2);
    expect(eyelets.secondFrom).toBe(from);
    expect(threadingOrder(eyelets, 'second')).toEqual(order);
    expect(threadingOrder(eyelets, 'first')).toEqual(eyelets.used);
  });

  it('takes as much yarn as the first, with 15 cm at both ends of each', () => {
    expect(cordYarnCm({ draws: 2, metres: 1.5 } as never)).toBe(360);
    expect(cordYarnCm({ draws: 1, metres: 1.5 } as never)).toBe(180);
  });
});
