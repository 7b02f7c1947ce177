/** The Tab key in each shell, as it is pressed: after a command that takes a file it offers files, and options after a dash. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { slantwise } from '../tools/slantwise.ts';
import { useBench } from './home.ts';
import type { Terminal } from './rig/pseudo-terminal.ts';

interface Shell {
  readonly name: 'bash' | 'zsh' | 'fish';
  /** Reads nothing that whoever runs the tests has set up. */
  readonly args: readonly string[];
  /** Makes the script known. */
  readonly load: (script: string) => string;
}

const shells: readonly Shell[] = [
  { name: 'bash', args: ['--norc', '-i'], load: (script) => `source ${script}` },
  {
    name: 'zsh',
    args: ['-f', '-i'],
    load: (script) => `autoload -U compinit; compinit -D; source ${script}`,
  },
  { name: 'fish', args: ['--no-config', '-i'], load: (script) => `source ${script}` },
];

const isHere = (name: string): boolean => spawnSync(name, ['-c', 'exit 0']).status === 0;
const absent = shells.filter(({ name }) => !isHere(name)).map(({ name }) => name);
if (absent.length > 0) console.warn(`Not tried, for want of the shell: the Tab key in ${absent.join(', ')}.`);

describe.each(shells.filter(({ name }) => !absent.includes(name)))('$name', ({ name, args, load }) => {
  const bench = useBench();
  let terminal: Terminal;
  afterEach(() => terminal.close());

  /** A shell in a folder with two briefs, that knows the script. */
  async function ready(): Promise<void> {
    terminal = bench({ command: name, args, env: { PS1: 'shell> ', PROMPT: 'shell> ' }, columns: 120 });
    const folder = join(terminal.home, 'work');
    mkdirSync(folder);
    for (const file of ['dice-bag.json', 'token-pouch.json']) writeFileSync(join(folder, file), '{}');
    writeFileSync(join(terminal.home, 'script'), slantwise(['completion', name]).stdout);
    await terminal.waitFor(/[>#%$]\s*$/);
    terminal.send(`cd ${folder}; ${load('../script')}; echo re''ady\r`);
    await terminal.waitFor(/^ready/m);
    await pause(100);
  }

  it('offers the files of the folder after a command that takes one, and no option', async () => {
    await ready();
    terminal.send('slantwise plan \t\t');
    await terminal.waitFor(
      (screen) => screen.includes('dice-bag.json') && screen.includes('token-pouch.json'),
    );
    expect(terminal.screen()).not.toContain('--json');
  });

  it('completes a file that has begun, options after a dash, and commands', async () => {
    await ready();
    for (const [typed, wanted] of [
      ['slantwise plan tok', 'slantwise plan token-pouch.json'],
      ['slantwise plan token-pouch.json --fr', 'slantwise plan token-pouch.json --from-yarn'],
      ['slantwise sheet dice-bag.json --out tok', 'slantwise sheet dice-bag.json --out token-pouch.json'],
      ['slantwise comp', 'slantwise completion'],
      ['slantwise completion z', 'slantwise completion zsh'],
      ['slantwise dic', 'slantwise dice-bag.json'],
    ] as const) {
      terminal.send(`${typed}\t`);
      await terminal.waitFor(wanted);
      terminal.send('\x15');
      await terminal.waitFor(/[>#%$]\s*$/);
      await pause(150);
    }
  });
});
