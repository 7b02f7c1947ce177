import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from './nearest.ts';

describe('nearest', () => {
  const keys = ['needles', 'pitchMm', 'marginNeedles', 'rows'];

  it.each([
    ['needels', 'needles'],
    ['Needles', 'needles'],
    ['nedles', 'needles'],
    ['row', 'rows'],
    ['pitch', 'pitchMm'],
    ['margin', 'marginNeedles'],
  ])('takes %s for %s', (word, meant) => {
    expect(nearest(word, keys)).toBe(meant);
  });

  it.each(['', 'x', 'colour', 'stitches', 'row of seven'])('finds nothing near %j', (word) => {
    expect(nearest(word, keys)).toBeNull();
  });

  it('takes the nearest of several, the first on a tie', () => {
    expect(nearest('plam', ['plums', 'plum', 'slam'])).toBe('plum');
    expect(nearest('mant', ['mint', 'mast'])).toBe('mint');
  });
});

describe('editDistance', () => {
  // The first two are the usual textbook pairs (common knowledge, from memory); the others counted by hand.
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['plum', 'plum', 0],
    ['', 'mint', 4],
    ['plum', 'pulm', 1],
    ['plum', 'plumb', 1],
    ['needles', 'needels', 1],
    ['ca', 'abc', 3],
  ])('from %j to %j is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
    expect(editDistance(b, a)).toBe(distance);
  });

  it('is never more than the longer word nor less than the difference in length', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 9 }), fc.string({ maxLength: 9 }), (a, b) => {
        const distance = editDistance(a, b);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
        expect(distance === 0).toBe(a === b);
      }),
    );
  });
});
