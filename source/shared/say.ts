import { harmless } from './plain-text.ts';

/**
 * What the maker reads, in the language that was chosen. A sentence is written in English where it is said, as a
 * template with the tag `say`; a language gives the same template in its own words. Templates are looked up by their
 * English text, with `{0}`, `{1}` … where values go. What a language lacks stays English.
 *
 * The language is one for the whole program. It is chosen before anything is said, so no sentence may be made while
 * modules load; and the maker may choose another at the bench, so none that is drawn anew may be kept.
 */
export interface Language {
  /** ISO 639-1, such as `de`. */
  readonly code: string;
  readonly decimalMark: '.' | ',';
  /** By English template. A function takes the values as they would be shown, and chooses words by them. */
  readonly sentences: Readonly<Record<string, string | ((...values: readonly string[]) => string)>>;
  /** Things that are counted, by the English for one: the word for one, and for several. */
  readonly nouns: Readonly<Record<string, readonly [one: string, several: string]>>;
  /** Words that the maker may type, in small letters: the English word that each stands for. */
  readonly typed: Readonly<Record<string, string>>;
}

let language: Language | null = null;

/** Null is English. */
export function speak(chosen: Language | null): void {
  language = chosen;
}

export const languageCode = (): string => language?.code ?? 'en';

/** The template in the chosen language. A number is shown with that language's decimal mark. */
export function say(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const sentence = language?.sentences[templateOf(parts)];
  if (sentence === undefined) return String.raw({ raw: parts }, ...values.map(show));
  if (typeof sentence === 'function') return sentence(...values.map(show));
  return sentence.replace(/\{(\d)\}/g, (_, number) => show(values[number] ?? ''));
}

/** The English template, `{0}` and so on where values go. */
export const templateOf = (parts: readonly string[]): string =>
  parts.reduce((text, part, number) => `${text}{${number - 1}}${part}`);

/** The one of `words` that a word typed in the chosen language stands for; else the word as it was typed. */
export function understand(typed: string, words: ReadonlySet<string>): string {
  const word = language?.typed[typed.normalize().toLowerCase()];
  return word !== undefined && words.has(word) ? word : typed;
}

/** `1 row`, `3 rows`. */
export function count(howMany: number, one: string, several = `${one}s`): string {
  const [single, many] = language?.nouns[one] ?? [one, several];
  return `${howMany} ${howMany === 1 ? single : many}`;
}

/** `a, b and c`. */
export const formatList = (items: readonly string[]): string => joinWith(say`and`, items);

/** `a, b or c`. */
export const formatChoice = (items: readonly string[]): string => joinWith(say`or`, items);

function joinWith(last: string, items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** Values may come from outside: names, notes, paths. */
const show = (value: string | number): string =>
  typeof value === 'number' ? formatDecimal(String(value)) : harmless(value);

/** A decimal number as it is written: `19.2`, or `19,2`. */
export const formatDecimal = (digits: string): string => digits.replace('.', language?.decimalMark ?? '.');
