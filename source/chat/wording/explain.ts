/** Answers to `what is …?` and `why …?`. */
import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
import type { Units } from '../../shared/units.ts';
import { namesOf, titleOf } from '../named.ts';
import { nearest } from '../nearest.ts';
import type { Reason } from '../reason.ts';
import { findReason, reasons } from '../reasons.ts';
import type { Word } from '../word.ts';
import { findWord, words } from '../words.ts';

const listed = (titles: readonly string[]): string => `${titles.join(', ')}.`;

/** The word asked for, or all of them. */
export function explainWord(about: string | null): readonly string[] {
  if (about === null) {
    return [
      say`Ask what any of these means, such as: what is a swatch?`,
      listed(words.map(titleOf).toSorted((a, b) => a.localeCompare(b))),
    ];
  }
  const word = findWord(about);
  if (word) return [meaningOf(word)];
  const near = nearest(subjectOf(about), words.flatMap(namesOf));
  return [
    near === null
      ? say`${subjectOf(about)} is not among the words here. Type words to see them all.`
      : say`${subjectOf(about)} is not among the words here. Did you mean ${near}?`,
  ];
}

const meaningOf = (word: Word): string => `${capital(titleOf(word))}: ${word.means()}`;

/** Why it is so, with the numbers of this bag; or all that can be asked. */
export function explainWhy(about: string | null, plan: Plan, units: Units): readonly string[] {
  const topics = listed(reasons.map(titleOf));
  if (about === null) return [say`Ask why of any of these, such as: why 3 times the width?`, topics];
  const reason = findReason(about);
  if (reason) return reasonLines(reason, plan, units);
  const word = findWord(about);
  if (word) return [meaningOf(word), say`Why it is so is not said here. Ask why of: ${topics}`];
  return [say`That is not among the reasons here. Ask why of: ${topics}`];
}

function reasonLines(
  { rule, formula, here, source, ...named }: Reason,
  plan: Plan,
  units: Units,
): readonly string[] {
  const numbers = here?.(plan, units) ?? null;
  return [
    `${capital(titleOf(named))}. ${rule()}`,
    ...(formula ? [`  ${formula()}`] : []),
    ...(numbers === null ? [] : [`  ${say`This bag: ${numbers}.`}`]),
    `  ${say`Source: ${source()}.`}`,
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
