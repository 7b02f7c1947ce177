import { harmless } from './plain-text.ts';

/**
 * Sentences that have no topic of their own in `wording/` yet. Each is written in English where it is said, as a template
 * with the tag `say`; a language gives the same template in its own words, by the English text with `{0}`, `{1}` … where
 * values go. What a language lacks stays English.
 */
export interface Catalog {
  readonly decimalMark: '.' | ',';
  /** By English template. A function takes the values as they would be shown, and chooses words by them. */
  readonly sentences: Readonly<Record<string, string | ((...values: readonly string[]) => string)>>;
  /** Things that are counted, by the English for one: the word for one, and for several. */
  readonly nouns: Readonly<Record<string, readonly [one: string, several: string]>>;
  /** Words that the maker may type, in small letters: the English word that each stands for. */
  readonly typed: Readonly<Record<string, string>>;
}

export interface Speech {
  /** The template in this language. A number is shown with its decimal mark. */
  readonly say: (parts: TemplateStringsArray, ...values: readonly (string | number)[]) => string;
  /** `1 row`, `3 rows`. */
  readonly count: (howMany: number, one: string, several?: string) => string;
  /** The one of `known` that a word typed in this language stands for; else the word as it was typed. */
  readonly understand: (typed: string, known: ReadonlySet<string>) => string;
  /** A decimal number as it is written: `19.2`, or `19,2`. */
  readonly decimalText: (digits: string) => string;
}

/** The English template, `{0}` and so on where values go. */
export const templateOf = (parts: readonly string[]): string =>
  parts.reduce((text, part, number) => `${text}{${number - 1}}${part}`);

const english: Catalog = { decimalMark: '.', sentences: {}, nouns: {}, typed: {} };

export function speechIn(catalog: Catalog = english): Speech {
  const { decimalMark, sentences, nouns, typed: words } = catalog;
  const decimalText = (digits: string): string => digits.replace('.', decimalMark);
  /** Values may come from outside: names, notes, paths. */
  const show = (value: string | number): string =>
    typeof value === 'number' ? decimalText(String(value)) : harmless(value);
  return {
    decimalText,
    say: (parts, ...values) => {
      const sentence = sentences[templateOf(parts)];
      if (sentence === undefined) return String.raw({ raw: parts }, ...values.map(show));
      if (typeof sentence === 'function') return sentence(...values.map(show));
      return sentence.replace(/\{(\d)\}/g, (_, number) => show(values[number] ?? ''));
    },
    count: (howMany, one, several = `${one}s`) => {
      const [single, many] = nouns[one] ?? [one, several];
      return `${howMany} ${howMany === 1 ? single : many}`;
    },
    understand: (typed, known) => {
      const word = words[typed.normalize().toLowerCase()];
      return word !== undefined && known.has(word) ? word : typed;
    },
  };
}
