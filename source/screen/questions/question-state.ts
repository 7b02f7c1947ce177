/** What the questions know, what they are told, and what they want done. */
import type { Interview } from '../../chat/first-run/interview.ts';
import type { Said } from '../../chat/talk.ts';
import type { BriefFile } from '../../planning/brief.ts';
import type { SettingChange } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { noPresses, type PressState } from '../keys/press-filter.ts';
import { emptyPrompt } from '../parts/prompt.ts';
import type { ScreenMessage, ScreenState, Store } from '../parts/store.ts';

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

export type QuestionMessage =
  | ScreenMessage
  /** A whole line was typed. */
  | { readonly is: 'line'; readonly text: string }
  /** What went wrong with keeping the answers, in a sentence; null where nothing did. */
  | { readonly is: 'answers-kept'; readonly trouble: string | null }
  /** The brief, or why it cannot be kept, in a sentence. */
  | { readonly is: 'brief-kept'; readonly kept: Result<KeptBrief, string> };

export type QuestionEffect =
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
