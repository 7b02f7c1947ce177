import type { BriefFault, JsonKind } from '../../planning/fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatChoice, formatList, say } from '../../shared/say.ts';
import { nearest } from '../nearest.ts';
import { amountOf, toWrite } from './fields.ts';
import { mendJson } from './json-faults.ts';
import { quote, showField, showValue } from './values.ts';

/** Why a brief cannot be read: one sentence with the field, what it holds, and how to mend it. */
export function formatBriefFault(fault: BriefFault): string {
  switch (fault.code) {
    case 'brief/empty':
      return say`The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.`;
    case 'brief/too-big':
      return say`The file has ${fault.characterCount} characters, and a brief at most ${fault.most}: look whether it is the right file.`;
    case 'brief/not-json':
      return say`The brief cannot be read at line ${fault.line}, column ${fault.column}: ${mendJson(fault.slip, fault.found)}`;
    case 'brief/unknown-key':
      return unknownKey(fault);
    case 'brief/missing':
      return missing(fault.field);
    case 'brief/wrong-type':
      return wrongType(fault);
    case 'brief/not-whole':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: give a whole number.`;
    case 'brief/not-even':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: give an even number, so that the yarn ends on the home side.`;
    case 'brief/too-small':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: give at least ${amountOf(fault.field, fault.least)}.`;
    case 'brief/too-large':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: give at most ${amountOf(fault.field, fault.most)}.`;
    case 'brief/too-short':
      return empty(fault.field);
    case 'brief/too-long':
      return say`${showField(fault.field)} is too long: ${mostOf(fault.field, fault.most)} at most.`;
    case 'brief/not-one-of':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: choose ${choices(fault.choices)}.`;
    case 'brief/not-a-colour':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: write # and six digits of 0-9 and a-f, such as "#6b2d5c".`;
    case 'brief/not-a-name':
      return say`${showField(fault.field)} is ${showValue(fault.value)}: write a name on one line, with no spaces at its ends.`;
    case 'brief/no-size':
      return say`bag is empty: give ${toWrite('bag') ?? ''}.`;
    case 'brief/two-sizes':
      return say`bag has ${formatList(fault.keys)}, which do not go together: keep ${toWrite('bag') ?? ''}.`;
    case 'brief/no-yarns':
      return say`yarns is empty: give ${toWrite('yarns') ?? ''}.`;
    case 'brief/unknown-yarn':
      return unknownYarn(fault);
    case 'brief/reserved-yarn':
      return say`No yarn can be called ${quote(fault.yarn)}, a name that is kept for other use: give it another name.`;
    case 'brief/waste-is-a-yarn':
      return say`waste.yarn is ${quote(fault.yarn)}, a yarn of the bag: give the waste yarn a name of its own.`;
    case 'brief/stripes-and-scraps':
      return say`stripes and scraps are both given: keep stripes for a repeat, or scraps for leftovers.`;
    case 'brief/scrap-not-weighed':
      return say`The yarn ${quote(fault.yarn)} has no grams: weigh each scrap, so that no stripe runs short.`;
    case 'brief/two-units':
      return say`${fault.field} and ${fault.other} are both given: keep one of them.`;
    case 'brief/two-loop-lengths':
      return say`swatch.loopLengthMm and swatch.rowYarnCm are both given: keep one of them.`;
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
    ? say`A brief has no ${showField(field)}: did you mean ${near}?`
    : say`A brief has no ${showField(field)}: take it out, or use ${formatChoice(known)}.`;
}

function missing(field: string): string {
  const content = toWrite(field);
  return say`${showField(field)} is missing: add ${content ?? say`it`}.`;
}

const empty = (field: string): string =>
  field === 'yarns.""'
    ? say`A yarn has no name: write one before the colon.`
    : say`${showField(field)} is empty: write ${toWrite(field) ?? say`a name`}.`;

const kinds: Readonly<Record<JsonKind, () => string>> = {
  number: () => say`a number`,
  text: () => say`text in double quotes`,
  group: () => say`a group in braces { }`,
  list: () => say`a list in brackets [ ]`,
};

function wrongType({ field, expected, value }: FaultOf<'brief/wrong-type'>): string {
  const where = field === '' ? say`The brief` : showField(field);
  const kind = typeof value === 'string' ? say`the text ${quote(value)}` : showValue(value);
  const numeric = expected === 'number' && typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value);
  return numeric
    ? say`${where} is ${kind}: take the quotes off, it must be a number.`
    : say`${where} is ${kind}: it must be ${kinds[expected]()}.`;
}

const mostOf = (field: string, most: number): string =>
  field === 'stripes' ? count(most, 'stripe') : count(most, 'character');

const choices = (all: readonly (string | number)[]): string =>
  formatChoice(all.map((choice) => (typeof choice === 'string' ? quote(choice) : String(choice))));

function unknownYarn({ field, yarn, known }: FaultOf<'brief/unknown-yarn'>): string {
  const near = nearest(yarn, known);
  const hint = near
    ? say`did you mean ${quote(near)}?`
    : say`choose ${formatChoice(aHandful(known.map(quote)))}.`;
  return say`${showField(field)} is ${quote(yarn)}, which is none of the yarns: ${hint}`;
}

const aHandful = (names: readonly string[]): readonly string[] =>
  names.length <= 6 ? names : [...names.slice(0, 5), say`another`];

function impossibleStitch({ what, sizeMm }: FaultOf<'brief/stitch-impossible'>): string {
  const mm = Number(sizeMm.toPrecision(2));
  return what === 'wide'
    ? say`The swatch makes a stitch ${mm} mm wide, outside 0.2 to 60 mm: check its width and its stitches.`
    : say`The swatch makes a row ${mm} mm high, outside 0.2 to 60 mm: check its height and its rows.`;
}
