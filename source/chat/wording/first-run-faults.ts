import type { PlanFault } from '../../planning/fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import type { AnswerFault, QuestionId } from '../first-run/answers.ts';
import { formatFault } from './faults.ts';
import { amountOf } from './fields.ts';
import { examplesOf, labelOf } from './first-run.ts';
import { quote } from './values.ts';

/** Why a line does nothing. */
export type InterviewFault =
  | AnswerFault
  | PlanFault
  | { readonly code: 'first-run/no-such-answer'; readonly word: string }
  | { readonly code: 'first-run/nothing-before' }
  | { readonly code: 'first-run/not-units'; readonly word: string }
  | { readonly code: 'first-run/not-a-choice'; readonly word: string };

/** Why a line is not taken: one sentence. The question is asked again below it. */
export function formatInterviewFault(
  fault: InterviewFault,
  words: Words,
  asked: readonly QuestionId[],
): string {
  switch (fault.code) {
    case 'first-run/not-understood':
      return notUnderstood(fault, words);
    case 'first-run/which-is-which':
      return words.say`Say which number is which, as in: ${examplesOf('swatch', words.units, words)[0] ?? ''}.`;
    case 'first-run/yarn-without-name':
      return words.say`The yarn needs a name of its own, first in the line.`;
    case 'first-run/odd-yarn-name':
      return words.say`Is the yarn called ${quote(fault.name)}? Then answer with that in quotes; balls and lengths as in ${quote(words.say`2 balls of 50 g, 120 m each`)}.`;
    case 'first-run/same-yarn':
      return words.say`Both yarns are called ${quote(fault.yarn)}: give one of them another name.`;
    case 'first-run/no-such-answer':
      return words.say`There is no answer ${quote(fault.word)} to change: choose ${words.amounts.choice(asked.map((id) => labelOf(id, words)))}, or its number.`;
    case 'first-run/nothing-before':
      return words.say`This is the first question.`;
    case 'first-run/not-units':
      return words.say`Type units cm, or units in.`;
    case 'first-run/not-a-choice':
      return words.say`${quote(fault.word)} does nothing here: press Enter to begin, or type change and what to change.`;
    case 'brief/too-small':
      return words.say`That is too little: at least ${limit(fault.field, fault.least, words)}.`;
    case 'brief/too-large':
      return words.say`That is too much: at most ${limit(fault.field, fault.most, words)}.`;
    case 'brief/not-whole':
      return words.say`Give a whole number, without a fraction.`;
    case 'brief/not-even':
      return words.say`Give an even number of rows, so that both yarns wait on the home side.`;
    case 'brief/not-a-colour':
      return words.say`A colour is # and six of the figures 0-9 and letters a-f, such as #6b2d5c.`;
    case 'brief/too-short':
      return words.say`The name is empty.`;
    case 'brief/too-long':
      return words.say`The name is too long: at most ${words.count(fault.most, 'character')}.`;
    case 'brief/not-a-name':
      return words.say`That cannot be a name: it has signs in it that cannot be seen.`;
    case 'brief/wrong-type':
      return words.say`That cannot be used here: give another.`;
    default:
      return formatFault(fault, words);
  }
}

function limit(field: string, amount: number, words: Words): string {
  return field.endsWith('Cm') ? words.amounts.length(amount) : amountOf(field, amount, words);
}

function notUnderstood(
  { question, word }: Extract<InterviewFault, { readonly code: 'first-run/not-understood' }>,
  words: Words,
): string {
  const example = examplesOf(question, words.units, words)[0] ?? '';
  if (word !== null)
    return words.say`I do not know what ${quote(word)} means here: answer as in ${quote(example)}.`;
  switch (question) {
    case 'size':
      return words.say`Give two lengths, as in ${quote(example)}.`;
    case 'bed':
      return words.say`Give the number of needles and how far apart they are, as in ${quote(example)}.`;
    case 'swatch':
      return words.say`Give stitches and rows, and the width and height they measure, as in ${quote(example)}.`;
    case 'stripes':
      return words.say`Give one number of rows, or two.`;
    case 'name':
    case 'first':
    case 'second':
      return words.say`Answer as in ${quote(example)}.`;
    default:
      return exhaustive(question);
  }
}
