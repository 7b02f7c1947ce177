import { render } from 'ink';
import { BenchApp } from './bench/bench-app.tsx';
import { type BenchKeysOptions, createBenchKeys } from './bench-keys.ts';
import { createFieldStream } from './keys/field-stream.ts';
import { readKeys } from './keys/read-keys.ts';

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export async function runBench({
  store,
  assigned,
  timing,
}: Pick<BenchKeysOptions, 'store' | 'assigned' | 'timing'>): Promise<'left' | 'interrupted'> {
  let end: 'left' | 'interrupted' = 'left';
  const field = createFieldStream();
  const keys = createBenchKeys({
    store,
    leave: (how) => {
      end = how;
      app.unmount();
    },
    suspend: () => reader.suspend(),
    ...(assigned ? { assigned } : {}),
    ...(timing ? { timing } : {}),
  });
  // Before Ink hears of it: what was drawn for another width cannot be erased line by line.
  const clearWindow = (): void => void process.stdout.write('\x1b[H\x1b[J');
  process.stdout.on('resize', clearWindow);
  const app = render(<BenchApp store={store} keys={keys} field={field} />, {
    stdin: field.stdin,
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  const reader = readKeys(process.stdin, keys.onKey, {
    output: process.stdout,
    onResume: () => store.say([]),
    onEnd: () => app.unmount(),
  });
  try {
    await app.waitUntilExit();
  } finally {
    process.stdout.off('resize', clearWindow);
    reader.stop();
  }
  return end;
}
