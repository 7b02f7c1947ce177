/** Units against their definitions and against a units library (mathjs). */
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  cmToInches,
  formatLength,
  formatLengthNeeded,
  formatMass,
  formatMassNeeded,
  formatSmall,
  formatTail,
  formatYarnNeeded,
  gramsPerOunce,
  gramsToOunces,
  gsmToOuncesPerSquareYard,
  imperial,
  metresPerYard,
  metresToYards,
  metric,
  mmPerInch,
} from '../../source/shared/units.ts';

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
    [formatLength(14.25, metric), '14.3 cm'],
    [formatLength(14, metric), '14 cm'],
    [formatLength(14, imperial), '5.5 in'],
    [formatLengthNeeded(86.2, metric), '87 cm'],
    [formatLengthNeeded(86.2, imperial), '34 in'],
    [formatTail(130.1, metric), '135 cm'],
    [formatTail(135, metric), '135 cm'],
    [formatTail(135, imperial), '54 in'],
    [formatSmall(4.8, metric), '4.8 mm'],
    [formatSmall(4.8, imperial), '0.19 in'],
    [formatMass(60.4, metric), '60 g'],
    [formatMass(60.4, imperial), '2.1 oz'],
    [formatMassNeeded(13.1, metric), '14 g'],
    [formatMassNeeded(13.1, imperial), '0.5 oz'],
    [formatYarnNeeded(26.01, metric), '27 m'],
    [formatYarnNeeded(26.01, imperial), '29 yd'],
    [formatYarnNeeded(100, metric), '100 m'],
  ])('%s', (shown, expected) => {
    expect(shown).toBe(expected);
  });

  it('is never less than what is needed', () => {
    fc.assert(
      fc.property(amount, (value) => {
        const read = (text: string): number => Number.parseFloat(text);
        expect(read(formatTail(value, metric))).toBeGreaterThanOrEqual(value - 1e-6);
        expect(read(formatTail(value, imperial)) * 2.54).toBeGreaterThanOrEqual(value - 1e-6);
        expect(read(formatYarnNeeded(value, imperial)) * 0.9144).toBeGreaterThanOrEqual(value - 1e-6);
        expect(read(formatMassNeeded(value, imperial)) * 28.349523125).toBeGreaterThanOrEqual(value - 1e-6);
      }),
    );
  });
});
