/** Numbers with their units in a line that a maker types: `14 by 18 cm`, `40 stitches over 7 1/2 in`, `19,2`. */
import { metresPerYard, mmPerInch } from '../../shared/units.ts';

export type Unit = 'mm' | 'cm' | 'in' | 'm' | 'yd' | 'g' | 'oz' | 'stitches' | 'rows' | 'needles';

export interface Amount<Known extends Unit = Unit> {
  readonly value: number;
  /** Null where none was typed: the maker's own units are meant. */
  readonly unit: Known | null;
}

interface AmountsRead {
  readonly amounts: readonly Amount[];
  /** All that is neither a number nor a unit, in lower case. */
  readonly others: readonly string[];
}

/** As makers write them, in English and German. */
const unitWords: Readonly<Record<Unit, readonly string[]>> = {
  mm: ['mm'],
  cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters', 'zentimeter'],
  in: ['in', 'inch', 'inches', 'zoll', '"', '″'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  g: ['g', 'gram', 'grams', 'gramm'],
  oz: ['oz', 'ounce', 'ounces', 'unze', 'unzen'],
  stitches: ['st', 'sts', 'stitch', 'stitches', 'masche', 'maschen'],
  rows: ['row', 'rows', 'reihe', 'reihen'],
  needles: ['needle', 'needles', 'nadel', 'nadeln'],
};

const units: ReadonlyMap<string, Unit> = new Map(
  (Object.keys(unitWords) as Unit[]).flatMap((unit) => unitWords[unit].map((word) => [word, unit] as const)),
);

export const unitOf = (word: string): Unit | null => units.get(word.toLowerCase()) ?? null;

/** A whole or decimal number, either mark; a fraction may follow, or stand alone: `7 1/2`. */
export const numberPattern = String.raw`\d+(?:\s+\d+\/\d+|\/\d+|[.,]\d+)?`;

/** An amount below nothing, which is none of ours; between two numbers the sign is a dash. */
export const negative = /(?<=^|\s)[-−]\d[\d.,]*/u;

const token = new RegExp(
  String.raw`(${numberPattern})|(${negative.source}|\p{L}+|["″]|[^\s\p{L}\d,;:.()×*&-]+)`,
  'gu',
);

export function readAmounts(line: string): AmountsRead {
  const amounts: Amount[] = [];
  const others: string[] = [];
  let mayHaveUnit = false;
  for (const [, number, other = ''] of withFractions(line).matchAll(token)) {
    const unit = mayHaveUnit ? unitOf(other) : null;
    const last = amounts.at(-1);
    if (number !== undefined) amounts.push({ value: numberIn(number), unit: null });
    else if (unit !== null && last) amounts.splice(-1, 1, { ...last, unit });
    else others.push(other.toLowerCase());
    mayHaveUnit = number !== undefined;
  }
  return { amounts, others };
}

const fractions: readonly (readonly [sign: RegExp, written: string])[] = [
  [/½/g, ' 1/2'],
  [/¼/g, ' 1/4'],
  [/¾/g, ' 3/4'],
];

const withFractions = (line: string): string =>
  fractions.reduce((text, [sign, written]) => text.replace(sign, written), line);

/** The number in a text that fits `numberPattern`. */
export function numberIn(text: string): number {
  const [whole = '', fraction] = text.trim().split(/\s+/);
  return fraction === undefined ? simpleNumber(whole) : simpleNumber(whole) + simpleNumber(fraction);
}

function simpleNumber(text: string): number {
  const [over = '', under] = text.split('/');
  return under === undefined ? Number(over.replace(',', '.')) : Number(over) / Number(under);
}

const cmPer = { mm: 0.1, cm: 1, in: mmPerInch / 10, m: 100, yd: metresPerYard * 100 };

export const isLength = (unit: Unit | null): unit is keyof typeof cmPer => unit !== null && unit in cmPer;

/** To a hundredth of a centimetre, as it is to stand in the brief. */
export const toCm = (value: number, unit: keyof typeof cmPer): number =>
  Math.round(value * cmPer[unit] * 100) / 100;
