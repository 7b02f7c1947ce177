/** The question that stands on the screen, as words: a screen sets them, a reader without one prints them. */
import type { Plan } from '../../planning/plan.ts';
import { namesOn } from '../../planning/shelf.ts';
import type { Words } from '../../wording/words.ts';
import type { QuestionId } from './answers.ts';
import { planOfValues } from './brief-of.ts';
import { askedIn, type Interview } from './interview.ts';
import { valuesOf } from './questions.ts';
import { askFor, examplesOf, showAnswer } from './say.ts';

export interface InterviewView {
  /** Where it is: `question 2 of 7`. */
  readonly place: string;
  readonly ask: string;
  /** Answers that work when typed; null where there is nothing to answer. */
  readonly asIn: string | null;
  /** What Enter does; null where it does nothing. */
  readonly enter: string | null;
  /** Other things to type. */
  readonly also: string;
}

export function interviewView(interview: Interview): InterviewView {
  const { at, answers, words } = interview;
  if (at === 'plan') return planView(interview);
  const asked = askedIn(interview);
  const values = valuesOf(answers, words);
  const shown = showAnswer(at, values, words);
  return {
    place: words.firstRun.place(asked.indexOf(at) + 1, asked.length),
    ask: askFor(at, values, words),
    asIn: sayExamples([...onShelf(at, interview), ...examplesOf(at, words.units, words)], words),
    enter: answers[at] ? words.firstRun.keeps(shown) : words.firstRun.takes(shown),
    also: words.firstRun.also,
  };
}

/** What lies on the shelf for a question. */
function onShelf(at: QuestionId, { shelf, words }: Interview): readonly string[] {
  const kind = at === 'first' || at === 'second' ? 'yarn' : at === 'bed' || at === 'swatch' ? at : null;
  const names = kind ? namesOn(shelf, kind) : [];
  return names.length === 0 ? [] : [words.shelf.takes(names)];
}

const sayExamples = (examples: readonly string[], { firstRun, amounts }: Words): string =>
  examples.length > 2 ? amounts.choice(examples) : examples.reduce((one, other) => firstRun.or(one, other));

function planView({ answers, words, warned }: Interview): InterviewView {
  const plan = planOfValues(valuesOf(answers, words));
  return {
    place: words.firstRun.atPlan.place,
    ask: plan.ok ? words.firstRun.atPlan.ask : words.firstRun.atPlan.impossible,
    asIn: plan.ok ? null : words.firstRun.atPlan.change,
    enter: plan.ok ? (warned ? words.firstRun.atPlan.allTheSame : words.firstRun.atPlan.enter) : null,
    also: words.firstRun.atPlan.also,
  };
}

/** The bag that the answers so far make, with what is usual for the rest; null where they make none. */
export function planAsAnswered({ answers, words }: Interview): Plan | null {
  const plan = planOfValues(valuesOf(answers, words));
  return plan.ok ? plan.value : null;
}

/** For a reader without a screen. */
export function questionLines(interview: Interview): readonly string[] {
  const { place, ask, asIn, enter } = interviewView(interview);
  return [
    `${place}: ${ask}`,
    ...(asIn === null ? [] : [interview.words.firstRun.forExample(asIn)]),
    ...(enter === null ? [] : [interview.words.firstRun.emptyLine(enter)]),
  ];
}
