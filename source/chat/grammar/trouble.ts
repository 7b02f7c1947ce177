/**
 * What goes wrong at the bench, found by its name or by what a maker says of it, `I dropped a stitch`; and what to do now,
 * with the needles of this place.
 */

import { bedNow, type Session } from '../../session/session.ts';
import { rowAt } from '../../steps/job.ts';
import { stemsIn } from '../../wording/named.ts';
import type { Words } from '../../wording/words.ts';

export const troubles = [
  'dropped-stitch',
  'yarn',
  'jam',
  'fallen-work',
  'split-loop',
  'doubled-stitch',
  'fallen-weight',
  'knitted-on',
] as const;
export type Trouble = (typeof troubles)[number];

/**
 * The trouble of which all words of one saying are in the text, in any order; of several the one that takes most words.
 * Needles and counts are for finding the place: a text with a number in it tells of no trouble.
 */
export function troubleIn(text: string, words: Words): Trouble | null {
  if (/\d/.test(text)) return null;
  const typed = new Set(stemsIn(text));
  let best: { readonly trouble: Trouble; readonly length: number } | null = null;
  for (const trouble of troubles) {
    for (const saying of words.trouble[trouble].says) {
      const stems = stemsIn(saying);
      if (stems.every((stem) => typed.has(stem)) && stems.length > (best?.length ?? 0))
        best = { trouble, length: stems.length };
    }
  }
  return best?.trouble ?? null;
}

/** All that can go wrong where nothing is said of it. */
export function sayTrouble(session: Session, what: Trouble | null, { trouble }: Words): readonly string[] {
  if (what === null) return [trouble.list(troubles.map((one) => trouble[one].title))];
  const bed = bedNow(session);
  const at = {
    edges: bed?.left && bed.right ? ([bed.left, bed.right] as const) : null,
    row: rowAt(session.job, session.done),
  };
  return [trouble[what].now(at), trouble[what].help(at)];
}
