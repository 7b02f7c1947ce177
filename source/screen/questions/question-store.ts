import { type Interview, planLines, updateInterview } from '../../chat/first-run/interview.ts';
import type { Line } from '../../chat/line.ts';
import type { SettingChange } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { createListeners } from '../parts/listeners.ts';

/** A brief that is kept, and what is to be said of it. */
export interface KeptBrief {
  readonly file: unknown;
  readonly name: string;
  readonly told: string;
}

/** How the questions end. */
export type QuestionsEnd =
  | { readonly kind: 'begin'; readonly brief: KeptBrief }
  | { readonly kind: 'practice' | 'left' | 'interrupted' };

export interface QuestionState {
  readonly interview: Interview;
  readonly lines: readonly Line[];
}

/** The questions outside React: lines come in, states go out to whoever subscribes. */
export interface QuestionStore {
  readonly get: () => QuestionState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Takes a typed line; how the questions end, or null while they go on. */
  readonly submit: (text: string) => QuestionsEnd | null;
}

export interface QuestionStoreOptions {
  readonly interview: Interview;
  /** Said before the first question. */
  readonly lines: readonly Line[];
  /** Keeps the answers for the next start; what went wrong, in a sentence, or null. */
  readonly keepAnswers: (interview: Interview) => string | null;
  /** Keeps the brief, in the file that is named or else in one of ours; or why it cannot be, in a sentence. */
  readonly keepBrief: (interview: Interview, out: string | null) => Result<KeptBrief, string>;
  /** Keeps a setting for the next time. */
  readonly keep: (change: SettingChange) => void;
}

export function createQuestionStore(options: QuestionStoreOptions): QuestionStore {
  const { interview } = options;
  let state: QuestionState = { interview, lines: [...options.lines, ...planLines(interview)] };
  /** Told once: it will not be better at the next answer. */
  let trouble: string | null = null;
  const { subscribe, tellAll } = createListeners();

  const publish = (next: Interview, more: readonly Line[]): void => {
    state = { interview: next, lines: [...state.lines, ...more] };
    tellAll();
  };

  const keepAnswers = (next: Interview): readonly Line[] => {
    if (next.answers === state.interview.answers) return [];
    const found = options.keepAnswers(next);
    if (found === null || found === trouble) return [];
    trouble = found;
    return [{ tone: 'caution', text: found }];
  };

  const submit = (text: string): QuestionsEnd | null => {
    const typed = text.trim();
    const { interview: next, lines, effect } = updateInterview(state.interview, typed);
    const told: readonly Line[] = typed === '' ? [] : [{ tone: 'typed', text: typed }];
    publish(next, [...told, ...lines, ...keepAnswers(next)]);
    switch (effect?.kind) {
      case 'begin': {
        const kept = options.keepBrief(next, effect.out);
        if (kept.ok) return { kind: 'begin', brief: kept.value };
        publish(next, [{ tone: 'fault', text: kept.fault }]);
        return null;
      }
      case 'units':
        options.keep({ name: 'units', value: effect.length });
        return null;
      case 'practice':
        return { kind: 'practice' };
      case 'leave':
        return { kind: 'left' };
      default:
        return null;
    }
  };

  return {
    get: () => state,
    subscribe,
    submit,
  };
}
