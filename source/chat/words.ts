/** The words of the trade, each explained in a sentence or three; found by any of their names, singular or plural. */
import type { Words } from '../wording/words.ts';
import { findNamed } from './named.ts';
import type { Word } from './word.ts';
import { benchWords } from './wording/words-bench.ts';
import { handWords } from './wording/words-hand.ts';
import { planWords } from './wording/words-plan.ts';

export const tradeWords: readonly Word[] = [...benchWords, ...planWords, ...handWords];

/** The word that `text` names or speaks of: `swatch`, `the swatches`, `what is a swatch?`. */
export const findWord = (text: string, words: Words): Word | null => findNamed(tradeWords, text, words);
