import { existsSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { bundleScript } from './bundle-script.ts';
import { openTerminal, type Terminal, type TerminalOptions } from './pseudo-terminal.ts';

const opened: Terminal[] = [];
const run = (script: string, options: TerminalOptions = {}): Terminal => {
  const terminal = openTerminal({ command: process.execPath, args: ['-e', script], ...options });
  opened.push(terminal);
  return terminal;
};
afterEach(async () => {
  await Promise.all(opened.splice(0).map((terminal) => terminal.close()));
});

const echo = `process.stdin.setRawMode(true); process.stdin.on('data', (text) => console.log('got', JSON.stringify(String(text))));
  console.log('ready');`;

describe('a program in the pseudo-terminal', () => {
  test('gets what is sent, and what it writes is on the screen', async () => {
    const terminal = run(echo);
    await terminal.waitFor('ready');
    terminal.send('\x1b[1;2P');
    expect(await terminal.waitFor('got')).toBe('ready\ngot "\\u001b[1;2P"');
  });

  test('sees the size it was given and hears of a new one', async () => {
    const terminal = run(
      `const say = () => console.log(process.stdout.columns + 'x' + process.stdout.rows); say();
       process.stdout.on('resize', say); process.stdin.resume();`,
      { columns: 61, rows: 17 },
    );
    await terminal.waitFor('61x17');
    terminal.resize(44, 12);
    await terminal.waitFor('44x12');
  });

  test('finds a clean environment and an empty home', async () => {
    const terminal = run(
      `const { CI, HOME, XDG_CONFIG_HOME, TERM, COLORTERM, LIFT } = process.env;
       console.log(CI, TERM, COLORTERM, LIFT, XDG_CONFIG_HOME.startsWith(HOME), require('fs').readdirSync(HOME).length);`,
      { env: { COLORTERM: undefined, LIFT: 'up' }, columns: 120 },
    );
    expect(await terminal.waitFor(/true 0/)).toBe('undefined xterm-256color undefined up true 0');
    await terminal.exited;
    await terminal.close();
    expect(existsSync(terminal.home)).toBe(false);
  });

  test('is answered when it asks where the cursor is (ECMA-48, CPR)', async () => {
    const terminal = run(`${echo} process.stdout.write('\\x1b[6n')`);
    await terminal.waitFor('got "\\u001b[2;1R"');
  });

  test('ends with its own status, or by the signal sent', async () => {
    expect(await run('process.exit(3)').exited).toEqual({ code: 3, signal: undefined });
    const terminal = run(echo);
    await terminal.waitFor('ready');
    terminal.kill('SIGKILL');
    expect(await terminal.exited).toMatchObject({ signal: 'SIGKILL' });
  });
});

test('a component is bundled as the program is, and drawn in colour', async () => {
  const script = await bundleScript(
    `import { render, Text } from 'ink'; render(<Text color="#8e4585">plum</Text>);`,
    import.meta.dirname,
  );
  const terminal = openTerminal({ command: process.execPath, args: [script] });
  opened.push(terminal);
  await terminal.waitFor('plum');
  expect(terminal.raw()).toContain('\x1b[38;2;142;69;133mplum');
  rmSync(dirname(script), { recursive: true });
});

describe('what was written', () => {
  test('stays in the transcript after it has scrolled away', async () => {
    const terminal = run(`for (let row = 1; row <= 40; row++) console.log('row ' + row)`, { rows: 10 });
    await terminal.exited;
    expect(terminal.screen()).not.toContain('row 30\n');
    expect(terminal.transcript().split('\n')).toHaveLength(40);
  });

  test('is searched for clearings of the scrollback', async () => {
    const terminal = run(`process.stdout.write('a\\x1b[2J\\x1b[3J\\x1b[Hb')`);
    await terminal.exited;
    expect(terminal.clears()).toBe(1);
    expect(terminal.screen()).toBe('b');
    expect(terminal.raw()).toContain('a\x1b[2J');
  });
});

describe('waiting in vain', () => {
  test('fails with the last screen when the time is up', async () => {
    const terminal = run(echo);
    await terminal.waitFor('ready');
    await expect(terminal.waitFor('never', 50)).rejects.toThrow(
      '50 ms went by while waiting for never; the screen was:\nready',
    );
  });

  test('fails at once when the program has ended', async () => {
    const terminal = run(`console.log('last words')`);
    await expect(terminal.waitFor('never')).rejects.toThrow(/ended with 0 .*\nlast words/);
  });
});
