import type { JsonSlip } from '../../planning/json-slip.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { say } from '../../shared/say.ts';
import { quote } from './values.ts';

/** How to mend a slip in a JSON text; `found` is what stands at the place. */
export function mendJson(slip: JsonSlip, found: string): string {
  switch (slip) {
    case 'ends-early':
      return say`the file ends too soon; close every { with } and every [ with ].`;
    case 'comment':
      return say`take the comment out, JSON has none.`;
    case 'wrong-quotes':
      return say`use straight double quotes instead of ${found}.`;
    case 'unclosed-text':
      return say`close this text with a double quote on the same line.`;
    case 'odd-escape':
      return say`write \\\\ for a backslash and \\t for a tab inside a text.`;
    case 'odd-number':
      return say`write numbers in plain digits, with a point for decimals and no unit, such as 0.5.`;
    case 'decimal-comma':
      return say`write decimals with a point, such as 19.2.`;
    case 'extra-comma':
      return say`take out the comma before ${found}.`;
    case 'comma-missing':
      return say`put a comma before ${shown(found)}.`;
    case 'colon-missing':
      return say`put a colon between the key and its value.`;
    case 'key-unquoted':
      return say`put the key ${shown(found)} in double quotes.`;
    case 'key-twice':
      return say`the key ${shown(found)} is here a second time; keep one, or rename it.`;
    case 'word-unquoted':
      return say`put ${shown(found)} in double quotes, or write a number.`;
    case 'value-missing':
      return say`write a value before ${shown(found)}.`;
    case 'wrong-bracket':
      return say`this ${found} does not match; close { with } and [ with ], the last opened first.`;
    case 'after-the-end':
      return say`the brief is closed before this; take out ${shown(found)} and what follows.`;
    case 'not-expected':
      return say`take out ${shown(found)}, or write what is missing before it.`;
    default:
      return exhaustive(slip);
  }
}

/** Texts come with their quotes; everything is shortened and made safe. */
const shown = (found: string): string => {
  if (found === ',') return say`this comma`;
  if (found === ':') return say`this colon`;
  const inside = found.startsWith('"') && found.length > 1 ? found.slice(1, -1) : null;
  return inside === null ? quote(found).slice(1, -1) : quote(inside);
};
