import { describe, expect, it } from 'vitest';
import { bigHeight, bigLetterNames, bigSquares, squareOf } from './band-letters.ts';

const squaresThatDiffer = (one: readonly string[], other: readonly string[]): number => {
  const width = Math.max(one[0]?.length ?? 0, other[0]?.length ?? 0);
  return one.reduce((sum, row, y) => {
    const [a, b] = [row.padEnd(width, '.'), (other[y] ?? '').padEnd(width, '.')];
    return sum + [...a].filter((square, x) => square !== b[x]).length;
  }, 0);
};

describe('big letters', () => {
  const pictures = bigLetterNames.map((letter) => bigSquares(letter) ?? []);

  it('are five rows of one width each', () => {
    for (const picture of pictures) {
      expect(picture).toHaveLength(bigHeight);
      expect(new Set(picture.map((row) => row.length)).size).toBe(1);
    }
  });

  it('never read as one another: two squares differ at the least', () => {
    for (const [i, one] of pictures.entries()) {
      for (const other of pictures.slice(i + 1)) {
        expect(
          squaresThatDiffer(one, other),
          `${one.join('\n')}\n\n${other.join('\n')}`,
        ).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it('are drawn as they read', () => {
    expect(bigSquares('Hi')).toEqual(['#..#.###', '#..#..#.', '####..#.', '#..#..#.', '#..#.###']);
  });

  it('are none where a letter has no picture', () => {
    expect(bigSquares('ŝuo')).toBeNull();
  });
});

/**
 * A laptop's screen of 13.3 inches, 16 to 10, is 179 mm high; a window of 24 rows that fills it has rows of 7.5 mm.
 * ISO 9241-303 asks for letters of 16 minutes of arc at the least and prefers 20 to 22 (from memory).
 */
it('are as high from three metres as the standard for screens prefers', () => {
  const screenMm = 13.3 * 25.4 * (10 / Math.hypot(16, 10));
  const letterMm = (screenMm / 24) * squareOf(1).rows * bigHeight;
  const minutes = (Math.atan(letterMm / 3000) * 180 * 60) / Math.PI;
  expect(minutes).toBeGreaterThan(22);
  expect(minutes).toBeCloseTo(42.7, 1);
});
