/** The shells themselves are the judges: each reads its script and is asked what it would offer. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { englishWords } from '../wording/words.ts';
import { commands } from './commands.ts';
import { completionScript, type Shell } from './shell-completion.ts';

function run(shell: Shell, commands: string): readonly string[] {
  const { stdout, stderr, status } = spawnSync(shell, ['-c', commands], { encoding: 'utf8' });
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
  return stdout.split('\n').filter((line) => line !== '');
}

const isHere = (shell: Shell): boolean => spawnSync(shell, ['-c', 'exit 0']).status === 0;
const missing = (['bash', 'zsh', 'fish'] as const).filter((shell) => !isHere(shell));
if (missing.length > 0)
  console.warn(`Not tried, for want of the shell: completion in ${missing.join(', ')}.`);

const names = commands.map(({ name }) => name);

describe.runIf(isHere('bash'))('bash', () => {
  const offered = (...typed: readonly string[]): readonly string[] =>
    run(
      'bash',
      `${completionScript('bash', commands, englishWords)}
COMP_WORDS=(slantwise ${typed.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${typed.length}
_slantwise
printf '%s\\n' "\${COMPREPLY[@]}"`,
    );

  it('offers every command first', () => {
    expect(offered('')).toEqual(expect.arrayContaining(names));
    expect(offered('rep')).toEqual(['replay']);
  });

  it('offers the options of the command', () => {
    expect(offered('sheet', 'bag.json', '--')).toEqual([
      '--out',
      '--class',
      '--paper',
      '--tag',
      '--fibre',
      '--care',
    ]);
    expect(offered('bag.json', '--pl')).toEqual(['--plain']);
    expect(offered('plan', '--from')).toEqual(['--from-yarn']);
  });

  it('offers what an argument may be', () => {
    expect(offered('completion', '')).toEqual(['bash', 'zsh', 'fish']);
  });

  it('leaves files to the shell', () => {
    expect(offered('plan', 'dice')).toEqual([]);
    expect(offered('plan', '')).toEqual([]);
    expect(offered('sheet', 'bag.json', '--out', '')).toEqual([]);
  });
});

describe.runIf(isHere('fish'))('fish', () => {
  const offered = (typed: string): readonly string[] =>
    run('fish', `${completionScript('fish', commands, englishWords)}\ncomplete -C '${typed}'`).map(
      (line) => line.split('\t')[0] ?? '',
    );

  it('offers every command first', () => {
    expect(offered('slantwise ')).toEqual(expect.arrayContaining(names));
    expect(offered('slantwise rec')).toEqual(['record']);
  });

  it('offers the options of the command, and what an argument may be', () => {
    expect(offered('slantwise sheet bag.json --').toSorted()).toEqual([
      '--care',
      '--class',
      '--fibre',
      '--out',
      '--paper',
      '--tag',
    ]);
    expect(offered('slantwise completion z')).toEqual(['zsh']);
  });
});

describe.runIf(isHere('zsh'))('zsh', () => {
  it('takes the script for slantwise', () => {
    const script = `autoload -U compinit; compinit -D\n${completionScript('zsh', commands, englishWords)}\nprint $_comps[slantwise]`;
    expect(run('zsh', script)).toEqual(['_slantwise']);
  });
});
