import { render } from 'ink';
import type { ReactNode } from 'react';
import type { Key } from '../keys/key.ts';
import { type KeyReader, readKeys } from '../keys/read-keys.ts';
import { createFieldStream, type FieldStream } from './field-stream.ts';
import { keepScrollback } from './keep-scrollback.ts';

/** What a screen is given to work with. */
export interface Hold<How> {
  readonly leave: (how: How) => void;
  readonly suspend: () => void;
  /** Types into the prompt's field. */
  readonly field: FieldStream;
}

export interface Held {
  readonly screen: ReactNode;
  readonly onKey: (key: Key, at: number) => void;
  /** Whether repeats and releases are wanted from the first key on. */
  readonly reportKinds?: boolean;
  /** Told of the reader once it reads; what it returns is called at the end. */
  readonly onReader?: (reader: KeyReader) => () => void;
}

const endingSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Has the terminal to itself until the viewer leaves: its keys, its size, its signals. Rejects when drawing fails. */
export async function holdScreen<How>(make: (hold: Hold<How>) => Held, interrupted: How): Promise<How> {
  let end = interrupted;
  let unmount = (): void => undefined;
  const leave = (how: How): void => {
    end = how;
    unmount();
  };
  const interrupt = (): void => leave(interrupted);
  const field = createFieldStream();
  const held = make({ leave, field, suspend: () => reader.suspend() });
  // The keys are ours before anything can be seen, so that none goes astray.
  const reader = readKeys(process.stdin, held.onKey, {
    output: process.stdout,
    reportKinds: held.reportKinds ?? false,
    // Whatever the shell wrote meanwhile: all is drawn anew, as in a window of another size.
    onResume: () => void process.stdout.emit('resize'),
    onEnd: interrupt,
  });
  const forget = held.onReader?.(reader);
  // Before Ink hears of it: what was drawn for another width cannot be erased line by line.
  const clearWindow = (): void => void process.stdout.write('\x1b[H\x1b[J');
  process.stdout.on('resize', clearWindow);
  for (const signal of endingSignals) process.on(signal, interrupt);
  const app = render(held.screen, {
    stdin: field.stdin,
    stdout: keepScrollback(process.stdout),
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  unmount = app.unmount;
  // Should the program end by a fault of its own, what follows here is never reached.
  const giveBack = (): void => {
    app.unmount();
    reader.stop();
  };
  process.once('exit', giveBack);
  try {
    await app.waitUntilExit();
  } finally {
    process.off('exit', giveBack);
    for (const signal of endingSignals) process.off(signal, interrupt);
    process.stdout.off('resize', clearWindow);
    forget?.();
    reader.stop();
  }
  return end;
}
