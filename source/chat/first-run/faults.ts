import type { PlanFault } from '../../planning/fault.ts';
import { exhaustive } from '../../shared/result.ts';
import { formatFault } from '../../wording/faults.ts';
import { amountOf, quote } from '../../wording/values.ts';
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
export function formatInterviewFault(
  fault: InterviewFault,
  words: Words,
  asked: readonly QuestionId[],
): string {
  switch (fault.code) {
    case 'first-run/not-understood':
      return notUnderstood(fault, words);
    case 'first-run/which-is-which':
      return words.firstRun.whichIsWhich(examplesOf('swatch', words.units, words)[0] ?? '');
    case 'first-run/yarn-without-name':
      return words.firstRun.yarnWithoutName;
    case 'first-run/question-as-name':
      return words.firstRun.questionAsName(quote(fault.name));
    case 'first-run/odd-yarn-name':
      return words.firstRun.oddYarnName(quote(fault.name), quote(words.firstRun.ballsExample));
    case 'first-run/not-a-measure':
      return words.swatchGuide.notAMeasure[fault.step];
    case 'first-run/enter-when-done':
      return words.swatchGuide.enterWhenDone;
    case 'first-run/same-yarn':
      return words.firstRun.sameYarn(quote(fault.yarn));
    case 'first-run/more-stripes-than-yarns':
      return words.firstRun.moreStripes(fault.yarns);
    case 'first-run/bed-too-short':
      return words.firstRun.bedTooShort(words.amounts.length(fault.widthCm));
    case 'first-run/no-such-answer':
      return words.firstRun.noSuchAnswer(
        quote(fault.word),
        [...new Set([...asked, ...unasked])].map((id) => labelOf(id, words)),
      );
    case 'first-run/nothing-before':
      return words.firstRun.nothingBefore;
    case 'first-run/not-units':
      return words.firstRun.notUnits;
    case 'first-run/not-a-choice':
      return words.firstRun.notAChoice(quote(fault.word));
    case 'brief/too-small':
      return words.firstRun.tooSmall(limit(fault.field, fault.least, words));
    case 'brief/too-large':
      return words.firstRun.tooLarge(limit(fault.field, fault.most, words));
    case 'brief/not-whole':
      return words.firstRun.notWhole;
    case 'brief/not-even':
      return words.firstRun.notEven;
    case 'brief/not-a-colour':
      return words.firstRun.notAColour;
    case 'brief/too-short':
      return words.firstRun.tooShort;
    case 'brief/too-long':
      return words.firstRun.tooLong(fault.most);
    case 'brief/not-a-name':
      return words.firstRun.notAName;
    case 'brief/wrong-type':
      return words.firstRun.wrongType;
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
  if (word !== null) return words.firstRun.notUnderstood(quote(word), quote(example));
  switch (question) {
    case 'size':
      return words.firstRun.give.size(quote(example));
    case 'bed':
      return words.firstRun.give.bed(quote(example));
    case 'swatch':
      return words.firstRun.give.swatch(quote(example));
    case 'stripes':
      return words.firstRun.give.stripes;
    case 'slant':
      return words.firstRun.give.slant;
    case 'cord':
    case 'edges':
    case 'name':
    case 'first':
    case 'second':
      return words.firstRun.give.other(quote(example));
    default:
      return exhaustive(question);
  }
}
