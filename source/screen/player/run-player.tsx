import { render } from 'ink';
import type { Player } from '../../journal/player.ts';
import type { Units } from '../../shared/units.ts';
import { createFieldStream } from '../keys/field-stream.ts';
import { readKeys } from '../keys/read-keys.ts';
import { keepScrollback } from './keep-scrollback.ts';
import { PlayerApp } from './player-app.tsx';
import { type PlayerClock, systemPlayerClock } from './player-clock.ts';
import { createPlayerKeys } from './player-keys.ts';
import { createPlayerStore } from './player-store.ts';

export interface PlayerScreen {
  readonly units: Units;
  /** Said at the beginning. */
  readonly message?: string;
  readonly clock?: PlayerClock;
}

/** Shows a player in the terminal until the viewer leaves. Rejects when drawing fails. */
export async function runPlayer(
  player: Player,
  { units, message, clock = systemPlayerClock }: PlayerScreen,
): Promise<'left' | 'interrupted'> {
  let end: 'left' | 'interrupted' = 'left';
  let unmount = (): void => undefined;
  const leave = (how: 'left' | 'interrupted'): void => {
    end = how;
    unmount();
  };
  const interrupt = (): void => leave('interrupted');
  const field = createFieldStream();
  const store = createPlayerStore(player, clock, message);
  const keys = createPlayerKeys({ store, leave, suspend: () => reader.suspend() });
  const reader = readKeys(process.stdin, keys.onKey, {
    output: process.stdout,
    onResume: () => app.rerender(screen()),
    onEnd: interrupt,
  });
  // Before Ink hears of it: what was drawn for another width cannot be erased line by line.
  const clearWindow = (): void => void process.stdout.write('\x1b[H\x1b[J');
  process.stdout.on('resize', clearWindow);
  for (const signal of endingSignals) process.on(signal, interrupt);
  const screen = () => <PlayerApp store={store} keys={keys} field={field} units={units} />;
  const app = render(screen(), {
    stdin: field.stdin,
    stdout: keepScrollback(process.stdout),
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  unmount = app.unmount;
  try {
    await app.waitUntilExit();
  } finally {
    store.stop();
    for (const signal of endingSignals) process.off(signal, interrupt);
    process.stdout.off('resize', clearWindow);
    reader.stop();
  }
  return end;
}

const endingSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
