/** Units against their definitions and against a units library (mathjs). */

import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  cmToInches,
  gramsPerOunce,
  gramsToOunces,
  gsmToOuncesPerSquareYard,
  imperial,
  metresPerYard,
  metresToYards,
  mmPerInch,
} from '../../source/shared/units.ts';
import { englishWords, inEnglish, wordsIn } from '../../source/wording/words.ts';

const amount = fc.double({ min: 0.001, max: 1e6, noNaN: true });

describe('units', () => {
  // International yard and pound agreement of 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg; 36 inches and 16 ounces.
  it('have the exact factors of the 1959 agreement', () => {
    expect(mmPerInch).toBe(25.4);
    expect(metresPerYard).toBe(0.9144);
    expect(gramsPerOunce).toBe(28.349523125);
    expect(mmPerInch * 36).toBeCloseTo(914.4, 9);
    expect(gramsPerOunce * 16).toBeCloseTo(453.59237, 9);
  });

  it.each([
    ['cm', 'inch', cmToInches],
    ['m', 'yard', metresToYards],
    ['g', 'ounce', gramsToOunces],
  ] as const)('turn %s into %s as a units library does', (from, to, convert) => {
    fc.assert(
      fc.property(amount, (value) => {
        expect(convert(value) / unit(value, from).toNumber(to)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('the weight of a fabric', () => {
  it('turns into ounces to the square yard as a units library does', () => {
    fc.assert(
      fc.property(amount, (gsm) => {
        const library = unit(gsm, 'g/m^2').toNumber('oz/yard^2');
        expect(gsmToOuncesPerSquareYard(gsm) / library).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('an amount on the page', () => {
  it.each([
    [englishWords.amounts.length(14.25), '14.3 cm'],
    [englishWords.amounts.length(14), '14 cm'],
    [wordsIn(inEnglish, imperial).amounts.length(14), '5.5 in'],
    [englishWords.amounts.lengthNeeded(86.2), '87 cm'],
    [wordsIn(inEnglish, imperial).amounts.lengthNeeded(86.2), '34 in'],
    [englishWords.amounts.tail(130.1), '135 cm'],
    [englishWords.amounts.tail(135), '135 cm'],
    [wordsIn(inEnglish, imperial).amounts.tail(135), '54 in'],
    [englishWords.amounts.small(4.8), '4.8 mm'],
    [wordsIn(inEnglish, imperial).amounts.small(4.8), '0.19 in'],
    [englishWords.amounts.mass(60.4), '60 g'],
    [wordsIn(inEnglish, imperial).amounts.mass(60.4), '2.1 oz'],
    [englishWords.amounts.massNeeded(13.1), '14 g'],
    [wordsIn(inEnglish, imperial).amounts.massNeeded(13.1), '0.5 oz'],
    [englishWords.amounts.yarnNeeded(26.01), '27 m'],
    [wordsIn(inEnglish, imperial).amounts.yarnNeeded(26.01), '29 yd'],
    [englishWords.amounts.yarnNeeded(100), '100 m'],
  ])('%s', (shown, expected) => {
    expect(shown).toBe(expected);
  });

  it('is never less than what is needed', () => {
    fc.assert(
      fc.property(amount, (value) => {
        const read = (text: string): number => Number.parseFloat(text);
        expect(read(englishWords.amounts.tail(value))).toBeGreaterThanOrEqual(value - 1e-6);
        expect(read(wordsIn(inEnglish, imperial).amounts.tail(value)) * 2.54).toBeGreaterThanOrEqual(
          value - 1e-6,
        );
        expect(read(wordsIn(inEnglish, imperial).amounts.yarnNeeded(value)) * 0.9144).toBeGreaterThanOrEqual(
          value - 1e-6,
        );
        expect(
          read(wordsIn(inEnglish, imperial).amounts.massNeeded(value)) * 28.349523125,
        ).toBeGreaterThanOrEqual(value - 1e-6);
      }),
    );
  });
});
