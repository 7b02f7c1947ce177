/** What is usual on a bed of some pitch: between the labels worked out by hand, metres to the next 10. */
import { describe, expect, it } from 'vitest';
import { usualMetresPer100g, usualSwatch } from './usual.ts';

describe('the metres of a yarn that a pitch knits', () => {
  it.each([
    [3.6, 700],
    [4.5, 430],
    [6.5, 220],
    [9, 115 + 5],
    // Half-way along the logarithm: the root of 220 · 430.
    [5.5, 310],
    // The root of 220 · 115.
    [7.75, 160],
    // As far beyond the last label as it is from the one before: 115² / 220.
    [11.5, 60],
    // As far before the first: 700² / 430 = 1140.
    [2.7, 1140],
    [40, 10],
  ])('at %d mm are %d', (pitchMm, metres) => expect(usualMetresPer100g(pitchMm)).toBe(metres));
});

describe('the swatch', () => {
  it('is of forty stitches and sixty rows, larger on a wider pitch', () => {
    const [fine, coarse] = [usualSwatch(4.5), usualSwatch(9)];
    expect(fine).toMatchObject({ stitches: 40, rows: 60 });
    expect(coarse.widthCm / fine.widthCm).toBeCloseTo(2, 1);
    expect(coarse.heightCm / fine.heightCm).toBeCloseTo(2, 1);
    // Rows are lower than stitches are wide.
    expect(fine.heightCm / 60).toBeLessThan(fine.widthCm / 40);
  });
});
