import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BedStrip } from '../../source/chat/view.ts';
import { bedCells } from '../../source/screen/bench/bed-cells.ts';

const strip = (needleCount: number, left: number | null, right: number | null): BedStrip => ({
  needleCount,
  left,
  right,
  leftName: null,
  rightName: null,
  yarn: 'mint',
  colour: null,
});

const drawn = (bed: BedStrip, width: number): string =>
  bedCells(bed, width)
    .map((run) => run.text)
    .join('');

describe('the bed in cells', () => {
  it.each([
    [strip(10, null, null), 12, '.....|.....'],
    [strip(10, 0, 3), 12, 'mmmm.|.....'],
    [strip(10, 4, 9), 12, '....m|mmmmm'],
    [strip(11, 4, 5), 13, '....m|m.....'],
    [strip(20, 6, 13), 12, '...mm|mm...'],
    [strip(20, 9, 9), 12, '....m|.....'],
  ])('shows each needle, or some together where there is no room', (bed, width, cells) => {
    expect(drawn(bed, width)).toBe(cells);
  });

  it('never outgrows its room, and shows loops exactly where the bed has them', () => {
    const beds = fc.record({
      needleCount: fc.integer({ min: 10, max: 400 }),
      a: fc.nat(399),
      b: fc.nat(399),
      width: fc.integer({ min: 20, max: 250 }),
    });
    fc.assert(
      fc.property(beds, ({ needleCount, a, b, width }) => {
        const [left = 0, right = 0] = [a % needleCount, b % needleCount].toSorted(
          (one, other) => one - other,
        );
        const text = drawn(strip(needleCount, left, right), width);
        expect(text.length).toBeLessThanOrEqual(width);
        expect(text).toMatch(/^\.*m+(\|?m+)*\|?\.*(\|\.*)?$|^\.*\|\.*m+\.*$/);
        const middle = Math.floor(needleCount / 2);
        expect(text.split('|')[0]?.includes('m')).toBe(left < middle);
        expect(text.split('|')[1]?.includes('m')).toBe(right >= middle);
      }),
    );
  });
});
