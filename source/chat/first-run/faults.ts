import type { PlanFault } from '../../planning/fault.ts';
import { amountOf, quote } from '../../wording/brief-faults.ts';
import { type SayingsBy, sayBy } from '../../wording/by-kind.ts';
import { formatFault } from '../../wording/faults.ts';
import type { Words } from '../../wording/words.ts';
import { type AnswerFault, type QuestionId, unasked } from './answers.ts';
import { examplesOf, labelOf } from './say.ts';

/** Why a line does nothing. */
export type InterviewFault =
  | AnswerFault
  | PlanFault
  | { readonly code: 'first-run/no-such-answer'; readonly word: string }
  | { readonly code: 'first-run/nothing-before' }
  | { readonly code: 'first-run/not-units'; readonly word: string }
  | { readonly code: 'first-run/not-a-choice'; readonly word: string };

/** Why a line is not taken: one sentence. The question is asked again below it. */
export const formatInterviewFault = (
  fault: InterviewFault,
  words: Words,
  asked: readonly QuestionId[],
): string => (isOwn(fault) ? sayBy('code', ownFaults, fault, words, asked) : formatFault(fault, words));

/** What is wrong with a brief is said in other words of an answer. */
type OwnFault = Extract<
  InterviewFault,
  {
    readonly code:
      | `first-run/${string}`
      | 'brief/too-small'
      | 'brief/too-large'
      | 'brief/not-whole'
      | 'brief/not-even'
      | 'brief/not-a-colour'
      | 'brief/too-short'
      | 'brief/too-long'
      | 'brief/not-a-name'
      | 'brief/wrong-type';
  }
>;

const isOwn = (fault: InterviewFault): fault is OwnFault => Object.hasOwn(ownFaults, fault.code);

const ownFaults: SayingsBy<'code', OwnFault, [words: Words, asked: readonly QuestionId[]]> = {
  'first-run/not-understood': (fault, words) => notUnderstood(fault, words),
  'first-run/which-is-which': (_, words) =>
    words.firstRun.whichIsWhich(examplesOf('swatch', words.units, words)[0] ?? ''),
  'first-run/yarn-without-name': (_, words) => words.firstRun.yarnWithoutName,
  'first-run/question-as-name': ({ name }, words) => words.firstRun.questionAsName(quote(name)),
  'first-run/odd-yarn-name': ({ name }, words) =>
    words.firstRun.oddYarnName(quote(name), quote(words.firstRun.ballsExample)),
  'first-run/not-a-measure': ({ step }, words) => words.swatchGuide.notAMeasure[step],
  'first-run/enter-when-done': (_, words) => words.swatchGuide.enterWhenDone,
  'first-run/same-yarn': ({ yarn }, words) => words.firstRun.sameYarn(quote(yarn)),
  'first-run/more-stripes-than-yarns': ({ yarns }, words) => words.firstRun.moreStripes(yarns),
  'first-run/bed-too-short': ({ widthCm }, words) =>
    words.firstRun.bedTooShort(words.amounts.length(widthCm)),
  'first-run/no-such-answer': ({ word }, words, asked) =>
    words.firstRun.noSuchAnswer(
      quote(word),
      [...new Set([...asked, ...unasked])].map((id) => labelOf(id, words)),
    ),
  'first-run/nothing-before': (_, words) => words.firstRun.nothingBefore,
  'first-run/not-units': (_, words) => words.firstRun.notUnits,
  'first-run/not-a-choice': ({ word }, words) => words.firstRun.notAChoice(quote(word)),
  'brief/too-small': ({ field, least }, words) => words.firstRun.tooSmall(limit(field, least, words)),
  'brief/too-large': ({ field, most }, words) => words.firstRun.tooLarge(limit(field, most, words)),
  'brief/not-whole': (_, words) => words.firstRun.notWhole,
  'brief/not-even': (_, words) => words.firstRun.notEven,
  'brief/not-a-colour': (_, words) => words.firstRun.notAColour,
  'brief/too-short': (_, words) => words.firstRun.tooShort,
  'brief/too-long': ({ most }, words) => words.firstRun.tooLong(most),
  'brief/not-a-name': (_, words) => words.firstRun.notAName,
  'brief/wrong-type': (_, words) => words.firstRun.wrongType,
};

function limit(field: string, amount: number, words: Words): string {
  return field.endsWith('Cm') ? words.amounts.length(amount) : amountOf(field, amount, words);
}

function notUnderstood(
  { question, word }: Extract<InterviewFault, { readonly code: 'first-run/not-understood' }>,
  words: Words,
): string {
  const example = examplesOf(question, words.units, words)[0] ?? '';
  if (word !== null) return words.firstRun.notUnderstood(quote(word), quote(example));
  const { give } = words.firstRun;
  return (Object.hasOwn(give, question) ? give[question as keyof typeof give] : give.other)(quote(example));
}
