import { expect, it } from 'vitest';
import { instantOf } from './numbers.ts';

it('is as Date writes it', () => {
  expect(instantOf(Date.UTC(2031, 2, 4, 18))).toBe('2031-03-04T18:00:00.000Z');
});

it.each([
  [Date.UTC(10_000, 0), '9999-12-31T23:59:59.999Z'],
  [9e15, '9999-12-31T23:59:59.999Z'],
  [-9e15, '0000-01-01T00:00:00.000Z'],
  [Number.NaN, '1970-01-01T00:00:00.000Z'],
])('of %d is the nearest that has four digits for its year', (ms, instant) => {
  expect(instantOf(ms)).toBe(instant);
});
