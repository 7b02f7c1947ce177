import { holdScreen } from '../parts/hold-screen.ts';
import type { QuestionState, QuestionStore, QuestionsEnd } from './question-state.ts';
import { QuestionsApp } from './questions-app.tsx';

/** Asks in the terminal until the questions end. Rejects when drawing fails. */
export const runQuestions = (store: QuestionStore): Promise<QuestionsEnd> =>
  holdScreen<QuestionsEnd, QuestionState>({
    store,
    screen: <QuestionsApp store={store} />,
    interrupted: { kind: 'interrupted' },
  });
