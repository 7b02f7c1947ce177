/** What the fields of a brief mean: their units, and what to write where one is missing. */
import { count } from './numbers.ts';

const lastKey = (field: string): string => /[^.]*$/.exec(field)?.[0] ?? '';

/** An amount of what the field counts or measures: `10 needles`, `2 mm`, `1 stitch`. */
export function amountOf(field: string, amount: number): string {
  const key = lastKey(field);
  if (key === 'roundsPer10Cm') return count(amount, 'round');
  if (/needles$/i.test(key)) return count(amount, 'needle');
  if (/stitches$/i.test(key)) return count(amount, 'stitch', 'stitches');
  if (/rows$/i.test(key)) return count(amount, 'row');
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
export const toWrite = (field: string): string | null => contents.get(lastKey(field)) ?? null;

const contents: ReadonlyMap<string, string> = new Map([
  ['name', 'what the bag is called'],
  ['bed', 'needles and pitchMm of your bed'],
  ['needles', 'how many needles the bed has'],
  ['pitchMm', 'the distance from needle to needle in mm'],
  ['swatch', 'its stitches, rows, widthCm and heightCm'],
  ['stitches', 'how many stitches'],
  ['rows', 'how many rows'],
  ['widthCm', 'the width in cm'],
  ['heightCm', 'the height in cm'],
  ['bag', 'widthCm and depthCm, or contents, or stitches and rows'],
  ['depthCm', 'the depth in cm'],
  ['girthCm', 'the girth of what goes in, in cm'],
  ['yarns', 'each yarn by name, with its colour and metresPer100g'],
  ['colour', 'a colour such as "#6b2d5c"'],
  ['metresPer100g', 'how many metres weigh 100 g'],
  ['stripes', 'one repeat, each stripe with its yarn and rows'],
  ['yarn', 'the name of one of the yarns'],
]);
