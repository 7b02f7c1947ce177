/** What the fields of a brief mean: their units, and what to write where one is missing. */
import type { Words } from '../../wording/words.ts';

const lastKey = (field: string): string => /[^.]*$/.exec(field)?.[0] ?? '';

/** An amount of what the field counts or measures: `10 needles`, `2 mm`, `1 stitch`. */
export function amountOf(field: string, amount: number, words: Words): string {
  const key = lastKey(field);
  if (key === 'roundsPer10Cm') return words.count(amount, 'round');
  if (/needles$/i.test(key)) return words.count(amount, 'needle');
  if (/stitches$/i.test(key)) return words.count(amount, 'stitch', 'stitches');
  if (/rows$/i.test(key)) return words.count(amount, 'row');
  const unit = units.find(([ending]) => key.endsWith(ending))?.[1];
  return unit ? `${amount} ${unit}` : String(amount);
}

const units: readonly (readonly [ending: string, unit: string])[] = [
  ['Mm', 'mm'],
  ['Cm', 'cm'],
  ['In', 'in'],
  ['Percent', '%'],
  ['metresPer100g', 'm'],
  ['grams', 'g'],
];

/** What to write where a field is missing; null where the name says it all. */
export const toWrite = (field: string, words: Words): string | null =>
  contents.get(lastKey(field))?.(words) ?? null;

const contents: ReadonlyMap<string, (words: Words) => string> = new Map([
  ['name', (words: Words) => words.say`what the bag is called`],
  ['bed', (words: Words) => words.say`needles and pitchMm of your bed`],
  ['needles', (words: Words) => words.say`how many needles the bed has`],
  ['pitchMm', (words: Words) => words.say`the distance from needle to needle in mm`],
  ['swatch', (words: Words) => words.say`its stitches, rows, widthCm and heightCm`],
  ['stitches', (words: Words) => words.say`how many stitches`],
  ['rows', (words: Words) => words.say`how many rows`],
  ['widthCm', (words: Words) => words.say`the width in cm`],
  ['heightCm', (words: Words) => words.say`the height in cm`],
  ['bag', (words: Words) => words.say`widthCm and depthCm, or contents, or stitches and rows`],
  ['depthCm', (words: Words) => words.say`the depth in cm`],
  ['girthCm', (words: Words) => words.say`the girth of what goes in, in cm`],
  ['yarns', (words: Words) => words.say`each yarn by name, with its colour and metresPer100g`],
  ['colour', (words: Words) => words.say`a colour such as "#6b2d5c"`],
  ['metresPer100g', (words: Words) => words.say`how many metres weigh 100 g`],
  ['stripes', (words: Words) => words.say`one repeat, each stripe with its yarn and rows`],
  ['yarn', (words: Words) => words.say`the name of one of the yarns`],
]);
