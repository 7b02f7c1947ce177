/** How a run ends: the exit status, and the one line that says why. */

import { logFolder } from '../files/data-folders.ts';
import { harmless, harmlessJson } from '../shared/plain-text.ts';
import type { Words } from '../wording/words.ts';

export const exitCodes = { done: 0, input: 1, usage: 2, ourFault: 70, interrupted: 130 } as const;

/** The way to standard output of all that is printed: nothing in it acts on a terminal. False where it should wait. */
export const print = (text: string): boolean => process.stdout.write(`${harmless(text)}\n`);

/** Prints and is done. */
export function printDone(text: string): number {
  print(text);
  return exitCodes.done;
}

/** One value, on one line or set in by so many spaces. */
export const printJson = (value: unknown, space?: number): boolean =>
  process.stdout.write(`${harmlessJson(value, space)}\n`);

/** Says one sentence on standard error and gives the exit status back. */
export function complain(sentence: string, code: number = exitCodes.input): number {
  process.stderr.write(`slantwise: ${harmless(sentence).replaceAll('\n', ' ')}\n`);
  return code;
}

/** Whoever reads our output may stop early, as `head` does: that is no error. A window may be closed, too. */
export function quietOnClosedPipe(words: () => Words): void {
  process.stderr.on('error', () => undefined);
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EIO') return hangUp();
    process.exit(
      error.code === 'EPIPE' ? exitCodes.done : complain(words().cli.unwritten(error.code ?? error.message)),
    );
  });
}

/** By this signal Node opens a port to whoever would debug the program, unless the program hears the signal itself. */
export function deafToDebuggers(): void {
  process.on('SIGUSR1', () => undefined);
}

let hasHungUp = false;

/**
 * The terminal is gone. A screen hears of it as of a signal, so that the log is left in order; then the program ends as that
 * signal ends one, since Node's own way out aborts where there is no terminal to put back.
 */
function hangUp(): void {
  if (hasHungUp) return;
  hasHungUp = true;
  process.once('exit', () => {
    process.removeAllListeners('SIGHUP');
    process.kill(process.pid, 'SIGHUP');
  });
  if (!process.emit('SIGHUP', 'SIGHUP')) process.exit();
}

let log: string | null = null;

/** Which log is to be named, should the program fail. */
export function workIsKeptIn(path: string): void {
  log = path;
}

/**
 * Whatever is thrown is a fault of ours: one sentence, where the work is, and never the program's own text. It is said last
 * of all, when the screen has given the terminal back.
 */
export const endByOurFault =
  (words: () => Words) =>
  (error: unknown): never => {
    const what = error instanceof Error ? error.message : String(error);
    process.once('exit', () => complain(words().cli.ourFault(what, log ?? logFolder())));
    process.exit(exitCodes.ourFault);
  };

/**
 * Ends the process although a thread of it hangs: nothing but a signal that nobody listens to does that. Some disks hold
 * even that up until they answer.
 */
export function endByForce(): void {
  process.removeAllListeners('SIGINT');
  process.kill(process.pid, 'SIGINT');
}

/** Whether somebody sits there who can be asked. */
export const isTerminal = (): boolean => process.stdin.isTTY && process.stdout.isTTY;

/** Whether there is a screen to draw on: a terminal that moves its cursor, and nobody who has it read aloud. */
export const hasScreen = (): boolean =>
  isTerminal() && process.env.TERM !== 'dumb' && process.env.INK_SCREEN_READER !== 'true';

/** Must run before Ink is loaded: its colours know nothing of NO_COLOR, and it draws nothing where CI is set. */
export function prepareScreen(): void {
  if (process.env.NO_COLOR) process.env.FORCE_COLOR = '0';
  delete process.env.CI;
}
