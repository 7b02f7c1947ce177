import { mkdtempSync, rmSync } from 'node:fs';
import { constants, tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawn } from '@lydell/node-pty';
import { hermetic } from '../../tools/hermetic.ts';
import { createEmulator, type Emulator } from './emulator.ts';

export type TerminalOptions = {
  /** Arguments of the built program, or of `command` where that is given. */
  readonly args?: readonly string[];
  readonly command?: string;
  readonly columns?: number;
  readonly rows?: number;
  /** Added to a clean environment; undefined takes a variable away. */
  readonly env?: Readonly<Record<string, string | undefined>>;
  readonly cwd?: string;
  /** A home to go on with; without one a new, empty home is made, and removed by `close`. */
  readonly home?: string;
};

export type Exit = { readonly code: number; readonly signal: NodeJS.Signals | undefined };

export type Terminal = Pick<
  Emulator,
  'screen' | 'transcript' | 'raw' | 'clears' | 'waitFor' | 'resize' | 'size'
> & {
  readonly send: (text: string) => void;
  readonly kill: (signal?: NodeJS.Signals) => void;
  /** Closes the window: the program is left without a terminal. */
  readonly hangUp: () => void;
  readonly exited: Promise<Exit>;
  readonly pid: number;
  readonly home: string;
  /** Ends the program if it still runs, and removes the home that was made for it. */
  readonly close: () => Promise<void>;
};

// Nothing of the machine gets in: no CI, with which Ink draws nothing, no settings of whoever runs the tests.
function cleanEnv(home: string, changes: TerminalOptions['env']): Record<string, string> {
  const env = {
    ...hermetic(home),
    TMPDIR: home,
    LANG: 'C.UTF-8',
    TERM: 'xterm-256color',
    COLORTERM: 'truecolor',
    ...changes,
  };
  return Object.fromEntries(
    Object.entries(env).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}

const signalName = (number: number | undefined): NodeJS.Signals | undefined =>
  Object.entries(constants.signals).find(([, value]) => value === number)?.[0] as NodeJS.Signals | undefined;

/** Runs the built program, or another command, in a real pseudo-terminal that a terminal emulator reads. */
export function openTerminal(options: TerminalOptions = {}): Terminal {
  const { command, columns = 80, rows = 24, cwd = process.cwd() } = options;
  const home = options.home ?? mkdtempSync(join(tmpdir(), 'slantwise-home-'));
  const program = command === undefined ? [join(process.cwd(), 'dist/cli.js')] : [];
  const emulator = createEmulator(columns, rows, false);
  const env = cleanEnv(home, options.env);
  const pty = spawn(command ?? process.execPath, [...program, ...(options.args ?? [])], {
    name: env.TERM ?? 'dumb',
    cols: columns,
    rows,
    cwd,
    env,
  });
  let hasExited = false;
  pty.onData(emulator.write);
  emulator.onReply((reply) => pty.write(reply));
  const exited = new Promise<Exit>((resolve) => {
    pty.onExit(({ exitCode, signal }) => {
      hasExited = true;
      const exit = { code: exitCode, signal: signalName(signal) };
      emulator.end(`the program ended with ${exit.signal ?? exit.code}`).then(() => resolve(exit));
    });
  });
  const kill = (signal: NodeJS.Signals = 'SIGTERM'): void => {
    if (!hasExited) process.kill(pty.pid, signal);
  };
  return {
    ...emulator,
    send: (text) => pty.write(text),
    resize(newColumns, newRows) {
      emulator.resize(newColumns, newRows);
      pty.resize(newColumns, newRows);
    },
    kill,
    // It can, though its type does not say so.
    hangUp: () => (pty as unknown as { destroy(): void }).destroy(),
    exited,
    pid: pty.pid,
    home,
    async close() {
      kill('SIGKILL');
      await exited;
      if (options.home === undefined) rmSync(home, { recursive: true, force: true });
    },
  };
}
