import { BigEnough } from '../parts/big-enough.tsx';
import { holdScreen } from '../parts/hold-screen.ts';
import type { QuestionState, QuestionStore, QuestionsEnd } from './question-state.ts';
import { QuestionsApp } from './questions-app.tsx';

/** Asks in the terminal until the questions end. Rejects when drawing fails. */
export const runQuestions = (store: QuestionStore): Promise<QuestionsEnd> =>
  holdScreen<QuestionsEnd, QuestionState>({
    store,
    screen: (
      <BigEnough tooSmall={store.get().interview.words.bench.tooSmall}>
        <QuestionsApp store={store} />
      </BigEnough>
    ),
    interrupted: { kind: 'interrupted' },
  });
