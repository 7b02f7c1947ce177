/** Answers to `what is …?` and `why …?`. */

import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { namesOf, titleOf } from '../named.ts';
import { nearest } from '../nearest.ts';
import type { Reason } from '../reason.ts';
import { findReason, reasons } from '../reasons.ts';
import { findWord, meaningOf, tradeWords, type Word } from '../words.ts';

const listed = (titles: readonly string[]): string => `${titles.join(', ')}.`;

/** The word asked for, or all of them. */
export function explainWord(about: string | null, words: Words): readonly string[] {
  if (about === null) {
    return [
      words.reasons.said.whatIs,
      listed(tradeWords.map((one) => titleOf(one, words)).toSorted((a, b) => a.localeCompare(b))),
    ];
  }
  const word = findWord(about, words);
  if (word) return [explained(word, words)];
  const near = nearest(
    subjectOf(about),
    tradeWords.flatMap((one) => namesOf(one, words)),
  );
  return [
    near === null
      ? words.reasons.said.noWord(subjectOf(about))
      : words.reasons.said.noWordBut(subjectOf(about), near),
  ];
}

const explained = (word: Word, words: Words): string =>
  `${capital(titleOf(word, words))}: ${meaningOf(word, words)}`;

/** Why it is so, with the numbers of this bag; or all that can be asked. */
export function explainWhy(about: string | null, plan: Plan, words: Words): readonly string[] {
  const topics = listed(reasons.map((one) => titleOf(one, words)));
  if (about === null) return [words.reasons.said.whyOf, topics];
  const reason = findReason(about, words);
  if (reason) return reasonLines(reason, plan, words);
  const word = findWord(about, words);
  if (word) return [explained(word, words), words.reasons.said.onlyAWord(topics)];
  return [words.reasons.said.noReason(topics)];
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
    ...(numbers === null ? [] : [`  ${words.reasons.said.thisBag(numbers)}`]),
    `  ${words.reasons.said.source(source(words))}`,
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
