/** The question that stands on the screen, as words: a screen sets them, a reader without one prints them. */
import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
import { unitsFor } from '../../shared/units.ts';
import { askFor, examplesOf, showAnswer } from '../wording/first-run.ts';
import { planOfValues } from './brief-of.ts';
import { askedIn, type Interview } from './interview.ts';
import { valuesOf } from './questions.ts';

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
  const { at, answers, length } = interview;
  if (at === 'plan') return planView(interview);
  const asked = askedIn(interview);
  const values = valuesOf(answers, length);
  const units = unitsFor(length);
  const shown = showAnswer(at, values, units);
  return {
    place: say`question ${asked.indexOf(at) + 1} of ${asked.length}`,
    ask: askFor(at, values),
    asIn: examplesOf(at, units).reduce((one, other) => say`${one}, or ${other}`),
    enter: answers[at] ? say`keeps ${shown}` : say`takes ${shown}`,
    also: say`? explains; back, change, answers, practice, help, quit`,
  };
}

function planView({ answers, length }: Interview): InterviewView {
  const plan = planOfValues(valuesOf(answers, length));
  return {
    place: say`the plan`,
    ask: plan.ok
      ? say`Is this the bag you want?`
      : say`It cannot be made like this: change one of your answers.`,
    asIn: plan.ok ? null : say`change size`,
    enter: plan.ok ? say`keeps the brief and begins` : null,
    also: say`change size, or another answer; answers, practice, help, quit`,
  };
}

/** The bag that the answers so far make, with what is usual for the rest; null where they make none. */
export function planAsAnswered({ answers, length }: Interview): Plan | null {
  const plan = planOfValues(valuesOf(answers, length));
  return plan.ok ? plan.value : null;
}

/** For a reader without a screen. */
export function questionLines(interview: Interview): readonly string[] {
  const { place, ask, asIn, enter } = interviewView(interview);
  return [
    `${place}: ${ask}`,
    ...(asIn === null ? [] : [say`For example: ${asIn}`]),
    ...(enter === null ? [] : [say`An empty line ${enter}.`]),
  ];
}
