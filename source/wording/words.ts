/**
 * All that is said, in one language and one set of units. Whoever says something is given these words as an argument;
 * no language is chosen for the whole program, so a change of language or units changes all that is drawn after it.
 */
import type { LanguageCode } from '../settings/settings.ts';
import { metric, type Units } from '../shared/units.ts';
import { type Amounts, amountsIn, type Writing } from './amounts.ts';
import * as english from './topics.en.ts';

/** A language gives each topic's words once it knows the units. */
export type Topics = {
  readonly [T in keyof typeof english]: (say: Amounts) => ReturnType<(typeof english)[T]>;
};

export interface Language {
  readonly code: LanguageCode;
  readonly writing: Writing;
  readonly topics: Topics;
  /** Words that the maker may type, in small letters: the English word that each stands for. */
  readonly typed: Readonly<Record<string, string>>;
}

export type Words = { readonly [T in keyof Topics]: ReturnType<Topics[T]> } & {
  readonly language: LanguageCode;
  readonly units: Units;
  readonly amounts: Amounts;
  /** The one of `known` that a word typed in this language stands for; else the word as it was typed. */
  readonly understand: (word: string, known: ReadonlySet<string>) => string;
  /** The same language in other units. */
  readonly inUnits: (units: Units) => Words;
};

export const inEnglish: Language = {
  code: 'en',
  writing: { decimalMark: '.', and: 'and', or: 'or' },
  topics: english,
  typed: {},
};

/** A topic's words are made when the first of them is said. */
export function wordsIn(language: Language, units: Units): Words {
  const amounts = amountsIn(language.writing, units);
  const words: object = {
    language: language.code,
    units,
    amounts,
    inUnits: (other: Units) => wordsIn(language, other),
    understand: (word: string, known: ReadonlySet<string>) => {
      const meant = language.typed[word.normalize().toLowerCase()];
      return meant !== undefined && known.has(meant) ? meant : word;
    },
  };
  for (const [topic, say] of Object.entries(language.topics)) {
    Object.defineProperty(words, topic, {
      configurable: true,
      enumerable: true,
      get: () => {
        const value = say(amounts);
        Object.defineProperty(words, topic, { value, enumerable: true });
        return value;
      },
    });
  }
  return words as Words;
}

export const englishWords: Words = wordsIn(inEnglish, metric);
