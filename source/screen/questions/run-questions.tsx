import { holdScreen } from '../parts/hold-screen.ts';
import { createQuestionKeys } from './question-keys.ts';
import type { QuestionStore, QuestionsEnd } from './question-store.ts';
import { QuestionsApp } from './questions-app.tsx';

/** Asks in the terminal until the questions end. Rejects when drawing fails. */
export const runQuestions = (store: QuestionStore, pressWindowMs: number): Promise<QuestionsEnd> =>
  holdScreen<QuestionsEnd>(
    ({ leave, suspend, field }) => {
      const keys = createQuestionKeys({ store, leave, suspend, pressWindowMs });
      return {
        onKey: keys.onKey,
        screen: <QuestionsApp store={store} keys={keys} field={field} />,
      };
    },
    { kind: 'interrupted' },
  );
