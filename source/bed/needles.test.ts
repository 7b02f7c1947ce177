import { describe, expect, it } from 'vitest';
import { formatNeedle, formatNeedles, parseNeedle } from './needles.ts';

const names = (needleCount: number): readonly string[] => formatNeedles(needleCount, 0, needleCount - 1);

describe('needle names', () => {
  it('count outward from the middle, without a needle 0', () => {
    expect(names(6)).toEqual(['L3', 'L2', 'L1', 'R1', 'R2', 'R3']);
  });

  it('are those of a part of the bed', () => {
    expect(formatNeedles(6, 2, 4)).toEqual(['L1', 'R1', 'R2']);
  });

  it('give the extra needle of an odd bed to the right', () => {
    expect(names(5)).toEqual(['L2', 'L1', 'R1', 'R2', 'R3']);
    expect(names(1)).toEqual(['R1']);
  });

  it('name the ends of the usual beds', () => {
    const ends = [250, 200, 150, 140, 100, 112].map((count) => [names(count)[0], names(count).at(-1)]);
    expect(ends).toEqual([
      ['L125', 'R125'],
      ['L100', 'R100'],
      ['L75', 'R75'],
      ['L70', 'R70'],
      ['L50', 'R50'],
      ['L56', 'R56'],
    ]);
  });

  it.each([10, 11, 150, 151, 400])('lead back to their places on a bed of %i', (needleCount) => {
    for (let place = 0; place < needleCount; place++) {
      expect(parseNeedle(needleCount, formatNeedle(needleCount, place))).toBe(place);
    }
    expect(new Set(names(needleCount)).size).toBe(needleCount);
  });

  it('are read in small letters too', () => {
    expect(parseNeedle(10, 'r1')).toBe(5);
    expect(parseNeedle(10, 'l1')).toBe(4);
  });

  it.each(['L0', 'R0', 'L6', 'R6', 'R01', 'X1', '1', 'R', '', ' R1', 'R1 ', 'R-1', 'R1.5', 'LR1', 'R99999'])(
    'do not exist on a bed of 10: %j',
    (name) => {
      expect(parseNeedle(10, name)).toBeNull();
    },
  );

  it('reach one further to the right than to the left on an odd bed', () => {
    expect(parseNeedle(11, 'R6')).toBe(10);
    expect(parseNeedle(11, 'L6')).toBeNull();
  });
});
