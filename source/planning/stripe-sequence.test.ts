/** Orders of stripes that are not taken in turn: what each must hold, and two worked out by hand. */
import { describe, expect, it } from 'vitest';
import { gradientStripes, layStripes, randomStripes } from './stripe-sequence.ts';

const names = ['plum', 'mint', 'sand', 'rust'];

describe('stripes laid one after another', () => {
  it('are numbered, and follow each other row by row', () => {
    const laid = layStripes(
      [
        { yarn: 'plum', rows: 2 },
        { yarn: 'mint', rows: 4 },
      ],
      12,
    );
    expect(laid.map(({ yarn, number, firstRow, lastRow }) => [yarn, number, firstRow, lastRow])).toEqual([
      ['plum', 1, 1, 2],
      ['mint', 2, 3, 6],
      ['plum', 3, 7, 8],
      ['mint', 4, 9, 12],
    ]);
  });
});

describe('stripes by chance', () => {
  const seeds = Array.from({ length: 40 }, (_, i) => i);
  const joins = (stripes: readonly { yarn: string }[]) =>
    stripes.every(({ yarn }, i) => yarn !== stripes.at(i - 1)?.yarn);

  it.each([
    [2, 4],
    [2, 64],
    [3, 64],
    [4, 100],
    [3, 2000],
  ])('of %d yarns fill %d rows, in even stripes that differ from those beside them', (count, rows) => {
    for (const seed of seeds) {
      const laid = randomStripes(names.slice(0, count), rows, seed);
      expect(laid.reduce((sum, stripe) => sum + stripe.rows, 0)).toBe(rows);
      expect(laid.every((stripe) => stripe.rows > 0 && stripe.rows % 2 === 0)).toBe(true);
      expect(joins(laid)).toBe(true);
      expect(laid.length).toBeLessThanOrEqual(200);
    }
  });

  it('are of two, four and six rows, the same for the same seed and others for another', () => {
    const all = seeds.map((seed) => randomStripes(names, 100, seed));
    expect(new Set(all.flat().map(({ rows }) => rows))).toEqual(new Set([2, 4, 6]));
    expect(seeds.map((seed) => randomStripes(names, 100, seed))).toEqual(all);
    expect(new Set(all.map((stripes) => JSON.stringify(stripes))).size).toBe(seeds.length);
    expect(new Set(all.flat().map(({ yarn }) => yarn))).toEqual(new Set(names));
  });
});

describe('stripes from dark to light and back', () => {
  const yarns = [
    { yarn: 'light', colour: '#f0f0f0' },
    { yarn: 'dark', colour: '#202020' },
    { yarn: 'middle', colour: '#808080' },
  ];
  const inShort = (rows: number, of = yarns) =>
    gradientStripes(of, rows).map((stripe) => `${stripe.yarn} ${stripe.rows}`);

  it('are broad where there is no room for narrow ones', () => {
    expect(inShort(24)).toEqual(['dark 6', 'middle 6', 'light 6', 'middle 6']);
    // Even parts of 26 rows: up to 6, 12, 18 and 26.
    expect(inShort(26)).toEqual(['dark 6', 'middle 6', 'light 6', 'middle 8']);
  });

  it('meet in two narrow ones where there is', () => {
    // Four times eight rows are room enough; of 40 rows 4 · 4 are narrow.
    expect(inShort(40)).toEqual([
      'dark 6',
      'middle 2',
      'dark 2',
      'middle 6',
      'light 2',
      'middle 2',
      'light 6',
      'middle 2',
      'light 2',
      'middle 6',
      'dark 2',
      'middle 2',
    ]);
    expect(inShort(32)).toHaveLength(12);
    expect(inShort(30)).toHaveLength(4);
  });

  it('go round again where a stripe would be higher than a brief may have', () => {
    const long = gradientStripes(yarns, 168);
    expect(long.filter(({ yarn, rows }) => yarn === 'dark' && rows > 2)).toHaveLength(2);
    expect(long.reduce((sum, { rows }) => sum + rows, 0)).toBe(168);
    expect(gradientStripes(yarns, 160).filter(({ yarn, rows }) => yarn === 'dark' && rows > 2)).toHaveLength(
      1,
    );
  });

  it('of two yarns take turns', () => {
    expect(inShort(8, yarns.slice(0, 2))).toEqual(['dark 4', 'light 4']);
  });
});
