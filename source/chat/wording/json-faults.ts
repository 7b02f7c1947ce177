import type { JsonSlip } from '../../planning/json-slip.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { quote } from './values.ts';

/** How to mend a slip in a JSON text; `found` is what stands at the place. */
export function mendJson(slip: JsonSlip, found: string, words: Words): string {
  switch (slip) {
    case 'ends-early':
      return words.say`the file ends too soon; close every { with } and every [ with ].`;
    case 'comment':
      return words.say`take the comment out, JSON has none.`;
    case 'wrong-quotes':
      return words.say`use straight double quotes instead of ${found}.`;
    case 'unclosed-text':
      return words.say`close this text with a double quote on the same line.`;
    case 'odd-escape':
      return words.say`write \\\\ for a backslash and \\t for a tab inside a text.`;
    case 'odd-number':
      return words.say`write numbers in plain digits, with a point for decimals and no unit, such as 0.5.`;
    case 'decimal-comma':
      return words.say`write decimals with a point, such as 19.2.`;
    case 'extra-comma':
      return words.say`take out the comma before ${found}.`;
    case 'comma-missing':
      return words.say`put a comma before ${shown(found, words)}.`;
    case 'colon-missing':
      return words.say`put a colon between the key and its value.`;
    case 'key-unquoted':
      return words.say`put the key ${shown(found, words)} in double quotes.`;
    case 'key-twice':
      return words.say`the key ${shown(found, words)} is here a second time; keep one, or rename it.`;
    case 'word-unquoted':
      return words.say`put ${shown(found, words)} in double quotes, or write a number.`;
    case 'value-missing':
      return words.say`write a value before ${shown(found, words)}.`;
    case 'wrong-bracket':
      return words.say`this ${found} does not match; close { with } and [ with ], the last opened first.`;
    case 'after-the-end':
      return words.say`the brief is closed before this; take out ${shown(found, words)} and what follows.`;
    case 'not-expected':
      return words.say`take out ${shown(found, words)}, or write what is missing before it.`;
    default:
      return exhaustive(slip);
  }
}

/** Texts come with their quotes; everything is shortened and made safe. */
const shown = (found: string, words: Words): string => {
  if (found === ',') return words.say`this comma`;
  if (found === ':') return words.say`this colon`;
  const inside = found.startsWith('"') && found.length > 1 ? found.slice(1, -1) : null;
  return inside === null ? quote(found).slice(1, -1) : quote(inside);
};
