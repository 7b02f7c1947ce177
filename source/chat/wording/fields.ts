/** What the fields of a brief mean: their units, and what to write where one is missing. */
import { count, say } from '../../shared/say.ts';

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
export const toWrite = (field: string): string | null => contents.get(lastKey(field))?.() ?? null;

const contents: ReadonlyMap<string, () => string> = new Map([
  ['name', () => say`what the bag is called`],
  ['bed', () => say`needles and pitchMm of your bed`],
  ['needles', () => say`how many needles the bed has`],
  ['pitchMm', () => say`the distance from needle to needle in mm`],
  ['swatch', () => say`its stitches, rows, widthCm and heightCm`],
  ['stitches', () => say`how many stitches`],
  ['rows', () => say`how many rows`],
  ['widthCm', () => say`the width in cm`],
  ['heightCm', () => say`the height in cm`],
  ['bag', () => say`widthCm and depthCm, or contents, or stitches and rows`],
  ['depthCm', () => say`the depth in cm`],
  ['girthCm', () => say`the girth of what goes in, in cm`],
  ['yarns', () => say`each yarn by name, with its colour and metresPer100g`],
  ['colour', () => say`a colour such as "#6b2d5c"`],
  ['metresPer100g', () => say`how many metres weigh 100 g`],
  ['stripes', () => say`one repeat, each stripe with its yarn and rows`],
  ['yarn', () => say`the name of one of the yarns`],
]);
