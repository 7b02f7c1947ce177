/** A program in a terminal, pressed through a stretch of steps and back again. */
import { readFileSync, rmSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { openTerminal, type Terminal } from '../terminal/rig/pseudo-terminal.ts';
import { bundleLikeOurs } from './bare-programs.ts';
import { briefPath, makeHome } from './long-log.ts';

/** Keys take turns, since one key alone is a held or bouncing one when it comes too soon. */
const onKeys = ['\r', ' ', 'x', 'y'];
const backKeys = ['\x1b[D', 'b', 'c', 'd'];
const pedals = { x: 'confirm', y: 'confirm', b: 'take-back', c: 'take-back', d: 'take-back' };
const settings = { pressWindowMs: 20, caution: 'low', pedals };
const sameKeyMs = 25;
/** Steps there and back. */
const stretch = 60;

export interface Presser {
  readonly terminal: Terminal;
  /** Presses once: milliseconds until the next step is on the screen. */
  readonly press: () => Promise<number>;
  readonly close: () => Promise<void>;
}

function createPresser(terminal: Terminal, close: () => Promise<void>): Presser {
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
    await terminal.waitFor(new RegExp(`^count.* step ${step} of`, 'm'));
    return performance.now() - from;
  };
  return { terminal, press, close };
}

/** Our program with a log behind it, or with a new bag. */
export async function pressOurs(log: string | null): Promise<Presser> {
  const home = makeHome(settings, log);
  const terminal = openTerminal({ home, args: log === null ? [briefPath] : [] });
  await terminal.waitFor(/^count.* step 1 of/m, 30_000);
  return createPresser(terminal, async () => {
    await terminal.close();
    rmSync(home, { recursive: true, force: true });
  });
}

/** The bare program, with as many rows as ours has. */
export async function pressBare(rowCount: number): Promise<Presser> {
  const script = await bundleLikeOurs('screen', 'bare/screen.tsx');
  const backLetters = backKeys.filter((key) => key.length === 1).join('');
  const terminal = openTerminal({
    command: process.execPath,
    args: [script, String(rowCount), backLetters],
  });
  await terminal.waitFor(/^count.* step 1 of/m, 30_000);
  return createPresser(terminal, terminal.close);
}

/** Rows of our live part: what Ink draws anew at each press. */
export function rowsDrawn(presser: Presser): number {
  const rows = presser.terminal.screen().split('\n');
  const last = rows.findLastIndex((row) => row.startsWith('> '));
  const name = JSON.parse(readFileSync(briefPath, 'utf8')).name as string;
  const first = rows.findLastIndex((row) => row.startsWith(name) && row.includes('['));
  // The blank row above the phases is drawn too.
  return last - first + 2;
}
