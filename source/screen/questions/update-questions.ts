/** What a message makes of the questions: keys type, a line answers, and a held Enter answers no more than one. */
import { planLines, updateInterview } from '../../chat/first-run/interview.ts';
import { steeringWords } from '../../chat/first-run/read-line.ts';
import type { Said } from '../../chat/talk.ts';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { filterPress, pressTiming } from '../keys/press-filter.ts';
import { isEmpty, typeKey } from '../parts/prompt.ts';
import { createStore, type Effects } from '../parts/store.ts';
import type { QuestionEffect, QuestionMessage, QuestionState, QuestionStore } from './question-state.ts';

type QuestionReaction = readonly [QuestionState, readonly QuestionEffect[]];

export function updateQuestions(state: QuestionState, message: QuestionMessage): QuestionReaction {
  switch (message.is) {
    case 'key':
      return takeKey(state, message.key, message.came);
    case 'line':
      return takeLine(state, message.text);
    case 'quit':
      return [{ ...state, end: { kind: message.how } }, []];
    case 'answers-kept':
      return [tellTrouble(state, message.trouble), []];
    case 'brief-kept': {
      const { kept } = message;
      return kept.ok
        ? [{ ...state, end: { kind: 'begin', kept: kept.value } }, []]
        : [withLines(state, [{ tone: 'fault', text: kept.fault }]), []];
    }
  }
}

const withLines = (state: QuestionState, lines: readonly Said[]): QuestionState => ({
  ...state,
  lines: [...state.lines, ...lines],
});

const tellTrouble = (state: QuestionState, trouble: string | null): QuestionState =>
  trouble === null || trouble === state.trouble
    ? state
    : { ...withLines(state, [{ tone: 'caution', text: trouble }]), trouble };

const complete = (text: string): readonly string[] =>
  text === '' ? [] : steeringWords.filter((word) => word.startsWith(text.toLowerCase()));

function takeKey(state: QuestionState, key: Key, came: Arrival): QuestionReaction {
  if (keyId(key) !== 'enter') return [{ ...state, prompt: typeKey(state.prompt, key, complete).prompt }, []];
  // Judged in any case: what is held may have begun on a line with text in it.
  const timing = { ...pressTiming, windowMs: state.pedalGapMs };
  const { state: presses, act } = filterPress(state.presses, key, came, timing);
  const judged = { ...state, presses };
  if (isEmpty(state.prompt) && act !== 'press') return [judged, []];
  const { prompt, line } = typeKey(state.prompt, key);
  return line === null ? [judged, []] : takeLine({ ...judged, prompt }, line);
}

function takeLine(state: QuestionState, text: string): QuestionReaction {
  const typed = text.trim();
  const { interview, lines, effect } = updateInterview(state.interview, typed);
  const told: readonly Said[] = typed === '' ? [] : [{ tone: 'typed', text: typed }];
  const after = withLines({ ...state, interview }, [...told, ...lines]);
  const keeping: readonly QuestionEffect[] =
    interview.answers === state.interview.answers && interview.guide === state.interview.guide
      ? []
      : [{ do: 'keep-answers', interview, first: true }];
  switch (effect?.kind) {
    case 'begin':
      return [after, [...keeping, { do: 'keep-brief', interview, out: effect.out, first: true }]];
    case 'units':
      return [after, [...keeping, { do: 'keep', change: { name: 'units', value: effect.length } }]];
    case 'practice':
      return [{ ...after, end: { kind: 'practice' } }, keeping];
    case 'cancel':
      return state.cannotCancel === null
        ? [{ ...after, end: { kind: 'cancelled' } }, keeping]
        : [withLines(after, [{ tone: 'fault', text: state.cannotCancel }]), keeping];
    case 'quit':
      return [{ ...after, end: { kind: 'left' } }, keeping];
    default:
      return [after, keeping];
  }
}

/** What stands above the first question. */
export const openingLines = (state: QuestionState): QuestionState =>
  withLines(state, planLines(state.interview));

type QuestionEffects = Effects<QuestionState, QuestionMessage, QuestionEffect>;

/** The questions at work: their state outside React, and the machine that keeps what they want kept. */
export const createQuestionStore = (first: QuestionState, effects: QuestionEffects): QuestionStore =>
  createStore(openingLines(first), updateQuestions, effects);
