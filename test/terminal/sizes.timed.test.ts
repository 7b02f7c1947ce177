/** Windows of any size, resized at any speed with anything on the screen: nothing loops, and keys and signals are heard. */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { useBench } from './home.ts';
import type { Terminal } from './rig/pseudo-terminal.ts';

const pouch = 'demo/token-pouch.json';

/** From nothing to more than any screen; the narrow ones are where words must be cut. */
const sizes: readonly (readonly [columns: number, rows: number])[] = [
  [1, 1],
  [2, 200],
  [500, 1],
  [3, 3],
  [7, 24],
  [14, 10],
  [18, 40],
  [23, 24],
  [24, 7],
  [24, 8],
  [25, 9],
  [40, 12],
  [500, 200],
  [80, 2],
  [120, 60],
];

/** The program still does what it is told. */
async function answers(terminal: Terminal): Promise<void> {
  terminal.resize(80, 24);
  terminal.send('\x15where\r');
  await terminal.waitFor(/You are here|The bed is empty/);
}

async function resizeThrough(terminal: Terminal, waitMs: number): Promise<void> {
  for (const [columns, rows] of sizes) {
    terminal.resize(columns, rows);
    await pause(waitMs);
  }
}

describe('the bench', () => {
  const bench = useBench();

  it.each(['plan', 'draw strip', 'draw bed', 'large on', `note ${'x'.repeat(600)}`])(
    'with `%s` on the screen takes any size, at any speed',
    async (typed) => {
      const terminal = bench({ args: [pouch] });
      await terminal.waitFor('step 1 of');
      terminal.send(`${typed}\r`);
      await pause(200);
      for (const waitMs of [0, 20]) await resizeThrough(terminal, waitMs);
      await answers(terminal);
      terminal.resize(1, 1);
      await pause(100);
      terminal.kill('SIGTERM');
      expect((await terminal.exited).code).toBe(130);
    },
  );

  it.each([sizes[0], sizes[4], sizes[5], sizes[8], sizes[12]] as typeof sizes)(
    'begins in a window of %i by %i, and is heard there',
    async (columns, rows) => {
      const terminal = bench({ args: [pouch], columns, rows });
      await pause(600);
      terminal.send('next 3\r');
      await pause(100);
      terminal.resize(80, 24);
      await terminal.waitFor('step 4 of');
      terminal.send('quit\r');
      expect((await terminal.exited).code).toBe(0);
    },
  );

  it('says in one line that a window is too small, as far as there is room, and goes on when it is not', async () => {
    const terminal = bench({ args: [pouch] });
    await terminal.waitFor('step 1 of');
    terminal.resize(23, 24);
    await terminal.waitFor(/^\s*too small/m);
    expect(terminal.screen().trim().split('\n')).toHaveLength(1);
    terminal.resize(80, 24);
    await terminal.waitFor('step 1 of');
  });

  it('goes on drawing in its place when a large window has become lower than the screen was', async () => {
    const terminal = bench({ args: [pouch], columns: 200, rows: 50 });
    await terminal.waitFor('step 1 of');
    terminal.resize(100, 30);
    // Before it is drawn for its new size the lower window has but the foot of the screen.
    await terminal.waitFor((screen) => screen.includes('step 1 of') && screen.endsWith('such as help'));
    await pause(500);
    const before = terminal.screen().split('\n').slice(0, -1);
    terminal.send('l');
    const typed = await terminal.waitFor(/^> l$/m);
    expect(typed.split('\n').slice(0, -1)).toEqual(before);
  });
});

describe('the questions and the player', () => {
  const bench = useBench();
  it.each([
    ['questions', ['new'], 'called?'],
    ['player', ['replay', 'demo/token-pouch.jsonl'], 'step 1 of'],
  ])('%s take any size, and leave when told', async (_, args, first) => {
    const terminal = bench({ args });
    await terminal.waitFor(first);
    for (const waitMs of [0, 40]) await resizeThrough(terminal, waitMs);
    terminal.resize(80, 24);
    await terminal.waitFor(/called\?|step \d+ of/);
    terminal.resize(2, 2);
    terminal.send('\x03');
    expect((await terminal.exited).code).toBe(130);
  });
});
