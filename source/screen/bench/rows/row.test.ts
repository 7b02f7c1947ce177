import { describe, expect, it } from 'vitest';
import { endingAt, placedFree, rowOf } from './row.ts';

const written = (width: number, column: number, end: string): string => {
  const placed = [
    { column, spans: [{ text: '^' }] },
    ...(end === '' ? [] : [endingAt(width, [{ text: end }])]),
  ];
  const free = placedFree(width, placed, [{ text: 'time' }]);
  const row = rowOf(
    width,
    [...placed, ...free].toSorted((a, b) => a.column - b.column),
  );
  return row.map(({ text }) => text).join('');
};

describe('what is placed where a row is free', () => {
  it.each([
    [2, 'row 3', '  ^            time  row 3'],
    [14, 'row 3', '        time  ^    row 3'],
    [2, '', '  ^                   time'],
  ])('a mark at %d and %j leave it %j', (column, end, row) => {
    expect(written(row.length, column, end)).toBe(row);
  });

  it('is left out where there is no room', () => {
    expect(written(9, 4, '')).toBe('    ^    ');
  });
});
