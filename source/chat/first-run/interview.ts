/** The questions as a state, and what a typed line does to it. Nothing is performed here: the effect is part of the answer. */
import type { PlanFault } from '../../planning/fault.ts';
import type { Plan } from '../../planning/plan.ts';
import { emptyShelf, type Shelf } from '../../planning/shelf.ts';
import type { SwatchSoFar, SwatchStep } from '../../planning/swatch-steps.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { unitsFor } from '../../shared/units.ts';
import { explainWord } from '../../wording/explain.ts';
import type { Words } from '../../wording/words.ts';
import { answer, type Said } from '../talk.ts';
import { type AnswerFault, type Answers, fromShelf, type Length, type QuestionId } from './answers.ts';
import { planOfValues } from './brief-of.ts';
import { formatInterviewFault, type InterviewFault } from './faults.ts';
import { doubtsToTell, sayLookAgain, sayShortPlan } from './first-plan.ts';
import { answerOf, asksForGuide, beginGuide, goOn, swatchStepOf } from './guided-swatch.ts';
import {
  type AnswerPart,
  askedOf,
  partsOf,
  questionIn,
  questions,
  valuesOf,
  withAnswer,
} from './questions.ts';
import { type InterviewWish, isUnsure, readInterviewLine } from './read-line.ts';
import { sayAnswers, sayGiven, sayGuided } from './say.ts';

export interface Interview {
  readonly answers: Answers;
  /** The question to answer now; `plan` once all are answered. */
  readonly at: QuestionId | 'plan';
  /** Bare numbers mean their units. */
  readonly words: Words;
  /** Answers may name what lies on it. */
  readonly shelf: Shelf;
  /** The swatch that is being knitted by guidance; null where none is. */
  readonly guide: SwatchSoFar | null;
  /** What speaks against the bag was said, and Enter was asked for once more. */
  readonly warned?: true;
}

/** What has to be done outside. */
export type Effect =
  /** Keeps the brief, in this file where one is named, and begins the bag. */
  | { readonly kind: 'begin'; readonly out: string | null }
  | { readonly kind: 'units'; readonly length: Length }
  | { readonly kind: 'practice' | 'cancel' | 'quit' };

export interface InterviewUpdate {
  readonly interview: Interview;
  readonly lines: readonly Said[];
  readonly effect: Effect | null;
}

/** Goes on with the first question that has no answer. */
export function beginInterview(
  answers: Answers,
  words: Words,
  { shelf, guide }: Partial<Pick<Interview, 'shelf' | 'guide'>> = {},
): Interview {
  const open = askedOf(answers, words).find((id) => answers[id] === undefined);
  return { answers, at: open ?? 'plan', words, shelf: shelf ?? emptyShelf, guide: guide ?? null };
}

/** The step of the swatch that is asked for now; null where none is. */
export const guidedStep = ({ at, guide, answers, words }: Interview): SwatchStep | null =>
  at === 'swatch' && guide ? swatchStepOf(valuesOf(answers, words).bed, guide) : null;

export const askedIn = ({ answers, words }: Interview): readonly QuestionId[] => askedOf(answers, words);

/** The bag that the answers so far make, with what is usual for the rest, or why they make none. */
export const planIn = ({ answers, words }: Interview): Result<Plan, AnswerFault | PlanFault> =>
  planOfValues(valuesOf(answers, words));

/** The plan, once all is answered, or why there is none. */
export function planLines(interview: Interview): readonly Said[] {
  if (interview.at !== 'plan') return [];
  const { answers, words } = interview;
  const plan = planIn(interview);
  return plan.ok
    ? sayShortPlan(plan.value, valuesOf(answers, words), words)
    : [faultLine(interview, plan.fault)];
}

export const answersIn = (interview: Interview): readonly string[] => {
  const { answers, words } = interview;
  return sayAnswers(askedIn(interview), answers, valuesOf(answers, words), words);
};

const faultLine = (interview: Interview, fault: InterviewFault): Said => ({
  tone: 'fault',
  text: formatInterviewFault(fault, interview.words, askedIn(interview)),
});

const update = (
  interview: Interview,
  lines: readonly Said[],
  effect: Effect | null = null,
): InterviewUpdate => ({ interview, lines, effect });

export function updateInterview(interview: Interview, typed: string): InterviewUpdate {
  const done = carryOut(interview, readInterviewLine(typed));
  return done.ok ? done.value : update(interview, [faultLine(interview, done.fault)]);
}

function carryOut(interview: Interview, wish: InterviewWish): Result<InterviewUpdate, InterviewFault> {
  const { at } = interview;
  const step = guidedStep(interview);
  if (step && wish.kind === 'answer') return goOnGuided(interview, step, wish.line);
  if (step && wish.kind === 'back') return succeed(backGuided(interview));
  switch (wish.kind) {
    case 'answer':
      return at === 'plan' ? atThePlan(interview, wish.line) : give(interview, at, wish.line);
    case 'change':
      return change(interview, wish.text);
    case 'back':
      return back(interview);
    case 'answers':
      return succeed(update(interview, answer(...answersIn(interview))));
    case 'explain':
      return succeed(update(interview, answer(...explained(interview, wish.about))));
    case 'help':
      return succeed(update(interview, answer(...interview.words.firstRun.howToAnswer)));
    case 'units':
      return takeUnits(interview, wish.word.toLowerCase());
    case 'save':
      return at === 'plan' ? begin(interview, wish.out) : give(interview, at, `save ${wish.out}`);
    case 'practice':
    case 'cancel':
    case 'quit':
      return succeed(update(interview, [], { kind: wish.kind }));
  }
}

const stopWords = ['stop', 'stopp'];

function backGuided(interview: Interview): InterviewUpdate {
  const { at } = interview.guide ?? beginGuide;
  return update({ ...interview, guide: at === 0 ? null : { ...interview.guide, at: at - 1 } }, []);
}

/** One step of the swatch further; the last makes the answer. */
function goOnGuided(
  interview: Interview,
  step: SwatchStep,
  typed: string,
): Result<InterviewUpdate, AnswerFault> {
  const { words, answers } = interview;
  const guide = interview.guide ?? beginGuide;
  if (stopWords.includes(typed.toLowerCase())) return succeed(update({ ...interview, guide: null }, []));
  const { bed } = valuesOf(answers, words);
  const next = goOn(bed, guide, typed, words.units.length);
  if (!next.ok) return next;
  const done = { tone: 'done', text: sayGuided(step, words) } as const;
  const line = answerOf(bed, next.value);
  if (line === null) return succeed(update({ ...interview, guide: next.value }, [done]));
  const after = withAnswer(answers, 'swatch', { line, length: words.units.length }, words);
  return after.ok ? succeed(taken({ ...interview, guide: null }, after.value, ['swatch'])) : after;
}

/** An empty line, or one that says nobody knows, keeps the answer that is there, or else takes what is usual. */
function give(interview: Interview, id: QuestionId, typed: string): Result<InterviewUpdate, AnswerFault> {
  const { answers, words, shelf } = interview;
  if (id === 'swatch' && asksForGuide(typed))
    return succeed(update({ ...interview, at: id, guide: interview.guide ?? beginGuide }, []));
  const { length } = words.units;
  const line = id !== 'name' && isUnsure(typed) ? '' : (fromShelf(id, typed, shelf) ?? typed);
  const given = line === '' && answers[id] ? answers[id] : { line, length };
  const after = withAnswer(answers, id, given, words);
  if (id === 'name' || !after.ok) {
    const parts = partsOf(line, id, length) ?? [];
    const ids = parts.map((part) => part.id);
    const all = ids.length > 1 || ids[0] !== id ? giveAll(interview, parts) : null;
    if (all?.ok && ids.length > 0) return succeed(taken(interview, all.value, ids));
  }
  return after.ok ? succeed(taken(interview, after.value, [id])) : after;
}

function giveAll({ answers, words }: Interview, parts: readonly AnswerPart[]): Result<Answers, AnswerFault> {
  return parts.reduce<Result<Answers, AnswerFault>>(
    (before, { id, line }) =>
      before.ok ? withAnswer(before.value, id, { line, length: words.units.length }, words) : before,
    succeed(answers),
  );
}

function taken(
  { words, shelf, guide }: Interview,
  answers: Answers,
  given: readonly QuestionId[],
): InterviewUpdate {
  const next = beginInterview(answers, words, { shelf, guide });
  const values = valuesOf(answers, words);
  const said = given.map((id) => sayGiven(id, values, words));
  return update(next, [...said, ...planLines(next)]);
}

function change(interview: Interview, text: string): Result<InterviewUpdate, InterviewFault> {
  const named = questionIn(text, askedIn(interview), interview.words);
  if (!named) return fail({ code: 'first-run/no-such-answer', word: text });
  const { id, rest } = named;
  return rest === '' ? succeed(update({ ...interview, at: id }, [])) : give(interview, id, rest);
}

function back(interview: Interview): Result<InterviewUpdate, InterviewFault> {
  const asked = askedIn(interview);
  const before = asked[(interview.at === 'plan' ? asked.length : asked.indexOf(interview.at)) - 1];
  return before
    ? succeed(update({ ...interview, at: before }, []))
    : fail({ code: 'first-run/nothing-before' });
}

/** The word of the trade that the question is about. */
function explained({ at, words }: Interview, about: string | null): readonly string[] {
  if (about !== '') return explainWord(about, words);
  const term = at === 'plan' ? 'plan' : questions[at].term;
  return term === null ? [words.firstRun.anyName] : explainWord(term, words);
}

function takeUnits(interview: Interview, word: string): Result<InterviewUpdate, InterviewFault> {
  if (word !== 'cm' && word !== 'in') return fail({ code: 'first-run/not-units', word });
  const after = { ...interview, words: interview.words.inUnits(unitsFor(word)) };
  return succeed(update(after, planLines(after), { kind: 'units', length: word }));
}

const yes = ['', 'yes', 'y', 'ok', 'ja', 'j'];
const surely = ['begin', 'start', 'beginnen', 'los'];

function atThePlan(interview: Interview, line: string): Result<InterviewUpdate, InterviewFault> {
  if (surely.includes(line.toLowerCase())) return begin(interview, null);
  if (yes.includes(line.toLowerCase())) return warn(interview) ?? begin(interview, null);
  return questionIn(line, askedIn(interview), interview.words)
    ? change(interview, line)
    : fail({ code: 'first-run/not-a-choice', word: line });
}

/** Once, where the bag may come to grief; null where nothing speaks against it. */
function warn(interview: Interview): Result<InterviewUpdate, never> | null {
  const plan = planIn(interview);
  const doubts = plan.ok && !interview.warned ? doubtsToTell(plan.value) : [];
  if (doubts.length === 0) return null;
  return succeed(update({ ...interview, warned: true }, [sayLookAgain(doubts, interview.words)]));
}

function begin(interview: Interview, out: string | null): Result<InterviewUpdate, AnswerFault | PlanFault> {
  const plan = planIn(interview);
  return plan.ok ? succeed(update(interview, [], { kind: 'begin', out })) : plan;
}
