/** How a run ends: the exit status, and the one line that says why. */
import { harmless } from '../shared/plain-text.ts';
import { say } from '../shared/say.ts';

export const exitCodes = { done: 0, input: 1, usage: 2, ourFault: 70, interrupted: 130 } as const;

/** Says one sentence on standard error and gives the exit status back. */
export function complain(sentence: string, code: number = exitCodes.input): number {
  process.stderr.write(`slantwise: ${harmless(sentence).replaceAll('\n', ' ')}\n`);
  return code;
}

/** Whoever reads our output may stop early, as `head` does: that is no error. */
export function quietOnClosedPipe(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(
      error.code === 'EPIPE' ? exitCodes.done : complain(sayUnwritten(error.code ?? error.message)),
    );
  });
}

/** A fault of the program: what to send to whoever made it, and that the work is kept. */
export const sayOurFault = (error: unknown, folder: string): string =>
  say`Slantwise has made a mistake of its own (${error instanceof Error ? error.message : String(error)}). What you confirmed is kept in ${folder}: start it again to go on, and report this sentence with the log to whoever gave you the program.`;

const sayUnwritten = (code: string): string =>
  say`What was to be printed could not be written (${code}). Make room, or print elsewhere.`;

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
