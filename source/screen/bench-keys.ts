/** What the keys do at the bench. On an empty prompt some keys act at once; otherwise they type. */
import { answer } from '../chat/line.ts';
import {
  careMs,
  sayAssigned,
  sayCannotAssign,
  sayLookFirst,
  sayNoPassDue,
  sayPedalLeft,
} from '../chat/wording/settings.ts';
import { sayStep } from '../chat/wording/steps.ts';
import { currentStep } from '../session/session.ts';
import type { PedalAct } from '../settings/settings.ts';
import { isGuarded, passesIn } from '../steps/guarded.ts';
import type { BenchStore } from './bench-store.ts';
import { type Key, keyId } from './keys/key.ts';
import { filterPress, noPresses, pressTiming } from './keys/press-filter.ts';
import { emptyPrompt, isEmpty, type Prompt, promptKey, sent } from './prompt.ts';

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

export type Leaving = 'left' | 'interrupted';

export interface BenchKeysOptions {
  readonly store: BenchStore;
  readonly leave: (how: Leaving) => void;
  readonly suspend: () => void;
}

export interface BenchKeys {
  readonly onKey: (key: Key, at: number) => void;
  readonly prompt: () => Prompt;
  readonly subscribe: (listener: () => void) => () => void;
}

export function createBenchKeys({ store, leave, suspend }: BenchKeysOptions): BenchKeys {
  let prompt = emptyPrompt;
  let presses = noPresses;
  let confirmedAt = Number.NEGATIVE_INFINITY;
  /** Steps confirmed before and after the last press that counted. */
  let countedDone = { before: 0, after: 0 };
  /** Passes of the carriage that have come for the step at `done`. */
  let passes = { done: -1, count: 0 };
  const listeners = new Set<() => void>();

  const show = (next: Prompt): void => {
    if (next === prompt) return;
    prompt = next;
    for (const listener of listeners) listener();
  };

  const judge = (key: Key, at: number) => {
    const timing = { ...pressTiming, windowMs: store.get().settings.pressWindowMs };
    const judged = filterPress(presses, key, at, timing);
    presses = judged.state;
    return judged.act;
  };

  const confirm = (at: number): void => {
    const { session, settings } = store.get();
    const step = currentStep(session);
    const tooSoon = at - confirmedAt < careMs[settings.caution];
    if (step && tooSoon && isGuarded(step)) return store.say(answer(sayLookFirst));
    confirmedAt = at;
    store.perform({ do: 'confirm', count: 1 });
  };

  const pass = (at: number): void => {
    const { session } = store.get();
    const step = currentStep(session);
    const due = step ? passesIn(step) : 0;
    if (!step || due === 0) {
      return store.say(
        answer(sayNoPassDue(step ? sayStep(session.job.plan, step) : 'nothing, the bag is finished.')),
      );
    }
    passes = { done: session.done, count: passes.done === session.done ? passes.count + 1 : 1 };
    if (passes.count < due) return;
    confirmedAt = at;
    store.perform({ do: 'confirm', count: 1 });
  };

  const press = (act: PedalAct, at: number): void => {
    if (act === 'confirm') confirm(at);
    else if (act === 'pass') pass(at);
    else if (act === 'speak') store.again();
    else store.perform({ do: 'take-back' });
  };

  const act = (what: PedalAct, key: Key, at: number): void => {
    const doneBefore = store.get().session.done;
    switch (judge(key, at)) {
      case 'press':
        press(what, at);
        countedDone = { before: doneBefore, after: store.get().session.done };
        return;
      // The press just counted was the first repeat of a held key: undo what it did.
      case 'withdraw':
        if (countedDone.before === countedDone.after) return;
        store.perform(what === 'take-back' ? { do: 'redo' } : { do: 'take-back' });
        return;
      // Held for about a second: a way back with one switch.
      case 'held':
        if (what !== 'confirm') return;
        store.perform({ do: 'take-back' });
        store.perform({ do: 'take-back' });
    }
  };

  const assign = (wanted: PedalAct, key: Key): void => {
    const id = keyId(key);
    if (key.kind !== 'press') return;
    if (id === 'escape') {
      store.assign(null);
      return store.say(answer(sayPedalLeft));
    }
    if (reservedKeys.has(id)) return store.say(answer(sayCannotAssign(id)));
    store.assign(null);
    store.set({ name: 'pedals', value: { ...store.get().settings.pedals, [id]: wanted } });
    store.say(answer(...sayAssigned(id, wanted)));
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
    if (key.kind === 'press' && id === 'ctrl+z') return suspend();
    const { assigning, settings, session } = store.get();
    if (assigning) return assign(assigning, key);
    if (key.kind === 'press' && id === 'f2')
      return store.set({ name: 'largeView', value: !settings.largeView });
    const what = isEmpty(prompt) ? (settings.pedals[id] ?? ownKeys.get(id)) : undefined;
    if (what) return act(what, key, at);
    if (id === 'enter') {
      // Judged for what follows alone: should it be held, its repeats find the prompt empty.
      judge(key, at);
      return key.kind === 'press' ? submit() : undefined;
    }
    show(promptKey(prompt, key, [...session.marks.keys()]));
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
