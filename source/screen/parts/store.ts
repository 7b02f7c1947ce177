/**
 * A screen outside React: messages go in, states come out. What an update wants done is a value, an effect; all of them
 * are carried out here, in one record. An effect that must be done before anything of it is shown says so by `first`.
 */
import type { Arrival, Key } from '../keys/key.ts';
import type { Prompt } from './prompt.ts';

/** What every screen has in its state. */
export interface ScreenState<End> {
  readonly prompt: Prompt;
  /** How it ended; null while it goes on. */
  readonly end: End | null;
}

/** What every screen is told. */
export type ScreenMessage =
  | { readonly is: 'key'; readonly key: Key; readonly came: Arrival }
  /** The maker wants to leave: by Ctrl-D where nothing is typed, or by Ctrl-C. */
  | { readonly is: 'quit'; readonly how: 'left' | 'interrupted' };

interface AnyMessage {
  readonly is: string;
}

interface AnyEffect {
  readonly do: string;
  /** Done before the new state is shown: a press is on disk by then. */
  readonly first?: true;
}

/** Pure: what a message makes of a state, and what is to be done outside. */
type Update<State, Message, Effect> = (state: State, message: Message) => readonly [State, readonly Effect[]];

/** How each effect is carried out; what comes of it is sent back as a message, at once or later. */
export type Effects<State, Message, Effect extends AnyEffect> = {
  readonly [Kind in Effect['do']]: (
    effect: Extract<Effect, { readonly do: Kind }>,
    send: (message: Message) => void,
    state: State,
  ) => void | Promise<void>;
};

export interface Store<State, Message> {
  readonly get: () => State;
  /** Calls the listener after each change; gives how to stop. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly send: (message: Message) => void;
  /** Waits for whatever is not done at once. */
  readonly settled: () => Promise<void>;
}

export function createStore<State, Message extends AnyMessage, Effect extends AnyEffect>(
  first: State,
  update: Update<State, Message, Effect>,
  effects: Effects<State, Message, Effect>,
): Store<State, Message> {
  let shown = first;
  const listeners = new Set<() => void>();
  const waiting: Message[] = [];
  const begun = new Set<Promise<void>>();
  let isBusy = false;

  const carryOut = (effect: Effect, state: State): void => {
    const run = effects[effect.do as Effect['do']] as (
      effect: Effect,
      send: (message: Message) => void,
      state: State,
    ) => void | Promise<void>;
    const promise = run(effect, send, state);
    if (!promise) return;
    const done = promise.finally(() => begun.delete(done));
    begun.add(done);
  };

  /** Takes in all that waits; what need not be done first is left for after the drawing. */
  const takeIn = (): readonly Effect[] => {
    const later: Effect[] = [];
    let state = shown;
    for (let message = waiting.shift(); message !== undefined; message = waiting.shift()) {
      const [next, wanted] = update(state, message);
      state = next;
      for (const effect of wanted) {
        if (effect.first) carryOut(effect, state);
        else later.push(effect);
      }
    }
    if (state !== shown) {
      shown = state;
      for (const listener of listeners) listener();
    }
    return later;
  };

  function send(message: Message): void {
    waiting.push(message);
    if (isBusy) return;
    isBusy = true;
    try {
      while (waiting.length > 0) for (const effect of takeIn()) carryOut(effect, shown);
    } finally {
      isBusy = false;
    }
  }

  const settled = async (): Promise<void> => {
    while (begun.size > 0) await Promise.all(begun);
  };

  return {
    get: () => shown,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    send,
    settled,
  };
}
