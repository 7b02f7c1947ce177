import type { BriefFault, JsonKind } from '../../planning/fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { nearest } from '../nearest.ts';
import { amountOf, toWrite } from './fields.ts';
import { mendJson } from './json-faults.ts';
import { count, formatList } from './numbers.ts';
import { quote, showField, showValue } from './values.ts';

/** Why a brief cannot be read: one sentence with the field, what it holds, and how to mend it. */
export function formatBriefFault(fault: BriefFault): string {
  switch (fault.code) {
    case 'brief/empty':
      return 'The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.';
    case 'brief/too-big':
      return `The file has ${fault.characterCount} characters, and a brief at most ${fault.most}: look whether it is the right file.`;
    case 'brief/not-json':
      return `The brief cannot be read at line ${fault.line}, column ${fault.column}: ${mendJson(fault.slip, fault.found)}`;
    case 'brief/unknown-key':
      return unknownKey(fault);
    case 'brief/missing':
      return missing(fault.field);
    case 'brief/wrong-type':
      return wrongType(fault);
    case 'brief/not-whole':
      return `${showField(fault.field)} is ${showValue(fault.value)}: give a whole number.`;
    case 'brief/not-even':
      return `${showField(fault.field)} is ${showValue(fault.value)}: give an even number, so that the yarn ends on the home side.`;
    case 'brief/too-small':
      return `${showField(fault.field)} is ${showValue(fault.value)}: give at least ${amountOf(fault.field, fault.least)}.`;
    case 'brief/too-large':
      return `${showField(fault.field)} is ${showValue(fault.value)}: give at most ${amountOf(fault.field, fault.most)}.`;
    case 'brief/too-short':
      return empty(fault.field);
    case 'brief/too-long':
      return `${showField(fault.field)} is too long: ${mostOf(fault.field, fault.most)} at most.`;
    case 'brief/not-one-of':
      return `${showField(fault.field)} is ${showValue(fault.value)}: choose ${choices(fault.choices)}.`;
    case 'brief/not-a-colour':
      return `${showField(fault.field)} is ${showValue(fault.value)}: write # and six digits of 0-9 and a-f, such as "#6b2d5c".`;
    case 'brief/not-a-name':
      return `${showField(fault.field)} is ${showValue(fault.value)}: write a name on one line, with no spaces at its ends.`;
    case 'brief/no-size':
      return `bag is empty: give ${toWrite('bag')}.`;
    case 'brief/two-sizes':
      return `bag has ${formatList(fault.keys)}, which do not go together: keep ${toWrite('bag')}.`;
    case 'brief/no-yarns':
      return `yarns is empty: give ${toWrite('yarns')}.`;
    case 'brief/unknown-yarn':
      return unknownYarn(fault);
    case 'brief/reserved-yarn':
      return `No yarn can be called ${quote(fault.yarn)}, a name that is kept for other use: give it another name.`;
    case 'brief/waste-is-a-yarn':
      return `waste.yarn is ${quote(fault.yarn)}, a yarn of the bag: give the waste yarn a name of its own.`;
    case 'brief/stripes-and-scraps':
      return 'stripes and scraps are both given: keep stripes for a repeat, or scraps for leftovers.';
    case 'brief/scrap-not-weighed':
      return `The yarn ${quote(fault.yarn)} has no grams: weigh each scrap, so that no stripe runs short.`;
    case 'brief/two-units':
      return `${fault.field} and ${fault.other} are both given: keep one of them.`;
    case 'brief/two-loop-lengths':
      return 'swatch.loopLengthMm and swatch.rowYarnCm are both given: keep one of them.';
    case 'brief/stitch-impossible':
      return impossibleStitch(fault);
    default:
      return exhaustive(fault);
  }
}

type FaultOf<C extends BriefFault['code']> = Extract<BriefFault, { readonly code: C }>;

function unknownKey({ field, key, known }: FaultOf<'brief/unknown-key'>): string {
  const near = nearest(key, known);
  return near
    ? `A brief has no ${showField(field)}: did you mean ${near}?`
    : `A brief has no ${showField(field)}: take it out, or use ${formatList(known, 'or')}.`;
}

function missing(field: string): string {
  const content = toWrite(field);
  return `${showField(field)} is missing: add ${content ?? 'it'}.`;
}

const empty = (field: string): string =>
  field === 'yarns.""'
    ? 'A yarn has no name: write one before the colon.'
    : `${showField(field)} is empty: write ${toWrite(field) ?? 'a name'}.`;

const kinds: Readonly<Record<JsonKind, string>> = {
  number: 'a number',
  text: 'text in double quotes',
  group: 'a group in braces { }',
  list: 'a list in brackets [ ]',
};

function wrongType({ field, expected, value }: FaultOf<'brief/wrong-type'>): string {
  const where = field === '' ? 'The brief' : showField(field);
  const kind = typeof value === 'string' ? `the text ${quote(value)}` : showValue(value);
  const numeric = expected === 'number' && typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value);
  return numeric
    ? `${where} is ${kind}: take the quotes off, it must be a number.`
    : `${where} is ${kind}: it must be ${kinds[expected]}.`;
}

const mostOf = (field: string, most: number): string =>
  field === 'stripes' ? count(most, 'stripe') : count(most, 'character');

const choices = (all: readonly (string | number)[]): string =>
  formatList(
    all.map((choice) => (typeof choice === 'string' ? quote(choice) : String(choice))),
    'or',
  );

function unknownYarn({ field, yarn, known }: FaultOf<'brief/unknown-yarn'>): string {
  const near = nearest(yarn, known);
  const hint = near
    ? `did you mean ${quote(near)}?`
    : `choose ${formatList(aHandful(known.map(quote)), 'or')}.`;
  return `${showField(field)} is ${quote(yarn)}, which is none of the yarns: ${hint}`;
}

const aHandful = (names: readonly string[]): readonly string[] =>
  names.length <= 6 ? names : [...names.slice(0, 5), 'another'];

function impossibleStitch({ what, sizeMm }: FaultOf<'brief/stitch-impossible'>): string {
  const mm = `${Number(sizeMm.toPrecision(2))} mm`;
  return what === 'wide'
    ? `The swatch makes a stitch ${mm} wide, outside 0.2 to 60 mm: check its width and its stitches.`
    : `The swatch makes a row ${mm} high, outside 0.2 to 60 mm: check its height and its rows.`;
}
