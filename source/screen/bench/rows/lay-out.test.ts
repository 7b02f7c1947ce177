import { describe, expect, it } from 'vitest';
import { type Layout, layOutBench } from './lay-out.ts';

const windows = [
  [40, 12],
  [40, 20],
  [60, 16],
  [80, 18],
  [80, 21],
  [100, 26],
  [120, 36],
  [200, 46],
] as const;
const sizes = windows.flatMap(([columns, room]) => [true, false].map((large) => ({ columns, room, large })));

const withWords = (rows: number) => ({ words: () => rows });

const pieces = ({ phases, band, closeUp, ruler, bed, words }: Layout) =>
  [phases, band, closeUp, ruler, bed, words].filter((piece) => piece !== null);

describe.each(sizes)('$columns columns, room for $room rows, large view $large', (window) => {
  it('keeps the band on its row, however long the words are', () => {
    const { band, phases } = layOutBench(withWords(1), window);
    for (let rows = 2; rows <= 12; rows++) {
      expect(layOutBench(withWords(rows), window)).toMatchObject({ band, phases });
    }
  });

  it('has one height, and each piece below the one before', () => {
    for (let rows = 1; rows <= 12; rows++) {
      const layout = layOutBench(withWords(rows), window);
      expect(layout.height).toBe(layOutBench(withWords(1), window).height);
      let end = 0;
      for (const piece of pieces(layout)) {
        expect(piece.row).toBeGreaterThanOrEqual(end);
        end = piece.row + piece.height;
      }
      expect(end).toBe(layout.height);
      expect(layout.height).toBeLessThanOrEqual(window.room);
    }
  });

  it('gives the words all the rows they need, as long as the window has them', () => {
    for (let rows = 1; rows <= 12; rows++) {
      const { words, band, height } = layOutBench(withWords(rows), window);
      expect(words.height).toBeGreaterThanOrEqual(Math.min(rows, height - band.row - band.height));
    }
  });
});

it('has room for everything in a window of 80 by 24', () => {
  const layout = layOutBench(withWords(3), { columns: 80, room: 18, large: false });
  expect(layout).toMatchObject({
    phases: { row: 0, height: 1 },
    band: { row: 1, height: 3 },
    closeUp: { height: 4 },
    ruler: { height: 2 },
    bed: { height: 1 },
  });
});

it('shows the strip at the right of a wide window alone', () => {
  expect(layOutBench(withWords(3), { columns: 100, room: 26, large: false }).strip).toBeNull();
  const wide = layOutBench(withWords(3), { columns: 120, room: 36, large: false });
  expect(wide.width + 2 + (wide.strip?.columns ?? 0)).toBe(120);
  expect(wide.width).toBeGreaterThanOrEqual(66);
});
