import { formatDecimal, say } from './say.ts';

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

/** Rounding errors do not push a number over to the next step. */
const hair = 1e-9;
const roundUp = (value: number, step: number): number => Math.ceil(value / step - hair) * step;
const show = (value: number, decimals: number): string =>
  formatDecimal(
    value
      .toFixed(decimals)
      .replace(/(\.\d*?)0+$/, '$1')
      .replace(/\.$/, ''),
  );

/** A size as it is measured: `14.3 cm`, `5.6 in`. */
export const formatLength = (cm: number, { length }: Units): string =>
  length === 'cm' ? `${show(cm, 1)} cm` : `${show(cmToInches(cm), 1)} in`;

export const formatCm = (cm: number): string => formatLength(cm, metric);

/** A length of which there must be enough: the next centimetre or half inch up. */
export const formatLengthNeeded = (cm: number, { length }: Units): string =>
  length === 'cm' ? `${roundUp(cm, 1)} cm` : `${show(roundUp(cmToInches(cm), 0.5), 1)} in`;

/** A tail as it is cut: the next 5 cm or 2 inches up. */
export const formatTail = (cm: number, { length }: Units): string =>
  length === 'cm' ? `${roundUp(cm, 5)} cm` : `${roundUp(cmToInches(cm), 2)} in`;

/** The width of a stitch and other things below a finger's breadth: `4.8 mm`, `0.19 in`. */
export const formatSmall = (mm: number, { length }: Units): string =>
  length === 'cm' ? `${show(mm, 1)} mm` : `${show(mm / mmPerInch, 2)} in`;

/** An amount as the scales show it: to 1 g or 0.1 oz. */
export const formatMass = (grams: number, { mass }: Units): string =>
  mass === 'g' ? `${Math.round(grams)} g` : `${show(gramsToOunces(grams), 1)} oz`;

/** An amount that is needed: up to the next 1 g or 0.1 oz. */
export const formatMassNeeded = (grams: number, { mass }: Units): string =>
  mass === 'g' ? `${roundUp(grams, 1)} g` : `${show(roundUp(gramsToOunces(grams), 0.1), 1)} oz`;

/** Yarn that is needed: up to the next metre or yard. */
export const formatYarnNeeded = (metres: number, { yarn }: Units): string =>
  yarn === 'm' ? `${roundUp(metres, 1)} m` : `${roundUp(metresToYards(metres), 1)} yd`;

export const gsmToOuncesPerSquareYard = (gsm: number): number => gramsToOunces(gsm) * metresPerYard ** 2;

/** What a fabric weighs: `326 g to the square metre`, `9.6 oz to the square yard`. */
export const formatFabricMass = (gsm: number, { mass }: Units): string =>
  mass === 'g'
    ? say`${Math.round(gsm)} g to the square metre`
    : say`${show(gsmToOuncesPerSquareYard(gsm), 1)} oz to the square yard`;
