/** What the keys do in the player: a few act at once on an empty prompt, all others type. */
import type { PlayerAction } from '../../journal/player-actions.ts';
import { type Key, keyId } from '../keys/key.ts';
import { emptyPrompt, isEmpty, type Prompt, promptKey, sent } from '../prompt.ts';
import type { PlayerStore } from './player-store.ts';

const actions: ReadonlyMap<string, PlayerAction['do'] | 'play-or-pause' | 'leave'> = new Map([
  ['space', 'play-or-pause'],
  ['enter', 'play-or-pause'],
  ['right', 'step-on'],
  ['left', 'step-back'],
  ['up', 'faster'],
  ['down', 'slower'],
  ['m', 'next-mark'],
  ['e', 'to-end'],
  ['end', 'to-end'],
  ['q', 'leave'],
  ['ctrl+d', 'leave'],
]);

export interface PlayerKeysOptions {
  readonly store: PlayerStore;
  readonly leave: (how: 'left' | 'interrupted') => void;
  readonly suspend: () => void;
}

export interface PlayerKeys {
  readonly onKey: (key: Key) => void;
  readonly prompt: () => Prompt;
  readonly subscribe: (listener: () => void) => () => void;
}

export function createPlayerKeys({ store, leave, suspend }: PlayerKeysOptions): PlayerKeys {
  let prompt = emptyPrompt;
  const listeners = new Set<() => void>();
  const show = (next: Prompt): void => {
    if (next === prompt) return;
    prompt = next;
    for (const listener of listeners) listener();
  };

  const actAtOnce = (id: string): boolean => {
    const action = actions.get(id);
    if (action === undefined) return false;
    if (action === 'leave') leave('left');
    else if (action === 'play-or-pause') store.act({ do: store.get().player.playing ? 'pause' : 'play' });
    else store.act({ do: action } as PlayerAction);
    return true;
  };

  const onKey = (key: Key): void => {
    if (key.kind === 'release') return;
    const id = keyId(key);
    if (id === 'ctrl+c') return leave('interrupted');
    if (id === 'ctrl+z') return suspend();
    if (isEmpty(prompt) && actAtOnce(id)) return;
    if (id !== 'enter') return show(promptKey(prompt, key));
    const { text } = prompt.line;
    show(sent(prompt));
    store.submit(text);
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
