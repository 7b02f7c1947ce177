import type { BriefFault, JsonKind } from '../planning/fault.ts';
import type { JsonSlip } from '../planning/json-slip.ts';
import { nearest } from '../shared/nearest.ts';
import { exhaustive } from '../shared/result.ts';
import { amountOf, quote, showField, showValue, toWrite } from './values.ts';
import type { Words } from './words.ts';

/** Why a brief cannot be read: one sentence with the field, what it holds, and how to mend it. */
export function formatBriefFault(fault: BriefFault, words: Words): string {
  switch (fault.code) {
    case 'brief/empty':
      return words.brief.empty;
    case 'brief/too-big':
      return words.brief.tooBig(fault.characterCount, fault.most);
    case 'brief/not-json':
      return words.brief.notJson(fault.line, fault.column, mendJson(fault.slip, fault.found, words));
    case 'brief/unknown-key':
      return unknownKey(fault, words);
    case 'brief/missing':
      return missing(fault.field, words);
    case 'brief/wrong-type':
      return wrongType(fault, words);
    case 'brief/not-whole':
      return words.brief.notWhole(showField(fault.field), showValue(fault.value, words));
    case 'brief/not-even':
      return words.brief.notEven(showField(fault.field), showValue(fault.value, words));
    case 'brief/too-small':
      return words.brief.tooSmall(
        showField(fault.field),
        showValue(fault.value, words),
        amountOf(fault.field, fault.least, words),
      );
    case 'brief/too-large':
      return words.brief.tooLarge(
        showField(fault.field),
        showValue(fault.value, words),
        amountOf(fault.field, fault.most, words),
      );
    case 'brief/too-short':
      return empty(fault.field, words);
    case 'brief/too-long':
      return words.brief.tooLong(showField(fault.field), mostOf(fault.field, fault.most, words));
    case 'brief/not-one-of':
      return words.brief.notOneOf(
        showField(fault.field),
        showValue(fault.value, words),
        choices(fault.choices, words),
      );
    case 'brief/not-a-colour':
      return words.brief.notAColour(showField(fault.field), showValue(fault.value, words));
    case 'brief/not-a-name':
      return words.brief.notAName(showField(fault.field), showValue(fault.value, words));
    case 'brief/no-size':
      return words.brief.noSize(toWrite('bag', words) ?? '');
    case 'brief/two-sizes':
      return words.brief.twoSizes(fault.keys, toWrite('bag', words) ?? '');
    case 'brief/no-yarns':
      return words.brief.noYarns(toWrite('yarns', words) ?? '');
    case 'brief/not-on-shelf':
      return words.shelf.notThere(fault.kind, quote(fault.name), fault.known);
    case 'brief/unknown-yarn':
      return unknownYarn(fault, words);
    case 'brief/reserved-yarn':
      return words.brief.reservedYarn(quote(fault.yarn));
    case 'brief/waste-is-a-yarn':
      return words.brief.wasteIsAYarn(quote(fault.yarn));
    case 'brief/stripes-and-scraps':
      return words.brief.stripesAndScraps;
    case 'brief/scrap-not-weighed':
      return words.brief.scrapNotWeighed(quote(fault.yarn));
    case 'brief/two-units':
      return words.brief.twoUnits(fault.field, fault.other);
    case 'brief/two-loop-lengths':
      return words.brief.twoLoopLengths;
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

const kinds: Readonly<Record<JsonKind, (words: Words) => string>> = {
  number: (words: Words) => words.brief.types.number,
  text: (words: Words) => words.brief.types.text,
  group: (words: Words) => words.brief.types.group,
  list: (words: Words) => words.brief.types.list,
};

function wrongType({ field, expected, value }: FaultOf<'brief/wrong-type'>, words: Words): string {
  const where = field === '' ? words.brief.theBrief : showField(field);
  const kind = typeof value === 'string' ? words.brief.theText(quote(value)) : showValue(value, words);
  const numeric = expected === 'number' && typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value);
  return numeric
    ? words.brief.numberInQuotes(where, kind)
    : words.brief.wrongType(where, kind, kinds[expected](words));
}

const mostOf = (field: string, most: number, words: Words): string =>
  field === 'stripes' ? words.counted.stripe(most) : words.counted.character(most);

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

/** How to mend a slip in a JSON text; `found` is what stands at the place. */
function mendJson(slip: JsonSlip, found: string, words: Words): string {
  switch (slip) {
    case 'ends-early':
      return words.brief.json.endsEarly;
    case 'comment':
      return words.brief.json.comment;
    case 'wrong-quotes':
      return words.brief.json.wrongQuotes(found);
    case 'unclosed-text':
      return words.brief.json.unclosedText;
    case 'odd-escape':
      return words.brief.json.oddEscape;
    case 'odd-number':
      return words.brief.json.oddNumber;
    case 'decimal-comma':
      return words.brief.json.decimalComma;
    case 'extra-comma':
      return words.brief.json.extraComma(found);
    case 'comma-missing':
      return words.brief.json.commaMissing(shown(found, words));
    case 'colon-missing':
      return words.brief.json.colonMissing;
    case 'key-unquoted':
      return words.brief.json.keyUnquoted(shown(found, words));
    case 'key-twice':
      return words.brief.json.keyTwice(shown(found, words));
    case 'word-unquoted':
      return words.brief.json.wordUnquoted(shown(found, words));
    case 'value-missing':
      return words.brief.json.valueMissing(shown(found, words));
    case 'wrong-bracket':
      return words.brief.json.wrongBracket(found);
    case 'after-the-end':
      return words.brief.json.afterTheEnd(shown(found, words));
    case 'not-expected':
      return words.brief.json.notExpected(shown(found, words));
    default:
      return exhaustive(slip);
  }
}

/** Texts come with their quotes; everything is shortened and made safe. */
const shown = (found: string, words: Words): string => {
  if (found === ',') return words.brief.json.thisComma;
  if (found === ':') return words.brief.json.thisColon;
  const inside = found.startsWith('"') && found.length > 1 ? found.slice(1, -1) : null;
  return inside === null ? quote(found).slice(1, -1) : quote(inside);
};
