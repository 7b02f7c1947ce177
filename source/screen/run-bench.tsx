import { render } from 'ink';
import { BenchApp } from './bench/bench-app.tsx';
import { createBenchKeys, type Leaving } from './bench-keys.ts';
import type { BenchStore } from './bench-store.ts';
import { createFieldStream } from './keys/field-stream.ts';
import { readKeys } from './keys/read-keys.ts';

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export async function runBench(store: BenchStore): Promise<Leaving> {
  let end: Leaving = 'left';
  let unmount = (): void => undefined;
  const leave = (how: Leaving): void => {
    end = how;
    unmount();
  };
  const interrupt = (): void => leave('interrupted');
  const field = createFieldStream();
  const askToLeave = (how: Leaving): void => {
    if (store.mayLeave()) leave(how);
  };
  const keys = createBenchKeys({ store, leave: askToLeave, suspend: () => reader.suspend() });
  // The keys are ours before anything can be seen, so that none goes astray.
  const reader = readKeys(process.stdin, keys.onKey, {
    output: process.stdout,
    reportKinds: wantsKinds(store),
    onResume: () => store.say([]),
    onEnd: interrupt,
  });
  const forgetKinds = store.subscribe(() => reader.reportKinds(wantsKinds(store)));
  // Before Ink hears of it: what was drawn for another width cannot be erased line by line.
  const clearWindow = (): void => void process.stdout.write('\x1b[H\x1b[J');
  process.stdout.on('resize', clearWindow);
  for (const signal of endingSignals) process.on(signal, interrupt);
  const app = render(<BenchApp store={store} keys={keys} field={field} />, {
    stdin: field.stdin,
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  unmount = app.unmount;
  try {
    await app.waitUntilExit();
  } finally {
    for (const signal of endingSignals) process.off(signal, interrupt);
    process.stdout.off('resize', clearWindow);
    forgetKinds();
    reader.stop();
  }
  return end;
}

/**
 * Only a foot switch needs to know how long it is held, and media keys and chords arrive only when they are asked for:
 * terminals of those who have no switch are left as they are.
 */
const wantsKinds = (store: BenchStore): boolean => {
  const { assigning, settings } = store.get();
  return assigning !== null || Object.keys(settings.pedals).length > 0;
};

const endingSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
