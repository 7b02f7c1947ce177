/** Hostile text on every screen of the built program: what the terminal gets is what Slantwise itself writes, and nothing else. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostile, lay } from '../fixtures/hostile.ts';
import { openTerminal, type Terminal } from './rig/pseudo-terminal.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'slantwise-hostile-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Cursor, erasing, colours as numbers of ours, and modes: ECMA-48 CSI, without a private blink. */
const ours = /\x1b\[[?><=]?[0-9;]*[A-HJ-MPS-Zdfhlmnpqstu]/g;
const acts = /[\x00-\x07\x0b\x0e-\x1f\x7f-\x9f\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2067\ufeff]/;

/** As it would come from a clipboard. */
const pasted = `\x1b[200~${hostile.replaceAll('\x1b[201~', '')}\x1b[201~`;

function expectOnlyOurs(terminal: Terminal): void {
  const raw = terminal.raw();
  expect(raw).not.toContain('\x1b[5;41m');
  expect(raw).not.toMatch(/\x1b[\]Pc_^X]/);
  const rest = raw.replaceAll(ours, '');
  const found = acts.exec(rest);
  expect(found && JSON.stringify(rest.slice(found.index, found.index + 40))).toBeNull();
}

describe.each<[string, (inFolder: (name: string) => string) => readonly string[], readonly string[]]>([
  [
    'the bench',
    (name) => ['--log', name('hostile.jsonl')],
    ['notes', 'marks', 'where', 'bags', 'plan', 'next'],
  ],
  [
    'the bench, a yarn',
    (name) => ['--log', name('yarn.jsonl')],
    ['next 30', 'where', 'plan', 'draw strip', 'draw bed', 'large on'],
  ],
  ['a lock', (name) => ['--log', name('held.jsonl')], []],
  ['the player', (name) => ['replay', name('hostile.jsonl')], ['go step 4']],
  ['the questions', () => ['new'], ['2 by 3', 'change name']],
])('%s', (_, args, typed) => {
  it('shows hostile text, typed and pasted too, as text', async () => {
    const home = mkdtempSync(join(folder, 'home-'));
    lay({ folder, home });
    const terminal = openTerminal({
      args: args((name) => join(folder, name)),
      home,
    });
    await terminal.waitFor(/step \d+ of|ask|OWNED/i);
    for (const line of typed) {
      terminal.send(`${line}\r`);
      // Lines that come together count as pasted.
      await pause(250);
    }
    terminal.send(`${pasted}`);
    await terminal.waitFor(/DENWO/);
    terminal.send('\r');
    terminal.send('\x15\x03');
    await terminal.exited;
    expectOnlyOurs(terminal);
    await terminal.close();
  });
});
