/** Lengths, weights and lists as a language writes them, in the units that the maker chose. Sums stay metric. */
import { hair } from '../shared/numbers.ts';
import {
  cmToInches,
  gramsToOunces,
  gsmToOuncesPerSquareYard,
  metresToYards,
  mmPerInch,
  type Units,
} from '../shared/units.ts';

/** How a language writes what is not a word. */
export interface Writing {
  readonly decimalMark: '.' | ',';
  readonly and: string;
  readonly or: string;
}

export interface Amounts {
  readonly units: Units;
  /** A number with the language's decimal mark, at most so many decimals: `19.2`, `19,2`. */
  readonly decimal: (value: number, decimals?: number) => string;
  /** A number with all its decimals: `1.30`, `1,30`. */
  readonly fixed: (value: number, decimals: number) => string;
  /** A size as it is measured: `14.3 cm`, `5.6 in`. */
  readonly length: (cm: number) => string;
  /** A length of which there must be enough: the next centimetre or half inch up. */
  readonly lengthNeeded: (cm: number) => string;
  /** A tail as it is cut: the next 5 cm or 2 inches up. */
  readonly tail: (cm: number) => string;
  /** Things below a finger's breadth: `4.8 mm`, `0.19 in`. */
  readonly small: (mm: number) => string;
  /** What the scales show, to 1 g or 0.1 oz. */
  readonly mass: (grams: number) => string;
  /** What is needed: up to the next 1 g or 0.1 oz. */
  readonly massNeeded: (grams: number) => string;
  /** Yarn that is needed: up to the next metre or yard. */
  readonly yarnNeeded: (metres: number) => string;
  /** The bare number of grams to the square metre, or of ounces to the square yard. */
  readonly fabricMass: (gsm: number) => string;
  /** What is only guessed at: to 5 minutes, and below 10 to one. */
  readonly time: (seconds: number) => string;
  /** `a, b and c`. */
  readonly list: (items: readonly string[]) => string;
  /** `a, b or c`. */
  readonly choice: (items: readonly string[]) => string;
}

/** Rounding errors do not push a number over to the next step. */
const roundUp = (value: number, step: number): number => Math.ceil(value / step - hair) * step;

function join(items: readonly string[], last: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

export function amountsIn(writing: Writing, units: Units): Amounts {
  const decimal = (value: number, decimals = 2): string =>
    String(Number(value.toFixed(decimals))).replace('.', writing.decimalMark);
  const isCm = units.length === 'cm';
  const isGrams = units.mass === 'g';
  return {
    units,
    decimal,
    fixed: (value, decimals) => value.toFixed(decimals).replace('.', writing.decimalMark),
    length: (cm) => (isCm ? `${decimal(cm, 1)} cm` : `${decimal(cmToInches(cm), 1)} in`),
    lengthNeeded: (cm) => (isCm ? `${roundUp(cm, 1)} cm` : `${decimal(roundUp(cmToInches(cm), 0.5), 1)} in`),
    tail: (cm) => (isCm ? `${roundUp(cm, 5)} cm` : `${roundUp(cmToInches(cm), 2)} in`),
    small: (mm) => (isCm ? `${decimal(mm, 1)} mm` : `${decimal(mm / mmPerInch, 2)} in`),
    mass: (grams) => (isGrams ? `${Math.round(grams)} g` : `${decimal(gramsToOunces(grams), 1)} oz`),
    massNeeded: (grams) =>
      isGrams ? `${roundUp(grams, 1)} g` : `${decimal(roundUp(gramsToOunces(grams), 0.1), 1)} oz`,
    yarnNeeded: (metres) =>
      units.yarn === 'm' ? `${roundUp(metres, 1)} m` : `${roundUp(metresToYards(metres), 1)} yd`,
    fabricMass: (gsm) => (isGrams ? String(Math.round(gsm)) : decimal(gsmToOuncesPerSquareYard(gsm), 1)),
    time: (seconds) => {
      const minutes = seconds < 600 ? Math.ceil(seconds / 60) : Math.round(seconds / 300) * 5;
      const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
      return [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 || hours === 0 ? [`${rest} min`] : [])].join(
        ' ',
      );
    },
    list: (items) => join(items, writing.and),
    choice: (items) => join(items, writing.or),
  };
}
