/** What the questions know, are told and want done: keys type, a line answers, and a held Enter answers no more than one. */
import { type Interview, planLines, updateInterview } from '../../chat/first-run/interview.ts';
import { steeringWords } from '../../chat/first-run/read-line.ts';
import { interviewView, questionLines } from '../../chat/first-run/view.ts';
import { answer, type Said } from '../../chat/talk.ts';
import type { BriefFile } from '../../planning/brief.ts';
import type { SettingChange } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { filterPress, noPresses, type PressState, pressTiming } from '../keys/press-filter.ts';
import { emptyPrompt, isEmpty, typeKey } from '../parts/prompt.ts';
import { type LongAnswer, pageTurned, rowsIn, type Window } from '../parts/reading.ts';
import {
  createStore,
  type Effects,
  type ScreenMessage,
  type ScreenState,
  type Store,
} from '../parts/store.ts';
import { questionRows } from './question-rows.ts';

/** A brief that is kept, and what is to be said of it. */
export interface KeptBrief {
  readonly brief: BriefFile;
  readonly told: string;
}

/** How the questions end. */
export type QuestionsEnd =
  | { readonly kind: 'begin'; readonly kept: KeptBrief }
  /** `cancelled`: back to the bag that was left for the questions. */
  | { readonly kind: 'practice' | 'cancelled' | 'left' | 'interrupted' };

export interface QuestionState extends ScreenState<QuestionsEnd> {
  readonly interview: Interview;
  readonly lines: readonly Said[];
  /** Why answers are not kept. Told once: it will not be better at the next answer. */
  readonly trouble: string | null;
  readonly presses: PressState;
  /** What is said where there is no bag to go back to; null where there is one. */
  readonly cannotCancel: string | null;
  /** As the setting has it. */
  readonly pedalGapMs: number;
  /** Null where nothing is drawn. */
  readonly window: Window | null;
  /** What is too long to be seen above the question, until it has been read. */
  readonly reading: LongAnswer | null;
}

type QuestionMessage =
  | ScreenMessage
  /** A whole line was typed. */
  | { readonly is: 'line'; readonly text: string }
  | { readonly is: 'window'; readonly window: Window }
  /** What went wrong with keeping the answers, in a sentence; null where nothing did. */
  | { readonly is: 'answers-kept'; readonly trouble: string | null }
  /** The brief, or why it cannot be kept, in a sentence. */
  | { readonly is: 'brief-kept'; readonly kept: Result<KeptBrief, string> };

type QuestionEffect =
  /** Keeps the answers for the next start; answers `answers-kept`. */
  | { readonly do: 'keep-answers'; readonly interview: Interview; readonly first: true }
  /** Keeps the brief, in the file that is named or else in one of ours; answers `brief-kept`. */
  | {
      readonly do: 'keep-brief';
      readonly interview: Interview;
      readonly out: string | null;
      readonly first: true;
    }
  /** Keeps a setting for the next time. */
  | { readonly do: 'keep'; readonly change: SettingChange; readonly first?: never };

export type QuestionStore = Store<QuestionState, QuestionMessage>;

export const startQuestions = (
  given: Pick<QuestionState, 'interview' | 'lines' | 'pedalGapMs'> & Partial<QuestionState>,
): QuestionState => ({
  cannotCancel: null,
  prompt: emptyPrompt,
  trouble: null,
  presses: noPresses,
  window: null,
  reading: null,
  end: null,
  ...given,
});

type QuestionReaction = readonly [QuestionState, readonly QuestionEffect[]];

function updateQuestions(state: QuestionState, message: QuestionMessage): QuestionReaction {
  const [after, effects] = reactTo(state, message);
  return [toBeRead(state, after), effects];
}

function reactTo(state: QuestionState, message: QuestionMessage): QuestionReaction {
  switch (message.is) {
    case 'key':
      return takeKey(state, message.key, message.came);
    case 'line':
      return takeLine(putAway(state), message.text);
    case 'window':
      return [{ ...state, window: message.window }, []];
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

/** What was told is read by itself where less is seen of it above the question, and the question too where it would be cut. */
function toBeRead(before: QuestionState, after: QuestionState): QuestionState {
  const { window, interview } = after;
  if (!window || after.end) return after;
  const isFirst = before.window === null;
  const said = isFirst ? after.lines.length : before.lines.length + (before.reading?.lines.length ?? 0);
  const told = after.reading ? [] : after.lines.slice(said).filter(({ tone }) => !echoes.has(tone));
  const view = interviewView(interview);
  const { left, isWhole } = questionRows(view, window);
  const isNew = isFirst || view.ask !== interviewView(before.interview).ask;
  const asked = isNew && !isWhole ? answer(...questionLines(interview)) : [];
  const isLong = rowsIn(told, window.columns) > left;
  if (!isLong && asked.length === 0) return after;
  const kept = isLong ? after.lines.filter((line) => !told.includes(line)) : after.lines;
  return { ...after, lines: kept, reading: { lines: [...(isLong ? told : []), ...asked], at: 0 } };
}

/** What was typed, and what it was taken for. */
const echoes: ReadonlySet<Said['tone']> = new Set(['typed', 'done']);

const putAway = (state: QuestionState): QuestionState =>
  state.reading === null ? state : withLines({ ...state, reading: null }, state.reading.lines);

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

/** While something is read, on an empty prompt: a page on or back, or away with it. */
const pageKeys: ReadonlyMap<string, 1 | -1 | 0> = new Map([
  ['enter', 1],
  ['left', -1],
  ['escape', 0],
]);

function turnPage(state: QuestionState, by: 1 | -1 | 0): QuestionState {
  const { reading, window } = state;
  const page = by === 0 || !reading || !window ? null : pageTurned(reading, window, by);
  return page ? { ...state, reading: page } : putAway(state);
}

function takeKey(state: QuestionState, key: Key, came: Arrival): QuestionReaction {
  const id = keyId(key);
  const by = state.reading && isEmpty(state.prompt) ? pageKeys.get(id) : undefined;
  if (id !== 'enter') {
    return by === undefined
      ? [{ ...state, prompt: typeKey(state.prompt, key, complete).prompt }, []]
      : [turnPage(state, by), []];
  }
  // Judged in any case: what is held may have begun on a line with text in it.
  const timing = { ...pressTiming, windowMs: state.pedalGapMs };
  const { state: presses, act } = filterPress(state.presses, key, came, timing);
  const judged = { ...state, presses };
  if (isEmpty(state.prompt) && act !== 'press') return [judged, []];
  if (by !== undefined) return [turnPage(judged, by), []];
  const { prompt, line } = typeKey(state.prompt, key);
  return line === null ? [judged, []] : takeLine(putAway({ ...judged, prompt }), line);
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
const openingLines = (state: QuestionState): QuestionState => withLines(state, planLines(state.interview));

type QuestionEffects = Effects<QuestionState, QuestionMessage, QuestionEffect>;

/** The questions at work: their state outside React, and the machine that keeps what they want kept. */
export const createQuestionStore = (first: QuestionState, effects: QuestionEffects): QuestionStore =>
  createStore(openingLines(first), updateQuestions, effects);
