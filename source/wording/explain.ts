/**
 * Answers to `what is …?` and `why …?`: the words of the trade, each explained in a sentence or three, and the rules and
 * formulas of the craft with this bag's own numbers. Both are found by any of their names, singular or plural.
 */
import type { Plan } from '../planning/plan.ts';
import { nearest } from '../shared/nearest.ts';
import { findNamed, type Named, namesOf, titleOf } from './named.ts';
import type { Reason } from './reason.ts';
import { sizeReasons, yarnReasons } from './reasons-plan.ts';
import { benchReasons, careReasons, handReasons } from './reasons-work.ts';
import { englishWords, type Words } from './words.ts';

export const reasons = [...sizeReasons, ...benchReasons, ...handReasons, ...yarnReasons, ...careReasons].map(
  (reason): Reason & Named => ({ ...reason, names: (words) => words.reasons[reason.id].names }),
);

/** The topic that a question speaks of: `width`, `why 3 times the width?`. */
export const findReason = (text: string, words: Words): (Reason & Named) | null =>
  findNamed(reasons, text, words);

/** A word of the trade. */
interface Word extends Named {
  readonly id: keyof Words['glossary'];
}

export const tradeWords: readonly Word[] = (
  Object.keys(englishWords.glossary) as (keyof Words['glossary'])[]
).map((id) => ({ id, names: ({ glossary }) => glossary[id].names }));

export const meaningOf = ({ id }: Word, { glossary }: Words): string => glossary[id].means;

/** The word that `text` names or speaks of: `swatch`, `the swatches`, `what is a swatch?`. */
export const findWord = (text: string, words: Words): Word | null => findNamed(tradeWords, text, words);

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

interface ReasonTold {
  readonly rule: string;
  readonly formula?: string;
  readonly source?: string;
}

function reasonLines(reason: Reason & Named, plan: Plan, words: Words): readonly string[] {
  const { said, sources, ...told } = words.reasons;
  const { rule, formula, source = sources[reason.source ?? 'commonPractice'] }: ReasonTold = told[reason.id];
  const numbers = reason.here?.(plan, words) ?? null;
  return [
    `${capital(titleOf(reason, words))}. ${rule}`,
    ...(formula === undefined ? [] : [`  ${formula}`]),
    ...(numbers === null ? [] : [`  ${said.thisBag(numbers)}`]),
    `  ${said.source(source)}`,
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
