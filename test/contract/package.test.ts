/** The package as `npm pack` makes it: installed in an empty folder it brings itself alone, with the notices of what is in it, and runs. */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

const npm = (cwd: string, ...args: readonly string[]): string =>
  execFileSync('npm', [...args, '--silent', '--no-audit', '--no-fund'], {
    cwd,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });

it('installs nothing beside itself, runs no script, and works', () => {
  const folder = emptyFolder();
  // Built already; what would build it again is left out.
  npm(process.cwd(), 'pack', '--ignore-scripts', '--pack-destination', folder);
  const [tarball = ''] = readdirSync(folder);
  npm(folder, 'install', '--offline', '--ignore-scripts', join(folder, tarball));
  expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
    'slantwise',
  ]);
  const installed = join(folder, 'node_modules', 'slantwise');
  const { dependencies, scripts } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'));
  expect(dependencies).toBeUndefined();
  expect(['preinstall', 'install', 'postinstall'].filter((name) => name in scripts)).toEqual([]);
  const program = join(installed, 'dist', 'cli.js');
  const { stdout, status } = slantwise(['--practice'], { program, input: 'next 3\nquit\n' });
  expect([status, stdout]).toEqual([0, expect.stringContaining('Step 4 of')]);
  expect(JSON.parse(slantwise(['plan', 'demo/dice-bag.json', '--json'], { program }).stdout)).toHaveProperty(
    'stitches',
  );
  const notices = readFileSync(join(installed, 'dist', 'NOTICES.txt'), 'utf8');
  for (const library of ['ink', 'react', 'yoga-layout', 'valibot', 'conf']) {
    expect(notices).toMatch(new RegExp(`^${library} \\d+\\.\\d+\\.\\d+ \\(`, 'm'));
  }
});
