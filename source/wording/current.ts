/**
 * For the move to words as arguments only: the language of the whole program, as `say` has it. Whoever has words as an
 * argument uses those; this file goes with the last of its users.
 */
import { metric, type Units } from '../shared/units.ts';
import { inEnglish, type Language, type Words, wordsIn } from './words.ts';

let language: Language = inEnglish;
let made: { units: Units; words: Words } | null = null;

export function speakNow(chosen: Language): void {
  language = chosen;
  made = null;
}

export function currentWords(units: Units = metric): Words {
  if (made?.units !== units) made = { units, words: wordsIn(language, units) };
  return made.words;
}
