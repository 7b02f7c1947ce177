/** The player in a real pseudo-terminal, its clock moved by the test: each SIGUSR2 is one second. */
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { afterAll, afterEach } from 'vitest';
import { bundleScript } from './rig/bundle-script.ts';
import { openTerminal, type Terminal } from './rig/pseudo-terminal.ts';

const script = `
import { readFileSync } from 'node:fs';
import { startPlayer } from '../../source/journal/player.ts';
import { readRecording } from '../../source/journal/read-log.ts';
import { runPlayer } from '../../source/screen/player/player-app.tsx';
import { englishWords } from '../../source/wording/words.ts';

let nowMs = 0;
let seconds = 0;
const waiting = new Set();
const clock = {
  elapsedMs: () => nowMs,
  wake(action, afterMs) {
    const one = { action, atMs: nowMs + afterMs };
    waiting.add(one);
    return () => waiting.delete(one);
  },
};
process.on('SIGUSR2', () => {
  const untilMs = nowMs + 1000;
  for (;;) {
    const [next] = [...waiting].sort((a, b) => a.atMs - b.atMs);
    if (!next || next.atMs > untilMs) break;
    waiting.delete(next);
    nowMs = next.atMs;
    next.action();
  }
  nowMs = untilMs;
  // The window's title tells the test that this second is over.
  process.stdout.write('\\x1b]0;' + ++seconds + ' s\\x07');
});
const recording = readRecording(readFileSync(process.argv[2]));
process.exitCode = await runPlayer(startPlayer(recording.value), { words: englishWords, clock }) === 'left' ? 0 : 130;
`;

export interface TimedPlayer extends Terminal {
  /** Lets so many seconds of the viewer's clock go by. */
  readonly pass: (seconds: number) => Promise<void>;
}

/** Opens players on logs; all are gone after each test. */
export function useTimedPlayer(): (path: string, columns?: number, rows?: number) => Promise<TimedPlayer> {
  let bundled: Promise<string> | null = null;
  const opened: Terminal[] = [];
  afterEach(async () => {
    await Promise.all(opened.splice(0).map((terminal) => terminal.close()));
  });
  afterAll(async () => {
    if (bundled) rmSync(dirname(await bundled), { recursive: true });
  });
  return async (path, columns = 80, rows = 24) => {
    bundled ??= bundleScript(script, import.meta.dirname);
    const args = [await bundled, path];
    const terminal = openTerminal({ command: process.execPath, args, columns, rows });
    opened.push(terminal);
    await terminal.waitFor('> ');
    let passed = 0;
    const pass = async (seconds: number): Promise<void> => {
      for (let i = 0; i < seconds; i++) {
        passed++;
        terminal.kill('SIGUSR2');
        await terminal.waitFor(() => terminal.raw().includes(`\x1b]0;${passed} s\x07`));
      }
    };
    return { ...terminal, pass };
  };
}
