/**
 * Exact by definition: the international inch and yard (25.4 mm, 0.9144 m; 1959 agreement) and the
 * avoirdupois ounce (28.349523125 g).
 */
export const mmPerInch = 25.4;
export const metresPerYard = 0.9144;
export const gramsPerOunce = 28.349523125;

/** What the maker reads; everything is kept in metric units and converted when it is shown. */
export interface Units {
  readonly length: 'cm' | 'in';
  readonly mass: 'g' | 'oz';
  readonly yarn: 'm' | 'yd';
}

export const metric: Units = { length: 'cm', mass: 'g', yarn: 'm' };
export const imperial: Units = { length: 'in', mass: 'oz', yarn: 'yd' };

/** All units that go with a length in centimetres or inches. */
export const unitsFor = (length: Units['length']): Units => (length === 'cm' ? metric : imperial);

export const cmToInches = (cm: number): number => (cm * 10) / mmPerInch;
export const metresToYards = (metres: number): number => metres / metresPerYard;
export const gramsToOunces = (grams: number): number => grams / gramsPerOunce;

export const gsmToOuncesPerSquareYard = (gsm: number): number => gramsToOunces(gsm) * metresPerYard ** 2;
