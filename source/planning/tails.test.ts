/** Tails worked out by hand. Common practice and rules of thumb, no source; the bags are invented. */
import { describe, expect, it } from 'vitest';
import { planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { closingTailCm, planGraft, planLining, planSeam, ravelCordCm } from './tails.ts';

const { brief, gauge } = planOf(stripedBrief(46, 64));
const withLoops = (loopLengthMm: number) => ({ ...gauge, loopLengthMm });
const onBed = (pitchMm: number, homeSide: 'left' | 'right') => ({
  ...brief,
  bed: { ...brief.bed, pitchMm },
  homeSide,
  crawl: 'right' as const,
});

describe('the tail of the graft', () => {
  it('is three times the width of the work on the needles and 15 cm, where its loops need less', () => {
    // 46 needles of 6.5 mm are 29.9 cm; a row of 46 loops of 17.1 mm takes 78.66 cm.
    const { ruleCm, modelCm, tailCm } = planGraft(onBed(6.5, 'left'), withLoops(17.1), 46);
    expect([ruleCm, modelCm, tailCm].map((cm) => cm.toFixed(3))).toEqual(['89.700', '86.526', '104.700']);
  });

  it('is a row of its loops, a tenth more and 15 cm, where that is longer', () => {
    const { tailCm } = planGraft(onBed(6.5, 'left'), withLoops(20), 46);
    expect(tailCm).toBeCloseTo(101.2 + 15, 9);
  });

  it('goes on to the seam where the carriage is at home on the trailing side', () => {
    const seam = planSeam(64, 14);
    const on = planGraft(onBed(6.5, 'left'), withLoops(20), 46);
    const apart = planGraft(onBed(6.5, 'right'), withLoops(20), 46);
    expect([on.goesOnToSeam, apart.goesOnToSeam]).toEqual([true, false]);
    expect(closingTailCm({ graft: on, seam })).toBeCloseTo(116.2 + 43, 9);
    expect(closingTailCm({ graft: apart, seam })).toBeCloseTo(116.2, 9);
  });
});

it('the seam takes half the rows of the tube on each side, and twice its length and 15 cm', () => {
  expect(planSeam(64, 14)).toEqual({ barsPerSide: 32, lengthCm: 14, tailCm: 43 });
});

it('the ravel cord is a row of loops and a tenth, and 20 cm on each side', () => {
  expect(ravelCordCm(withLoops(17.1), 46)).toBeCloseTo(86.526 + 40, 9);
});

it('a lining has two pieces as wide as the bag and as deep as below the cord, and a centimetre more all round', () => {
  expect(planLining(14, 15.5)).toEqual({ pieces: 2, widthCm: 16, depthCm: 17.5, seamCm: 1 });
});
