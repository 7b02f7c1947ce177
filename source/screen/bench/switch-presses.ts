/** What the presses of a switch do, whatever key it types: one press one act, a hold goes back, and some steps ask for a look. */
import { careMs } from '../../chat/wording/settings.ts';
import { currentStep } from '../../session/session.ts';
import type { PedalAct } from '../../settings/settings.ts';
import { isGuarded, passesIn } from '../../steps/guarded.ts';
import { type Key, keyId } from '../keys/key.ts';
import { filterPress, noPresses, type PressAct, pressTiming } from '../keys/press-filter.ts';
import type { BenchStore } from './bench-state.ts';

/** Passes of the carriage that have come for the step after `done`. */
interface Passes {
  readonly done: number;
  readonly count: number;
}

/** What a press that counted has done: `elsewhere` is a press that typed or assigned, no act of a switch. */
type Effect = { readonly changed: boolean; readonly passesBefore: Passes } | 'elsewhere';

export interface SwitchPresses {
  /** Takes an event of a key that has something to do. */
  readonly take: (what: PedalAct, key: Key, at: number) => void;
  /** Takes an event that has just done something else, so that its repeats are no presses. */
  readonly takeElsewhere: (key: Key, at: number) => void;
}

export function createSwitchPresses(store: BenchStore): SwitchPresses {
  let presses = noPresses;
  let passes: Passes = { done: -1, count: 0 };
  /** How long the step on the screen has been there to be looked at. */
  let shown = { done: store.get().session.done, way: store.get().way, since: Number.NEGATIVE_INFINITY };
  /** By key, the last two presses: the one a hold began with, and its first repeat while that is in doubt. */
  const effects = new Map<string, readonly Effect[]>();

  const judge = (key: Key, at: number): PressAct => {
    const timing = { ...pressTiming, windowMs: store.get().settings.pressWindowMs };
    const judged = filterPress(presses, key, at, timing);
    presses = judged.state;
    return judged.act;
  };
  const remember = (key: Key, effect: Effect): void => {
    const id = keyId(key);
    effects.set(id, [...(effects.get(id) ?? []), effect].slice(-2));
  };

  const confirm = (at: number): void => {
    const { session, settings, way } = store.get();
    const step = way ? null : currentStep(session);
    const tooSoon = at - shown.since < careMs[settings.caution];
    if (step && tooSoon && isGuarded(step)) return store.warn('too-soon');
    store.perform({ do: 'confirm', count: 1 });
  };

  // No care here: a carriage that has crossed cannot be asked to look first.
  const pass = (): void => {
    const { session, way } = store.get();
    // On the way back the carriage crosses without knitting: the maker says when a step of it is done.
    if (way) return;
    const step = currentStep(session);
    const due = step ? passesIn(step) : 0;
    if (due === 0) return store.warn('no-pass-due');
    passes = { done: session.done, count: passes.done === session.done ? passes.count + 1 : 1 };
    if (passes.count < due) return;
    passes = { done: -1, count: 0 };
    store.perform({ do: 'confirm', count: 1 });
  };

  const press = (what: PedalAct, at: number): void => {
    if (what === 'confirm') confirm(at);
    else if (what === 'pass') pass();
    else if (what === 'speak') store.again();
    else store.perform({ do: 'take-back' });
  };

  /** Undoes what the first repeat of a held key did when it looked like a press. */
  const withdraw = (what: PedalAct, key: Key): void => {
    const past = effects.get(keyId(key)) ?? [];
    const last = past.at(-1);
    effects.set(keyId(key), past.slice(0, -1));
    if (!last || last === 'elsewhere') return;
    if (last.changed) store.perform({ do: what === 'take-back' ? 'redo' : 'take-back' });
    passes = last.passesBefore;
  };

  const goBack = (key: Key): void => {
    const began = effects.get(keyId(key))?.at(-1);
    if (!began || began === 'elsewhere') return;
    if (began.changed) store.perform({ do: 'take-back' });
    store.perform({ do: 'take-back' });
  };

  const takeJudged = (act: PressAct, what: PedalAct, key: Key, at: number): void => {
    const before = store.get();
    const passesBefore = passes;
    if (act === 'press') {
      press(what, at);
      const { session, way } = store.get();
      remember(key, { changed: session !== before.session || way !== before.way, passesBefore });
    } else if (act === 'withdraw') withdraw(what, key);
    else if (act === 'held' && what === 'confirm') goBack(key);
  };

  const look = (at: number): void => {
    const { session, way } = store.get();
    if (session.done !== shown.done || way !== shown.way) shown = { done: session.done, way, since: at };
  };

  return {
    take: (what, key, at) => {
      takeJudged(judge(key, at), what, key, at);
      look(at);
    },
    takeElsewhere: (key, at) => {
      if (judge(key, at) === 'press') remember(key, 'elsewhere');
      look(at);
    },
  };
}
