/**
 * Why a brief cannot be read. What stands in it is shown safely: short, on one line, without characters that steer a terminal;
 * and its fields are told with their units, and what to write where one is missing.
 */
import type { BriefFault } from '../planning/fault.ts';
import { nearest } from '../shared/nearest.ts';
import type { SayingsBy } from './by-kind.ts';
import type { Words } from './words.ts';

/** One sentence each, with the field, what it holds, and how to mend it. */
export const briefFaults: SayingsBy<'code', BriefFault, [words: Words]> = {
  'brief/empty': (_, words) => words.brief.empty,
  'brief/too-big': ({ characterCount, most }, words) => words.brief.tooBig(characterCount, most),
  'brief/not-json': ({ line, column, slip, found }, words) =>
    words.brief.notJson(line, column, words.brief.json[slip](shown(found, words))),
  'brief/unknown-key': (fault, words) => unknownKey(fault, words),
  'brief/missing': ({ field }, words) => missing(field, words),
  'brief/wrong-type': (fault, words) => wrongType(fault, words),
  'brief/not-whole': ({ field, value }, words) =>
    words.brief.notWhole(showField(field), showValue(value, words)),
  'brief/not-even': ({ field, value }, words) =>
    words.brief.notEven(showField(field), showValue(value, words)),
  'brief/too-small': ({ field, value, least }, words) =>
    words.brief.tooSmall(showField(field), showValue(value, words), amountOf(field, least, words)),
  'brief/too-large': ({ field, value, most }, words) =>
    words.brief.tooLarge(showField(field), showValue(value, words), amountOf(field, most, words)),
  'brief/too-short': ({ field }, words) => empty(field, words),
  'brief/too-long': ({ field, most }, words) =>
    words.brief.tooLong(showField(field), mostOf(field, most, words)),
  'brief/not-one-of': ({ field, value, choices: all }, words) =>
    words.brief.notOneOf(showField(field), showValue(value, words), choices(all, words)),
  'brief/not-a-colour': ({ field, value }, words) =>
    words.brief.notAColour(showField(field), showValue(value, words)),
  'brief/not-a-name': ({ field, value }, words) =>
    words.brief.notAName(showField(field), showValue(value, words)),
  'brief/no-size': (_, words) => words.brief.noSize(toWrite('bag', words) ?? ''),
  'brief/two-sizes': ({ keys }, words) => words.brief.twoSizes(keys, toWrite('bag', words) ?? ''),
  'brief/no-yarns': (_, words) => words.brief.noYarns(toWrite('yarns', words) ?? ''),
  'brief/not-on-shelf': ({ kind, name, known }, words) => words.shelf.notThere(kind, quote(name), known),
  'brief/unknown-yarn': (fault, words) => unknownYarn(fault, words),
  'brief/reserved-yarn': ({ yarn }, words) => words.brief.reservedYarn(quote(yarn)),
  'brief/waste-is-a-yarn': ({ yarn }, words) => words.brief.wasteIsAYarn(quote(yarn)),
  'brief/stripes-and-scraps': (_, words) => words.brief.stripesAndScraps,
  'brief/scrap-not-weighed': ({ yarn }, words) => words.brief.scrapNotWeighed(quote(yarn)),
  'brief/two-units': ({ field, other }, words) => words.brief.twoUnits(field, other),
  'brief/two-loop-lengths': (_, words) => words.brief.twoLoopLengths,
  'brief/stitch-impossible': (fault, words) => impossibleStitch(fault, words),
};

type FaultOf<C extends BriefFault['code']> = Extract<BriefFault, { readonly code: C }>;

function unknownKey({ field, key, known }: FaultOf<'brief/unknown-key'>, words: Words): string {
  const near = nearest(key, known);
  return near
    ? words.brief.unknownKeyBut(showField(field), near)
    : words.brief.unknownKey(showField(field), known);
}

function missing(field: string, words: Words): string {
  const content = toWrite(field, words);
  return words.brief.missing(showField(field), content ?? words.brief.missingThing);
}

const empty = (field: string, words: Words): string =>
  field === 'yarns.""'
    ? words.brief.yarnWithoutName
    : words.brief.emptyName(showField(field), toWrite(field, words) ?? words.brief.aName);

function wrongType({ field, expected, value }: FaultOf<'brief/wrong-type'>, words: Words): string {
  const where = field === '' ? words.brief.theBrief : showField(field);
  const kind = typeof value === 'string' ? words.brief.theText(quote(value)) : showValue(value, words);
  const numeric = expected === 'number' && typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value);
  return numeric
    ? words.brief.numberInQuotes(where, kind)
    : words.brief.wrongType(where, kind, words.brief.types[expected]);
}

const mostOf = (field: string, most: number, words: Words): string =>
  field === 'stripes' ? words.plurals.stripe(most) : words.plurals.character(most);

const choices = (all: readonly (string | number)[], words: Words): string =>
  words.amounts.choice(all.map((choice) => (typeof choice === 'string' ? quote(choice) : String(choice))));

function unknownYarn({ field, yarn, known }: FaultOf<'brief/unknown-yarn'>, words: Words): string {
  const near = nearest(yarn, known);
  const hint = near
    ? words.brief.didYouMean(quote(near))
    : words.brief.chooseYarn(aHandful(known.map(quote), words));
  return words.brief.notAYarn(showField(field), quote(yarn), hint);
}

const aHandful = (names: readonly string[], words: Words): readonly string[] =>
  names.length <= 6 ? names : [...names.slice(0, 5), words.brief.another];

function impossibleStitch({ what, sizeMm }: FaultOf<'brief/stitch-impossible'>, words: Words): string {
  const mm = Number(sizeMm.toPrecision(2));
  return what === 'wide' ? words.brief.stitchOutside(mm) : words.brief.rowOutside(mm);
}

/** Texts come with their quotes; everything is shortened and made safe. */
const shown = (found: string, words: Words): string => {
  if (found === ',') return words.brief.thisComma;
  if (found === ':') return words.brief.thisColon;
  const inside = found.startsWith('"') && found.length > 1 ? found.slice(1, -1) : null;
  return inside === null ? quote(found).slice(1, -1) : quote(inside);
};

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
