/**
 * What stands in a file, shown safely: short, on one line, without characters that steer a terminal. And what the fields of
 * a brief mean: their units, and what to write where one is missing.
 */
import type { Words } from './words.ts';

const mostCharacters = 40;
const unsafe = /[\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/g;

const escapeCharacter = (character: string): string =>
  `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

function shorten(text: string): string {
  const characters = Array.from(text);
  return characters.length <= mostCharacters ? text : `${characters.slice(0, mostCharacters - 1).join('')}…`;
}

/** A text in double quotes, escaped as JSON escapes it. */
export const quote = (text: string): string => JSON.stringify(shorten(text)).replace(unsafe, escapeCharacter);

/** A path in the file: each key in it is cut short if it is long. */
export const showField = (field: string): string =>
  field
    .split('.')
    .map((key) => shorten(key).replace(unsafe, escapeCharacter))
    .join('.');

/** A JSON value as a maker reads it; lists and groups are named, not shown. */
export function showValue(value: unknown, words: Words): string {
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'number' && !Number.isFinite(value)) return words.brief.values.tooLarge;
  if (Array.isArray(value)) return words.brief.values.list;
  return typeof value === 'object' && value !== null ? words.brief.values.group : String(value);
}

const lastKey = (field: string): string => /[^.]*$/.exec(field)?.[0] ?? '';

/** An amount of what the field counts or measures: `10 needles`, `2 mm`, `1 stitch`. */
export function amountOf(field: string, amount: number, words: Words): string {
  const key = lastKey(field);
  if (key === 'roundsPer10Cm') return words.plurals.round(amount);
  if (/needles$/i.test(key)) return words.plurals.needle(amount);
  if (/stitches$/i.test(key)) return words.plurals.stitch(amount);
  if (/rows$/i.test(key)) return words.plurals.row(amount);
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
export function toWrite(field: string, { brief: { fields } }: Words): string | null {
  const key = lastKey(field);
  return Object.hasOwn(fields, key) ? fields[key as keyof typeof fields] : null;
}
