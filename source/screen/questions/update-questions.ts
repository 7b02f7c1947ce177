/** What the questions know, are told and want done: keys type, a line answers, and a held Enter answers no more than one. */
import { type Interview, planLines, updateInterview } from '../../chat/first-run/interview.ts';
import { steeringWords } from '../../chat/first-run/read-line.ts';
import type { Said } from '../../chat/talk.ts';
import type { BriefFile } from '../../planning/brief.ts';
import type { SettingChange } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { filterPress, noPresses, type PressState, pressTiming } from '../keys/press-filter.ts';
import { emptyPrompt, isEmpty, typeKey } from '../parts/prompt.ts';
import {
  createStore,
  type Effects,
  type ScreenMessage,
  type ScreenState,
  type Store,
} from '../parts/store.ts';

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
}

type QuestionMessage =
  | ScreenMessage
  /** A whole line was typed. */
  | { readonly is: 'line'; readonly text: string }
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
  end: null,
  ...given,
});

type QuestionReaction = readonly [QuestionState, readonly QuestionEffect[]];

function updateQuestions(state: QuestionState, message: QuestionMessage): QuestionReaction {
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
const openingLines = (state: QuestionState): QuestionState => withLines(state, planLines(state.interview));

type QuestionEffects = Effects<QuestionState, QuestionMessage, QuestionEffect>;

/** The questions at work: their state outside React, and the machine that keeps what they want kept. */
export const createQuestionStore = (first: QuestionState, effects: QuestionEffects): QuestionStore =>
  createStore(openingLines(first), updateQuestions, effects);
