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
