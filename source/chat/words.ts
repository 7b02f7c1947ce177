/** The words of the trade, each explained in a sentence or three; found by any of their names, singular or plural. */
import type { GlossaryWords } from '../wording/glossary.en.ts';
import { englishWords, type Words } from '../wording/words.ts';
import { findNamed, type Named } from './named.ts';

/** A word of the trade. */
export interface Word extends Named {
  readonly id: keyof GlossaryWords;
}

export const tradeWords: readonly Word[] = (
  Object.keys(englishWords.glossary) as (keyof GlossaryWords)[]
).map((id) => ({ id, names: ({ glossary }) => glossary[id].names }));

export const meaningOf = ({ id }: Word, { glossary }: Words): string => glossary[id].means;

/** The word that `text` names or speaks of: `swatch`, `the swatches`, `what is a swatch?`. */
export const findWord = (text: string, words: Words): Word | null => findNamed(tradeWords, text, words);
