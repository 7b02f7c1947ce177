import type { BriefFault, JsonKind } from '../../planning/fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { nearest } from '../nearest.ts';
import { amountOf, toWrite } from './fields.ts';
import { mendJson } from './json-faults.ts';
import { quote, showField, showValue } from './values.ts';

/** Why a brief cannot be read: one sentence with the field, what it holds, and how to mend it. */
export function formatBriefFault(fault: BriefFault, words: Words): string {
  switch (fault.code) {
    case 'brief/empty':
      return words.say`The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.`;
    case 'brief/too-big':
      return words.say`The file has ${fault.characterCount} characters, and a brief at most ${fault.most}: look whether it is the right file.`;
    case 'brief/not-json':
      return words.say`The brief cannot be read at line ${fault.line}, column ${fault.column}: ${mendJson(fault.slip, fault.found, words)}`;
    case 'brief/unknown-key':
      return unknownKey(fault, words);
    case 'brief/missing':
      return missing(fault.field, words);
    case 'brief/wrong-type':
      return wrongType(fault, words);
    case 'brief/not-whole':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: give a whole number.`;
    case 'brief/not-even':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: give an even number, so that the yarn ends on the home side.`;
    case 'brief/too-small':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: give at least ${amountOf(fault.field, fault.least, words)}.`;
    case 'brief/too-large':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: give at most ${amountOf(fault.field, fault.most, words)}.`;
    case 'brief/too-short':
      return empty(fault.field, words);
    case 'brief/too-long':
      return words.say`${showField(fault.field)} is too long: ${mostOf(fault.field, fault.most, words)} at most.`;
    case 'brief/not-one-of':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: choose ${choices(fault.choices, words)}.`;
    case 'brief/not-a-colour':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: write # and six digits of 0-9 and a-f, such as "#6b2d5c".`;
    case 'brief/not-a-name':
      return words.say`${showField(fault.field)} is ${showValue(fault.value, words)}: write a name on one line, with no spaces at its ends.`;
    case 'brief/no-size':
      return words.say`bag is empty: give ${toWrite('bag', words) ?? ''}.`;
    case 'brief/two-sizes':
      return words.say`bag has ${words.amounts.list(fault.keys)}, which do not go together: keep ${toWrite('bag', words) ?? ''}.`;
    case 'brief/no-yarns':
      return words.say`yarns is empty: give ${toWrite('yarns', words) ?? ''}.`;
    case 'brief/unknown-yarn':
      return unknownYarn(fault, words);
    case 'brief/reserved-yarn':
      return words.say`No yarn can be called ${quote(fault.yarn)}, a name that is kept for other use: give it another name.`;
    case 'brief/waste-is-a-yarn':
      return words.say`waste.yarn is ${quote(fault.yarn)}, a yarn of the bag: give the waste yarn a name of its own.`;
    case 'brief/stripes-and-scraps':
      return words.say`stripes and scraps are both given: keep stripes for a repeat, or scraps for leftovers.`;
    case 'brief/scrap-not-weighed':
      return words.say`The yarn ${quote(fault.yarn)} has no grams: weigh each scrap, so that no stripe runs short.`;
    case 'brief/two-units':
      return words.say`${fault.field} and ${fault.other} are both given: keep one of them.`;
    case 'brief/two-loop-lengths':
      return words.say`swatch.loopLengthMm and swatch.rowYarnCm are both given: keep one of them.`;
    case 'brief/stitch-impossible':
      return impossibleStitch(fault, words);
    default:
      return exhaustive(fault);
  }
}

type FaultOf<C extends BriefFault['code']> = Extract<BriefFault, { readonly code: C }>;

function unknownKey({ field, key, known }: FaultOf<'brief/unknown-key'>, words: Words): string {
  const near = nearest(key, known);
  return near
    ? words.say`A brief has no ${showField(field)}: did you mean ${near}?`
    : words.say`A brief has no ${showField(field)}: take it out, or use ${words.amounts.choice(known)}.`;
}

function missing(field: string, words: Words): string {
  const content = toWrite(field, words);
  return words.say`${showField(field)} is missing: add ${content ?? words.say`it`}.`;
}

const empty = (field: string, words: Words): string =>
  field === 'yarns.""'
    ? words.say`A yarn has no name: write one before the colon.`
    : words.say`${showField(field)} is empty: write ${toWrite(field, words) ?? words.say`a name`}.`;

const kinds: Readonly<Record<JsonKind, (words: Words) => string>> = {
  number: (words: Words) => words.say`a number`,
  text: (words: Words) => words.say`text in double quotes`,
  group: (words: Words) => words.say`a group in braces { }`,
  list: (words: Words) => words.say`a list in brackets [ ]`,
};

function wrongType({ field, expected, value }: FaultOf<'brief/wrong-type'>, words: Words): string {
  const where = field === '' ? words.say`The brief` : showField(field);
  const kind = typeof value === 'string' ? words.say`the text ${quote(value)}` : showValue(value, words);
  const numeric = expected === 'number' && typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value);
  return numeric
    ? words.say`${where} is ${kind}: take the quotes off, it must be a number.`
    : words.say`${where} is ${kind}: it must be ${kinds[expected](words)}.`;
}

const mostOf = (field: string, most: number, words: Words): string =>
  field === 'stripes' ? words.count(most, 'stripe') : words.count(most, 'character');

const choices = (all: readonly (string | number)[], words: Words): string =>
  words.amounts.choice(all.map((choice) => (typeof choice === 'string' ? quote(choice) : String(choice))));

function unknownYarn({ field, yarn, known }: FaultOf<'brief/unknown-yarn'>, words: Words): string {
  const near = nearest(yarn, known);
  const hint = near
    ? words.say`did you mean ${quote(near)}?`
    : words.say`choose ${words.amounts.choice(aHandful(known.map(quote), words))}.`;
  return words.say`${showField(field)} is ${quote(yarn)}, which is none of the yarns: ${hint}`;
}

const aHandful = (names: readonly string[], words: Words): readonly string[] =>
  names.length <= 6 ? names : [...names.slice(0, 5), words.say`another`];

function impossibleStitch({ what, sizeMm }: FaultOf<'brief/stitch-impossible'>, words: Words): string {
  const mm = Number(sizeMm.toPrecision(2));
  return what === 'wide'
    ? words.say`The swatch makes a stitch ${mm} mm wide, outside 0.2 to 60 mm: check its width and its stitches.`
    : words.say`The swatch makes a row ${mm} mm high, outside 0.2 to 60 mm: check its height and its rows.`;
}
