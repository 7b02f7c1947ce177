/** The questions at work: their state outside React, and the machine that keeps what they want kept. */
import { createStore, type Effects } from '../parts/store.ts';
import type { QuestionEffect, QuestionMessage, QuestionState, QuestionStore } from './question-state.ts';
import { openingLines, updateQuestions } from './update-questions.ts';

export type QuestionEffects = Effects<QuestionState, QuestionMessage, QuestionEffect>;

export const createQuestionStore = (first: QuestionState, effects: QuestionEffects): QuestionStore =>
  createStore(openingLines(first), updateQuestions, effects);
