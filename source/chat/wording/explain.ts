/** Answers to `what is …?` and `why …?`. */

import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { namesOf, titleOf } from '../named.ts';
import { nearest } from '../nearest.ts';
import type { Reason } from '../reason.ts';
import { findReason, reasons } from '../reasons.ts';
import type { Word } from '../word.ts';
import { findWord, tradeWords } from '../words.ts';

const listed = (titles: readonly string[]): string => `${titles.join(', ')}.`;

/** The word asked for, or all of them. */
export function explainWord(about: string | null, words: Words): readonly string[] {
  if (about === null) {
    return [
      words.say`Ask what any of these means, such as: what is a swatch?`,
      listed(tradeWords.map((one) => titleOf(one, words)).toSorted((a, b) => a.localeCompare(b))),
    ];
  }
  const word = findWord(about, words);
  if (word) return [meaningOf(word, words)];
  const near = nearest(
    subjectOf(about),
    tradeWords.flatMap((one) => namesOf(one, words)),
  );
  return [
    near === null
      ? words.say`${subjectOf(about)} is not among the words here. Type words to see them all.`
      : words.say`${subjectOf(about)} is not among the words here. Did you mean ${near}?`,
  ];
}

const meaningOf = (word: Word, words: Words): string =>
  `${capital(titleOf(word, words))}: ${word.means(words)}`;

/** Why it is so, with the numbers of this bag; or all that can be asked. */
export function explainWhy(about: string | null, plan: Plan, words: Words): readonly string[] {
  const topics = listed(reasons.map((one) => titleOf(one, words)));
  if (about === null) return [words.say`Ask why of any of these, such as: why 3 times the width?`, topics];
  const reason = findReason(about, words);
  if (reason) return reasonLines(reason, plan, words);
  const word = findWord(about, words);
  if (word) return [meaningOf(word, words), words.say`Why it is so is not said here. Ask why of: ${topics}`];
  return [words.say`That is not among the reasons here. Ask why of: ${topics}`];
}

function reasonLines(
  { rule, formula, here, source, ...named }: Reason,
  plan: Plan,
  words: Words,
): readonly string[] {
  const numbers = here?.(plan, words) ?? null;
  return [
    `${capital(titleOf(named, words))}. ${rule(words)}`,
    ...(formula ? [`  ${formula(words)}`] : []),
    ...(numbers === null ? [] : [`  ${words.say`This bag: ${numbers}.`}`]),
    `  ${words.say`Source: ${source(words)}.`}`,
  ];
}

/** What a question is about: `what is a swach?` asks of a swach. */
const subjectOf = (about: string): string =>
  about
    .replace(/[?!.]+$/, '')
    .replace(/^(?:(?:is|are|does|do|an?|the|ist|sind|heißt|bedeutet|eine?|der|die|das)\s+)+/i, '')
    .replace(/\s+(?:means?|mean)$/i, '')
    .trim();

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
