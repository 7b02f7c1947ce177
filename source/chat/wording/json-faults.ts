import type { JsonSlip } from '../../planning/json-slip.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { quote } from './values.ts';

/** How to mend a slip in a JSON text; `found` is what stands at the place. */
export function mendJson(slip: JsonSlip, found: string, words: Words): string {
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
