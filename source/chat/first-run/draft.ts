/** Answers as they are kept on disk between one start and the next: those that are answers no longer are asked again. */

import type { SwatchSoFar } from '../../planning/swatch-steps.ts';
import { jsonIn } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { type Answers, type Given, questionIds } from './answers.ts';
import { readGuide } from './guided-swatch.ts';
import { withAnswer } from './questions.ts';

/** With how far a swatch is that is being guided. */
export const draftOf = (answers: Answers, guide: SwatchSoFar | null = null): string =>
  `${JSON.stringify(guide ? { ...answers, guide } : answers, null, 2)}\n`;

export const readDraftGuide = (text: string): SwatchSoFar | null => readGuide(parse(text)?.guide);

/** Never fails: whatever is no answer is passed over. */
export function readDraft(text: string, words: Words): Answers {
  const stored = parse(text);
  let answers: Answers = {};
  for (const id of questionIds) {
    const given = stored?.[id];
    if (!isGiven(given)) continue;
    const after = withAnswer(answers, id, { line: given.line, length: given.length }, words);
    if (after.ok) answers = after.value;
  }
  return answers;
}

const parse = (text: string) => (jsonIn(text) ?? null) as Readonly<Record<string, unknown>> | null;

function isGiven(value: unknown): value is Given {
  const { line, length } = (value ?? {}) as Partial<Record<keyof Given, unknown>>;
  return typeof line === 'string' && (length === 'cm' || length === 'in');
}
