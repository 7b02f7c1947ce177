/** A program in a terminal, pressed through a stretch of steps and back again. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { openTerminal, type Terminal } from '../terminal/rig/pseudo-terminal.ts';
import { bundleBare } from './bare-programs.ts';
import { briefPath, makeHome } from './long-log.ts';

/** Keys take turns, since one key alone is a held or bouncing one when it comes too soon. */
const onKeys = ['\r', ' ', 'q', 'r', 's', 't', 'u', 'v'];
const backKeys = ['\x1b[D', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
const letters = (keys: readonly string[], act: string) =>
  keys.filter((key) => /[a-z]$/.test(key)).map((key) => [key, act] as const);
const pedals = Object.fromEntries([...letters(onKeys, 'confirm'), ...letters(backKeys, 'back')]);
const settings = { pedalGapMs: 20, pause: 'short', pedals };
/** A busy machine brings two keys closer together than they were sent. */
const sameKeyMs = 60;
/** Steps there and back. */
const stretch = 60;

export interface Presser {
  readonly terminal: Terminal;
  /** Presses once: milliseconds until the next step is on the screen. */
  readonly press: () => Promise<number>;
  readonly close: () => Promise<void>;
}

/** `home` is removed in the end. */
function createPresser(terminal: Terminal, home: string): Presser {
  const pressedAt = new Map<string, number>();
  let count = 0;
  const press = async (): Promise<number> => {
    const place = count % (2 * stretch);
    const keys = place < stretch ? onKeys : backKeys;
    const key = keys[count % keys.length] as string;
    count++;
    const step = 1 + (place < stretch ? place + 1 : 2 * stretch - place - 1);
    const waitMs = (pressedAt.get(key) ?? Number.NEGATIVE_INFINITY) + sameKeyMs - performance.now();
    if (waitMs > 0) await setTimeout(waitMs);
    const from = performance.now();
    pressedAt.set(key, from);
    terminal.send(key);
    await terminal.waitFor(new RegExp(`\\bstep ${step} of`));
    return performance.now() - from;
  };
  const close = async (): Promise<void> => {
    await terminal.close();
    rmSync(home, { recursive: true, force: true });
  };
  return { terminal, press, close };
}

/** Our program with a log behind it, or with a new bag. */
export async function pressOurs(log: string | null): Promise<Presser> {
  const home = makeHome(settings, log);
  const terminal = openTerminal({ home, args: log === null ? [briefPath] : [] });
  await terminal.waitFor('step 1 of', 30_000);
  return createPresser(terminal, home);
}

/** The bare program, with as many rows as ours has; `flushes` has it write and flush a line at each press too. */
export async function pressBare(rowCount: number, flushes = false): Promise<Presser> {
  const script = await bundleBare('screen', 'bare/screen.tsx');
  const backLetters = backKeys.filter((key) => key.length === 1).join('');
  const home = makeHome({}, null);
  const log = flushes ? [join(home, 'lines')] : [];
  const terminal = openTerminal({
    command: process.execPath,
    args: [script, String(rowCount), backLetters, ...log],
    home,
  });
  await terminal.waitFor('step 1 of', 30_000);
  return createPresser(terminal, home);
}

/** Rows of our live part: what Ink draws again at each press. */
export function rowsDrawn(presser: Presser): number {
  const rows = presser.terminal.screen().split('\n');
  const last = rows.findLastIndex((row) => row.startsWith('> '));
  // The phase row is the first that Ink draws again.
  const first = rows.findLastIndex((row) => / step \d+ of /.test(row));
  return last - first + 1;
}
