/** What the keys do at the bench. On an empty prompt some keys act at once; otherwise they type. */
import type { BenchStore } from './bench-store.ts';
import { type Key, keyId } from './keys/key.ts';
import { filterPress, noPresses, type PressTiming, pressTiming } from './keys/press-filter.ts';
import { emptyPrompt, isEmpty, type Prompt, promptKey, sent } from './prompt.ts';

/** What a key does while nothing is typed. */
export type BenchAction = 'confirm' | 'take-back';

const ownKeys: ReadonlyMap<string, BenchAction> = new Map([
  ['enter', 'confirm'],
  ['space', 'confirm'],
  ['left', 'take-back'],
]);

export interface BenchKeysOptions {
  readonly store: BenchStore;
  readonly leave: (how: 'left' | 'interrupted') => void;
  readonly suspend: () => void;
  /** Keys the maker has assigned, by key id. */
  readonly assigned?: ReadonlyMap<string, BenchAction>;
  readonly timing?: PressTiming;
}

export interface BenchKeys {
  readonly onKey: (key: Key, at: number) => void;
  readonly prompt: () => Prompt;
  readonly subscribe: (listener: () => void) => () => void;
}

export function createBenchKeys(options: BenchKeysOptions): BenchKeys {
  const { store, leave, suspend, assigned = new Map(), timing = pressTiming } = options;
  let prompt = emptyPrompt;
  let presses = noPresses;
  const listeners = new Set<() => void>();

  const show = (next: Prompt): void => {
    if (next === prompt) return;
    prompt = next;
    for (const listener of listeners) listener();
  };

  const act = (action: BenchAction, key: Key, at: number): void => {
    const judged = filterPress(presses, key, at, timing);
    presses = judged.state;
    if (judged.act === 'press')
      store.perform(action === 'confirm' ? { do: 'confirm', count: 1 } : { do: 'take-back' });
    // The press just counted was the first repeat of a held key: undo what it did.
    else if (judged.act === 'withdraw')
      store.perform(action === 'confirm' ? { do: 'take-back' } : { do: 'redo' });
  };

  const submit = (): void => {
    const { text } = prompt.line;
    show(sent(prompt));
    if (store.submit(text)) leave('left');
  };

  const onKey = (key: Key, at: number): void => {
    const id = keyId(key);
    if (key.kind === 'press' && id === 'ctrl+c') return leave('interrupted');
    if (key.kind === 'press' && id === 'ctrl+d' && isEmpty(prompt)) return leave('left');
    if (key.kind !== 'release' && id === 'ctrl+z') return suspend();
    const action = isEmpty(prompt) ? (assigned.get(id) ?? ownKeys.get(id)) : undefined;
    if (action) return act(action, key, at);
    if (id === 'enter') {
      const judged = filterPress(presses, key, at, timing);
      presses = judged.state;
      return judged.act === 'press' ? submit() : undefined;
    }
    show(promptKey(prompt, key, [...store.get().session.marks.keys()]));
  };

  return {
    onKey,
    prompt: () => prompt,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
