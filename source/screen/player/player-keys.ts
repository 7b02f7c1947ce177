/** What the keys do in the player: a few act at once on an empty prompt, all others type. */
import type { PlayerAction } from '../../journal/player-actions.ts';
import { type Key, keyId } from '../keys/key.ts';
import { isEmpty, promptKey } from '../parts/prompt.ts';
import { createPromptStore, type ShownPrompt } from '../parts/prompt-store.ts';
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

export interface PlayerKeys extends ShownPrompt {
  readonly onKey: (key: Key) => void;
}

export function createPlayerKeys({ store, leave, suspend }: PlayerKeysOptions): PlayerKeys {
  const { prompt, subscribe, show, send } = createPromptStore();

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
    if (isEmpty(prompt()) && actAtOnce(id)) return;
    if (id !== 'enter') return show(promptKey(prompt(), key));
    store.submit(send());
  };

  return { onKey, prompt, subscribe };
}
