/** However a screen is left, the terminal is as it was, the log is in order and its lock gone. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readLog } from '../../source/journal/read-log.ts';
import { useBench } from './home.ts';
import type { Terminal } from './rig/pseudo-terminal.ts';

const pouch = 'demo/token-pouch.json';
/** With a switch assigned, repeats and releases of keys are asked for too. */
const settings = { pedalGapMs: 20, pause: 'short', pedals: { f13: 'confirm' } };

let log = '';
beforeEach(() => {
  log = join(mkdtempSync(join(tmpdir(), 'slantwise-out-')), 'pouch.jsonl');
});
afterEach(() => rmSync(join(log, '..'), { recursive: true, force: true }));

const countOf = (text: string, part: string): number => text.split(part).length - 1;

/** What was pushed was popped, and the last word on each mode is that of a shell. */
function expectRestored(terminal: Terminal): void {
  const raw = terminal.raw();
  expect(countOf(raw, '\x1b[>27u')).toBeGreaterThan(0);
  expect(countOf(raw, '\x1b[<u')).toBe(countOf(raw, '\x1b[>27u'));
  expect(raw.lastIndexOf('\x1b[?2004l')).toBeGreaterThan(raw.lastIndexOf('\x1b[?2004h'));
  expect(raw.lastIndexOf('\x1b[?25h')).toBeGreaterThan(raw.lastIndexOf('\x1b[?25l'));
}

function expectLogInOrder(step: number): void {
  const { state, fault, tornBytes } = readLog(readFileSync(log));
  expect([fault, tornBytes, state?.session.done]).toEqual([null, 0, step]);
  expect(readFileSync(log, 'utf8').trimEnd().split('\n').at(-1)).toContain('"do":"quit"');
  expect(existsSync(`${log}.lock`)).toBe(false);
}

async function sitDown(bench: ReturnType<typeof useBench>): Promise<Terminal> {
  const terminal = bench({ args: [pouch, '--log', log] }, settings);
  await terminal.waitFor('step 1 of');
  terminal.send('next 4\r');
  await terminal.waitFor('step 5 of');
  return terminal;
}

describe('the bench is left', () => {
  const bench = useBench();
  it.each<[string, (terminal: Terminal) => void, number]>([
    ['by quit', ({ send }) => send('quit\r'), 0],
    ['by Ctrl-C', ({ send }) => send('\x03'), 130],
    ['by Ctrl-D', ({ send }) => send('\x04'), 0],
    ['by SIGINT', ({ kill }) => kill('SIGINT'), 130],
    ['by SIGTERM', ({ kill }) => kill('SIGTERM'), 130],
    ['by SIGHUP', ({ kill }) => kill('SIGHUP'), 130],
  ])('%s', async (_, leave, code) => {
    const terminal = await sitDown(bench);
    leave(terminal);
    expect((await terminal.exited).code).toBe(code);
    expectRestored(terminal);
    expectLogInOrder(4);
  });

  it('by the closing of its window: nothing is dumped', async () => {
    const terminal = await sitDown(bench);
    terminal.hangUp();
    expect((await terminal.exited).signal).toBe('SIGHUP');
    expectLogInOrder(4);
  });
});

describe('the bench', () => {
  const bench = useBench();
  it('opens no port to a debugger when it is sent SIGUSR1, and goes on', async () => {
    const terminal = await sitDown(bench);
    terminal.kill('SIGUSR1');
    terminal.send('next\r');
    await terminal.waitFor('step 6 of');
    expect(terminal.raw()).not.toContain('Debugger');
  });
});

describe('the bench is suspended by Ctrl-Z, with a foot switch assigned', () => {
  const bench = useBench();
  it('and brought back, three times: what the switch needs of the terminal is on once, and off in the shell', async () => {
    const shell = bench(
      { command: 'bash', args: ['--norc', '--noediting', '-i'], env: { PS1: 'shell> ' } },
      settings,
    );
    await shell.waitFor('shell>');
    shell.send(`'${process.execPath}' dist/cli.js ${pouch} --log '${log}'\r`);
    await shell.waitFor('step 1 of');
    for (let time = 1; time <= 3; time++) {
      shell.send('\x1a');
      await shell.waitFor(/Stopped[\s\S]*shell>\s*$/);
      expectRestored(shell);
      shell.send('clear; fg\r');
      await shell.waitFor(new RegExp(`step ${time} of`));
      shell.send('next\r');
      await shell.waitFor(new RegExp(`step ${time + 1} of`));
    }
    shell.send('quit\r');
    await shell.waitFor(/shell>\s*$/);
    expectRestored(shell);
    expectLogInOrder(3);
  });
});

describe('the terminal goes away', () => {
  const bench = useBench();
  it('from the questions: they end, and what was answered is kept', async () => {
    const terminal = bench({ args: ['new'] });
    await terminal.waitFor('called?');
    terminal.send('Card sleeve\r');
    await terminal.waitFor('How wide');
    terminal.hangUp();
    expect((await terminal.exited).signal).toBe('SIGHUP');
    expect(readFileSync(join(terminal.home, 'data', 'slantwise', 'new-bag.json'), 'utf8')).toContain(
      'Card sleeve',
    );
  });

  it('from the player: it ends', async () => {
    const terminal = bench({ args: ['replay', 'demo/token-pouch.jsonl'] });
    await terminal.waitFor('step 1 of');
    terminal.hangUp();
    expect((await terminal.exited).signal).toBe('SIGHUP');
  });
});
