/** Every sentence of the program is in every language, and none is left over. */

import { describe, expect, it } from 'vitest';
import { german } from '../../source/languages/german.ts';
import { type Catalog, speechIn } from '../../source/shared/say.ts';
import { programFiles, readSentences } from './read-sentences.ts';

const { said, nouns, unsaid } = readSentences(programFiles());
const languages: readonly (readonly [string, Catalog])[] = [['German', german]];

/** Places for values, in order: `{0}`, `{1}`. */
const placesIn = (text: string): readonly string[] => (text.match(/\{\d\}/g) ?? []).toSorted();

describe('the sentences of the program', () => {
  it('are read from all of it', () => {
    expect(said.map(({ text }) => text)).toContain('Knit one row to the {0}.');
    expect(nouns.map(({ text }) => text)).toContain('row');
  });

  it('all go through the tag', () => {
    expect(unsaid.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  it('are made only once a language is chosen', () => {
    expect(said.filter(({ inFunction }) => !inFunction).map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  it('are free of the short forms of written patterns', () => {
    const short =
      /\b(?:sts?|rpt|rep|inc|dec|beg|rem|tog|rnd|e\.g|i\.e|etc|approx)\.|\b(?:sts|k2tog|ssk|yo|MC|CC|RS|WS)\b/;
    expect('K2tog: knit 2 sts together.').toMatch(short);
    expect(said.filter(({ text }) => short.test(text)).map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  it('have no more than ten values', () => {
    expect(said.filter(({ text }) => /\{1\d\}/.test(text))).toEqual([]);
  });
});

describe.each(languages)('%s', (_, language) => {
  it('has every sentence', () => {
    const missing = said.filter(({ text }) => !Object.hasOwn(language.sentences, text));
    expect(missing.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  it('has no sentence that is not said', () => {
    const all = new Set(said.map(({ text }) => text));
    expect(Object.keys(language.sentences).filter((text) => !all.has(text))).toEqual([]);
  });

  it('has a word for each thing counted, and no others', () => {
    const all = new Set(nouns.map(({ text }) => text));
    expect(Object.keys(language.nouns).toSorted()).toEqual([...all].toSorted());
  });

  it('shows the same values as the English', () => {
    const wrong = Object.entries(language.sentences).filter(
      ([text, own]) => typeof own === 'string' && String(placesIn(own)) !== String(placesIn(text)),
    );
    expect(wrong).toEqual([]);
  });
});

describe('a chosen language', () => {
  const piglet: Catalog = {
    decimalMark: ',',
    nouns: { row: ['wor', 'swor'] },
    typed: { tfel: 'left' },
    sentences: {
      'Row {0} of {1}': 'Of {1}, wor {0}',
      'the {0} edge': (side) => (side === 'left' ? 'l' : 'r'),
    },
  };

  it('gives the sentence with its values, in its own order', () => {
    const { say, count } = speechIn(piglet);
    expect(say`Row ${1.5} of ${'all'}`).toBe('Of all, wor 1,5');
    expect(say`the ${'left'} edge`).toBe('l');
    expect([count(1, 'row'), count(2, 'row')]).toEqual(['1 wor', '2 swor']);
  });

  it('understands a typed word only as one that may stand there', () => {
    const { understand } = speechIn(piglet);
    const sides = new Set(['left', 'right']);
    expect(['TFEL', 'left', 'plum', 'constructor'].map((word) => understand(word, sides))).toEqual([
      'left',
      'left',
      'plum',
      'constructor',
    ]);
    expect(understand('tfel', new Set(['row']))).toBe('tfel');
    expect(speechIn().understand('tfel', sides)).toBe('tfel');
  });

  it('leaves English what it lacks', () => {
    const { say } = speechIn(piglet);
    expect(say`No such ${'thing'}.`).toBe('No such thing.');
  });
});
