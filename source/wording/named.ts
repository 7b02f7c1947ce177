import type { Words } from './words.ts';
/** Finds an entry of a table by what a maker calls it: singular or plural, whatever the ending, within a question. */
export interface Named {
  /** Its English name, one word; it finds the entry in every language. */
  readonly id: string;
  /** Its names in the chosen language, commas between; the first is the one that is shown. */
  readonly names: (words: Words) => string;
}

/** The name to show. */
export const titleOf = ({ names, id }: Named, words: Words): string => names(words).split(', ')[0] ?? id;

export const namesOf = ({ id, names }: Named, words: Words): readonly string[] => [
  id,
  ...names(words).split(', '),
];

/** The entry that `text` names, or else the one with the longest name that it speaks of. */
export function findNamed<Entry extends Named>(
  entries: readonly Entry[],
  text: string,
  words: Words,
): Entry | null {
  const byName = new Map(
    entries.flatMap((entry) => namesOf(entry, words).map((name) => [stemOf(name), entry] as const)),
  );
  const typed = stemsIn(text);
  for (let length = typed.length; length > 0; length--) {
    for (let from = 0; from + length <= typed.length; from++) {
      const found = byName.get(typed.slice(from, from + length).join(''));
      if (found) return found;
    }
  }
  return null;
}

/** Spaces and hyphens do not count: `scrap off`, `scrap-off`. */
export const stemOf = (name: string): string => stemsIn(name).join('');

const wordsIn = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** The words of a text without their endings, English or German, and without accents. */
export const stemsIn = (text: string): readonly string[] => wordsIn(text).map(stem);

const ending = /(?:ings?|ed|es|en|ern?|em|e|n|s)$/;

/** Ending after ending, as long as three letters are left: `margins` and `margin` come to the same. */
function stem(word: string): string {
  const cut = word.replace(ending, '');
  return cut === word || cut.length < 3 ? word.replace(/([^aeiou])\1$/, '$1') : stem(cut);
}
