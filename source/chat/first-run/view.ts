/** The question that stands on the screen, as words: a screen sets them, a reader without one prints them. */
import { namesOn } from '../../planning/shelf.ts';
import { type SwatchStep, swatchSteps } from '../../planning/swatch-steps.ts';
import type { Words } from '../../wording/words.ts';
import type { QuestionId } from './answers.ts';
import { askedIn, guidedStep, type Interview, planIn } from './interview.ts';
import { valuesOf } from './questions.ts';
import { askFor, examplesOf, sayGuided, showAnswer } from './say.ts';

interface InterviewView {
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
  const step = guidedStep(interview);
  if (step) return guidedView(step, interview);
  const asked = askedIn(interview);
  const values = valuesOf(answers, words);
  const shown = showAnswer(at, values, words);
  return {
    place: words.firstRun.place(asked.indexOf(at) + 1, asked.length),
    ask: askFor(at, values, words),
    asIn: sayExamples(
      [
        ...onShelf(at, interview),
        ...examplesOf(at, words.units, words),
        ...(at === 'swatch' ? [words.swatchGuide.offer] : []),
      ],
      words,
    ),
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

const typed: ReadonlySet<SwatchStep['is']> = new Set(['dial', 'width', 'height', 'aside', 'row-yarn']);
const wanted: ReadonlySet<SwatchStep['is']> = new Set(['width', 'height']);

/** A step of the swatch that is guided: an instruction to confirm, or a measure to type. */
function guidedView(step: SwatchStep, { answers, words, guide }: Interview): InterviewView {
  const { swatchGuide: say } = words;
  return {
    place: say.place((guide?.at ?? 0) + 1, swatchSteps(valuesOf(answers, words).bed).length),
    ask: sayGuided(step, words),
    asIn: typed.has(step.is) ? say.asIn[step.is as keyof typeof say.asIn] : null,
    enter: wanted.has(step.is) ? null : typed.has(step.is) ? say.passesBy : say.confirms,
    also: say.also,
  };
}

function planView(interview: Interview): InterviewView {
  const { atPlan: say } = interview.words.firstRun;
  const { place, also } = say;
  return planIn(interview).ok
    ? { place, ask: say.ask, asIn: null, enter: interview.warned ? say.allTheSame : say.enter, also }
    : { place, ask: say.impossible, asIn: say.change, enter: null, also };
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
