/** What goes wrong at the bench, found by its name or by what a maker says of it: `I dropped a stitch`. */
import type { Words } from '../wording/words.ts';
import { stemsIn } from './named.ts';

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
