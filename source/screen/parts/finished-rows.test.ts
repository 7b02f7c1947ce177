import { expect, it } from 'vitest';
import { putIn, standIn } from './screen-output.ts';

it('puts a row in place of its character and of the blanks that kept its cells free', () => {
  const row = '\x1b[1mDice bag\x1b[0m';
  expect(putIn(`${standIn(row)}${' '.repeat(9)}beside`)).toBe(`${row}  beside`);
  expect(putIn(`${standIn(row)}\nbelow`)).toBe(`${row}\nbelow`);
});

it('has one character for one row, and tells as many apart as any window has', () => {
  const texts = Array.from({ length: 500 }, (_, i) => `row ${i}`);
  const characters = texts.map(standIn);
  expect(new Set(characters).size).toBe(500);
  expect(characters.map(putIn)).toEqual(texts);
  expect(texts.map(standIn)).toEqual(characters);
});

it('goes on when more rows were drawn than it keeps', () => {
  for (let i = 0; i < 5000; i++) expect(putIn(standIn(`press ${i}`))).toBe(`press ${i}`);
});

it('leaves all other text as it is', () => {
  const text = 'Würfelbeutel ● \ue000 🧶';
  expect(putIn(text)).toBe(text);
});
