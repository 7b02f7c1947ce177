/** What the built program prints, where it cannot be printed. */
import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { expect, it } from 'vitest';
import { hermetic } from '../tools/hermetic.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

it.skipIf(!existsSync('/dev/full'))('on a full disk it says so in one line', () => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = slantwise(['plan', 'demo/dice-bag.json'], { stdout: full });
  closeSync(full);
  expect([status, stderr]).toEqual([
    1,
    'slantwise: The output could not be written (ENOSPC). Make room, or print elsewhere.\n',
  ]);
});

it.skipIf(process.platform === 'win32')('to a pipe that is closed early it ends quietly', () => {
  const shell = 'node dist/cli.js steps demo/dice-bag.json --json | head -n 1 >/dev/null; echo ended';
  const { stdout, stderr } = spawnSync('sh', ['-c', shell], {
    encoding: 'utf8',
    env: hermetic(emptyFolder()),
  });
  expect([stdout, stderr]).toEqual(['ended\n', '']);
});

it('asks back where a word is neither a file nor a command', () => {
  const { status, stderr } = slantwise(['repaly']);
  expect([status, stderr]).toEqual([
    1,
    'slantwise: There is no file or command repaly. Did you mean replay?\n',
  ]);
});
