/**
 * The one place where a screen meets the terminal: keys become messages, the window's size and the ending signals are
 * looked after. Ctrl-C, Ctrl-D and Ctrl-Z mean the same on every screen, so they are taken here.
 */

import { EventEmitter } from 'node:events';
import { setFlagsFromString } from 'node:v8';
import { render } from 'ink';
import type { ReactNode } from 'react';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { readKeys } from '../keys/read-keys.ts';
import { isEmpty } from './prompt.ts';
import { screenOutput } from './screen-output.ts';
import type { ScreenMessage, ScreenState, Store } from './store.ts';

/** The input that Ink is given: a terminal on which nobody types, since all keys go to `readKeys`. */
class SilentInput extends EventEmitter {
  readonly isTTY = true;
  readonly read = (): null => null;
  readonly setEncoding = (): this => this;
  readonly setRawMode = (): this => this;
  readonly ref = (): this => this;
  readonly unref = (): this => this;
}

export const silentInput = (): NodeJS.ReadStream => new SilentInput() as unknown as NodeJS.ReadStream;

type HeldStore<End, State extends ScreenState<End>> = Pick<
  Store<State, ScreenMessage>,
  'get' | 'subscribe' | 'send'
>;

export interface Held<End, State extends ScreenState<End>> {
  readonly store: HeldStore<End, State>;
  readonly screen: ReactNode;
  /** What has to be done before anything more is shown. */
  readonly beforeShown?: () => void;
  /** How the screen ends when a signal ends it, or the terminal goes away. */
  readonly interrupted: End;
  /** Whether repeats and releases of keys are wanted. */
  readonly wantsKinds?: (state: State) => boolean;
}

const endingSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Has the terminal to itself until the screen ends. Rejects when drawing fails. */
export async function holdScreen<End, State extends ScreenState<End>>(
  held: Held<End, State>,
): Promise<NonNullable<End>> {
  const { store, wantsKinds = () => false } = held;
  let isOver = false;
  let unmount = (): void => undefined;
  const interrupt = (): void => {
    isOver = true;
    unmount();
  };
  // The keys are ours before anything can be seen, so that none goes astray.
  const reader = readKeys(process.stdin, (key, came) => takeKey(store, key, came, () => reader.suspend()), {
    output: process.stdout,
    reportKinds: wantsKinds(store.get()),
    // Whatever the shell wrote meanwhile: all is drawn again, as in a window of another size.
    onResume: () => void process.stdout.emit('resize'),
    onEnd: interrupt,
  });
  const forget = store.subscribe(() => {
    reader.reportKinds(wantsKinds(store.get()));
    if (store.get().end !== null) unmount();
  });
  const output = screenOutput(process.stdout, held.beforeShown);
  // Before Ink hears of it: what was drawn for another width cannot be erased line by line.
  process.stdout.on('resize', output.clearWindow);
  for (const signal of endingSignals) process.on(signal, interrupt);
  const app = render(held.screen, {
    stdin: silentInput(),
    stdout: output,
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  keepHeapSmall();
  unmount = app.unmount;
  if (isOver || store.get().end !== null) unmount();
  // Should the program end by a fault of its own, what follows here is never reached.
  const giveBack = (): void => {
    app.unmount();
    output.flush();
    reader.stop();
  };
  process.once('exit', giveBack);
  try {
    await app.waitUntilExit();
  } finally {
    output.flush();
    process.off('exit', giveBack);
    for (const signal of endingSignals) process.off(signal, interrupt);
    process.stdout.off('resize', output.clearWindow);
    forget();
    reader.stop();
  }
  return (isOver ? null : store.get().end) ?? (held.interrupted as NonNullable<End>);
}

/**
 * A sitting makes hundreds of presses, and V8 would let the garbage of a thousand of them grow to four times what lives before it
 * looks: half of that again is enough. Set once all has been loaded, since V8 does not take what was compiled under other flags.
 */
const keepHeapSmall = (): void => setFlagsFromString('--heap-growing-percent=50');

/** What every terminal program does on these, on every screen. */
export const terminalKeys: ReadonlyMap<string, 'suspend' | 'interrupt' | 'quit'> = new Map([
  ['ctrl+z', 'suspend'],
  ['ctrl+c', 'interrupt'],
  // On an empty prompt; else it takes a letter out.
  ['ctrl+d', 'quit'],
]);

function takeKey<End, State extends ScreenState<End>>(
  { get, send }: HeldStore<End, State>,
  key: Key,
  came: Arrival,
  suspend: () => void,
): void {
  const id = key.kind === 'press' ? keyId(key) : null;
  const what = id === null ? undefined : terminalKeys.get(id);
  if (what === 'suspend') return suspend();
  if (what === 'interrupt') return send({ is: 'quit', how: 'interrupted' });
  if (what === 'quit' && isEmpty(get().prompt)) return send({ is: 'quit', how: 'left' });
  send({ is: 'key', key, came });
}
