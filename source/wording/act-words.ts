/** The shape of a topic that has something to say of each act. */
import type { Act } from '../steps/step.ts';

export type ActWords = {
  readonly [K in Act['kind']]: (act: Extract<Act, { readonly kind: K }>) => string;
};

/** What a topic says of one act. */
export const wordsFor = (words: ActWords, act: Act): string => (words[act.kind] as (act: Act) => string)(act);
