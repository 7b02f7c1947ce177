/** What the keys do at the bench. On an empty prompt some keys act at once; otherwise they type. */
import { answer } from '../../chat/line.ts';
import { completeLine } from '../../chat/parse-line.ts';
import {
  mostPedals,
  sayAssigned,
  sayCannotAssign,
  sayPedalLeft,
  sayTooManyPedals,
} from '../../chat/wording/settings.ts';
import type { PedalAct } from '../../settings/settings.ts';
import { type Key, keyId } from '../keys/key.ts';
import { isEmpty, promptKey } from '../parts/prompt.ts';
import { createPromptStore, type ShownPrompt } from '../parts/prompt-store.ts';
import type { BenchStore } from './bench-state.ts';
import { createSwitchPresses } from './switch-presses.ts';

const ownKeys: ReadonlyMap<string, PedalAct> = new Map([
  ['enter', 'confirm'],
  ['space', 'confirm'],
  ['left', 'take-back'],
]);

/** Keys that a foot switch cannot have, since the prompt would be lost without them. */
const reservedKeys: ReadonlySet<string> = new Set([
  'enter',
  'escape',
  'ctrl+c',
  'ctrl+d',
  'ctrl+z',
  '/',
  'paste',
]);

/** `new`: to plan another bag. */
export type Leaving = 'left' | 'interrupted' | 'new';

export interface BenchKeysOptions {
  readonly store: BenchStore;
  readonly leave: (how: Leaving) => void;
  readonly suspend: () => void;
}

export interface BenchKeys extends ShownPrompt {
  readonly onKey: (key: Key, at: number) => void;
}

export function createBenchKeys({ store, leave, suspend }: BenchKeysOptions): BenchKeys {
  const { prompt, subscribe, show, send } = createPromptStore();
  const presses = createSwitchPresses(store);

  const assign = (wanted: PedalAct, id: string): void => {
    const { pedals } = store.get().settings;
    if (id !== 'escape' && reservedKeys.has(id)) return store.say(answer(sayCannotAssign(id)));
    store.assign(null);
    if (id === 'escape') return store.say(answer(sayPedalLeft()));
    if (!(id in pedals) && Object.keys(pedals).length >= mostPedals) {
      return store.say(answer(sayTooManyPedals()));
    }
    store.set({ name: 'pedals', value: { ...pedals, [id]: wanted } });
    store.say(answer(...sayAssigned(id, wanted)));
  };

  const submit = (): void => {
    const how = store.submit(send());
    if (how) leave(how);
  };

  const onKey = (key: Key, at: number): void => {
    const id = keyId(key);
    const isPress = key.kind === 'press';
    if (isPress && id === 'ctrl+c') return leave('interrupted');
    if (isPress && id === 'ctrl+d' && isEmpty(prompt())) return leave('left');
    if (isPress && id === 'ctrl+z') return suspend();
    const { assigning, settings, session } = store.get();
    if (assigning) {
      if (isPress) assign(assigning, id);
      return presses.takeElsewhere(key, at);
    }
    const what = isEmpty(prompt()) ? (settings.pedals[id] ?? ownKeys.get(id)) : undefined;
    if (what) return presses.take(what, key, at);
    if (id === 'f2')
      return isPress ? store.set({ name: 'largeView', value: !settings.largeView }) : undefined;
    if (id === 'enter') {
      if (isPress) submit();
      return presses.takeElsewhere(key, at);
    }
    show(promptKey(prompt(), key, (text) => completeLine(text, [...session.marks.keys()])));
  };

  return { onKey, prompt, subscribe };
}
