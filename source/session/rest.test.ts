import { expect, it } from 'vitest';
import { isRestDue, pressed, type Spell } from './rest.ts';

const minutes = (count: number): number => count * 60_000;
const workedAt = (...atMs: readonly number[]): Spell | null =>
  atMs.reduce<Spell | null>((spell, at) => pressed(spell, at), null);
const isDueAfter = (...atMs: readonly number[]): boolean => {
  const spell = workedAt(...atMs);
  return spell !== null && isRestDue(spell);
};
/** A press every four minutes. */
const presses = (from: number, through: number): readonly number[] =>
  Array.from({ length: Math.floor((through - from) / minutes(4)) + 1 }, (_, i) => from + i * minutes(4));

it('is due at the first press after half an hour of work', () => {
  expect(isDueAfter(0)).toBe(false);
  expect(isDueAfter(...presses(0, minutes(28)), minutes(30) - 1)).toBe(false);
  expect(isDueAfter(...presses(0, minutes(28)), minutes(30))).toBe(true);
});

it('counts again after more than five minutes without a press', () => {
  const before = presses(0, minutes(24));
  expect(isDueAfter(...before, minutes(29), minutes(30))).toBe(true);
  expect(isDueAfter(...before, minutes(29) + 1, minutes(30) + 1)).toBe(false);
});

it('counts again when the clock was set back', () => {
  const before = presses(0, minutes(28));
  expect(isDueAfter(...before, ...presses(minutes(10), minutes(38)))).toBe(false);
  expect(isDueAfter(...before, ...presses(minutes(10), minutes(38)), minutes(40))).toBe(true);
});

it('counts on where two presses come at once', () => {
  expect(isDueAfter(...presses(0, minutes(28)), minutes(28), minutes(30))).toBe(true);
});
