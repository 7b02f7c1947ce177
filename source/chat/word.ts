import type { Words } from '../wording/words.ts';
import type { Named } from './named.ts';

/** A word of the trade. */
export interface Word extends Named {
  readonly means: (words: Words) => string;
}
