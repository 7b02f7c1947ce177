/** What the keys do while the questions are asked: they type, and a held Enter answers no more than one. */
import { steeringWords } from '../../chat/first-run/read-line.ts';
import { type Key, keyId } from '../keys/key.ts';
import { filterPress, noPresses, pressTiming } from '../keys/press-filter.ts';
import { isEmpty, promptKey } from '../parts/prompt.ts';
import { createPromptStore, type ShownPrompt } from '../parts/prompt-store.ts';
import type { QuestionStore, QuestionsEnd } from './question-store.ts';

export interface QuestionKeysOptions {
  readonly store: QuestionStore;
  readonly leave: (end: QuestionsEnd) => void;
  readonly suspend: () => void;
  /** As the setting has it. */
  readonly pressWindowMs: number;
}

export interface QuestionKeys extends ShownPrompt {
  readonly onKey: (key: Key, at: number) => void;
}

const complete = (text: string): readonly string[] =>
  text === '' ? [] : steeringWords.filter((word) => word.startsWith(text.toLowerCase()));

export function createQuestionKeys({
  store,
  leave,
  suspend,
  pressWindowMs,
}: QuestionKeysOptions): QuestionKeys {
  const { prompt, subscribe, show, send } = createPromptStore();
  let presses = noPresses;

  const isPress = (key: Key, at: number): boolean => {
    const judged = filterPress(presses, key, at, { ...pressTiming, windowMs: pressWindowMs });
    presses = judged.state;
    return judged.act === 'press';
  };

  const onEnter = (key: Key, at: number): void => {
    // Judged in any case: what is held may have begun on a line with text in it.
    const counts = isPress(key, at);
    if (key.kind !== 'press' || (isEmpty(prompt()) && !counts)) return;
    const end = store.submit(send());
    if (end) leave(end);
  };

  const onKey = (key: Key, at: number): void => {
    const id = keyId(key);
    if (id === 'enter') return onEnter(key, at);
    if (key.kind === 'press' && id === 'ctrl+c') return leave({ kind: 'interrupted' });
    if (key.kind === 'press' && id === 'ctrl+d' && isEmpty(prompt())) return leave({ kind: 'left' });
    if (key.kind === 'press' && id === 'ctrl+z') return suspend();
    show(promptKey(prompt(), key, complete));
  };

  return { onKey, prompt, subscribe };
}
