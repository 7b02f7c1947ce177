/** Sentences as they are read with both hands full: short, one negation at most, and in words that the trade uses. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { medianOf } from '../../source/shared/numbers.ts';
import { readSentences } from './read-sentences.ts';

/** Words that a maker may type are no words of ours. */
const isTyped = /^(?:typed|wishes)\./;

const textsIn = (language: 'en' | 'de') =>
  readSentences(
    readdirSync('source/wording')
      .filter((name) => name.endsWith(`.${language}.ts`) && !isTyped.test(name))
      .map((name) => `source/wording/${name}`),
  ).filter(({ at }) => !isNames(at));

/** Names by which a word or a reason is found, understood but not said. */
function isNames(at: string): boolean {
  const [path = '', line] = at.split(':');
  const lines = readFileSync(path, 'utf8').split('\n');
  const above = lines.slice(Math.max(0, Number(line) - 2), Number(line));
  return above.some((text) => /^\s*names:/.test(text)) && !/means:/.test(above.at(-1) ?? '');
}

/** A value that is put in counts as a word. */
const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<=[.?!])\s+/).filter((sentence) => /[.?!]$/.test(sentence));

const wordsOf = (sentence: string): number => sentence.split(/\s+/).length;

const languages = {
  en: {
    negation: /\b(?:not|no|none|never|nothing|nobody|neither|nor|cannot)\b|n't\b/gi,
    banned:
      /\bresting (?:needle|position)|\bre-?seat|\bbites?\b|\breckon|\banew\b|\bslip of the\b|\bslips? (?:that was kept|explains)|\btrodden|\bon the go\b|\bMind:|\bLeft (?:takes|off|without|arrow)|\bleft off\b|\bheeded\b|\bpassed over\b|\bremark|\blarge view\b|\bis to be called\b|\bset right\b|\bcare about\b/i,
  },
  de: {
    negation: /\b(?:nicht|nichts|nie|niemand|kein(?:e[mnrs]?)?|weder|noch nie)\b/gi,
    banned:
      /Ruhestellung schieb|in Ruhestellung\.|Quersteg|\bStege?n?\b|Zählwerk|Festigkeit|Glocke|läutet|Spitzengarn|Abrechnung|ausgeruht|\bleer zurück|auf leer\b|Leergang fahr|Ärger|Ausbesser|Versehen|Umsetzen|nachlaufend|mit den Händen zurück|\bStich:|Nimm zum Anschlagen/,
  },
} as const;

describe.each(['en', 'de'] as const)('%s', (language) => {
  const { negation, banned } = languages[language];
  const texts = textsIn(language);
  const sentences = texts.flatMap(({ at, text }) => sentencesOf(text).map((sentence) => ({ at, sentence })));

  it('reads in sentences of at most 20 words in the middle, and none of more than 45', () => {
    const lengths = sentences.map(({ sentence }) => wordsOf(sentence));
    expect(medianOf(lengths)).toBeLessThanOrEqual(20);
    expect(sentences.filter(({ sentence }) => wordsOf(sentence) > 45)).toEqual([]);
  });

  it('says no more than one thing is not so in a sentence', () => {
    const twice = sentences.filter(({ sentence }) => (sentence.match(negation) ?? []).length > 1);
    expect(twice.map(({ at, sentence }) => `${at} ${sentence}`)).toEqual([]);
  });

  it('has none of the words that a knitter would not say', () => {
    expect(texts.filter(({ text }) => banned.test(text)).map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });
});
