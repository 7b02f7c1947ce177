/** What the built program prints, where it cannot be printed. */
import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { expect, it } from 'vitest';

it.skipIf(!existsSync('/dev/full'))('on a full disk it says so in one line', () => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = spawnSync(process.execPath, ['dist/cli.js', 'plan', 'demo/dice-bag.json'], {
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C' },
    stdio: ['ignore', full, 'pipe'],
  });
  closeSync(full);
  expect([status, stderr]).toEqual([
    1,
    'slantwise: What was to be printed could not be written (ENOSPC). Make room, or print elsewhere.\n',
  ]);
});

it.skipIf(process.platform === 'win32')('to a pipe that is closed early it ends quietly', () => {
  const shell = 'node dist/cli.js steps demo/dice-bag.json --json | head -n 1 >/dev/null; echo ended';
  const { stdout, stderr } = spawnSync('sh', ['-c', shell], { encoding: 'utf8' });
  expect([stdout, stderr]).toEqual(['ended\n', '']);
});

it('asks back where a word is neither a file nor a command', () => {
  const { status, stderr } = spawnSync(process.execPath, ['dist/cli.js', 'repaly'], {
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C' },
  });
  expect([status, stderr]).toEqual([
    1,
    'slantwise: There is no file and no command repaly. Did you mean replay?\n',
  ]);
});
