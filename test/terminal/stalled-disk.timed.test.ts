/** The built program on a real file system that stops to answer: one in a file, frozen, where this machine allows it. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { readLog } from '../../source/journal/read-log.ts';
import { useBench } from './home.ts';

const pouch = 'demo/token-pouch.json';
const folder = mkdtempSync(join(tmpdir(), 'slantwise-frozen-'));
const disk = join(folder, 'disk');

/** What a command complained of; null where all was well. */
function complaintOf(command: string, ...given: readonly string[]): string | null {
  const { status, stderr, error } = spawnSync(command, given);
  return status === 0 ? null : `${command}: ${error?.message ?? String(stderr).trim()}`;
}

function mountDisk(): string | null {
  if (process.platform !== 'linux') return 'not Linux';
  return (
    complaintOf('mkdir', disk) ??
    complaintOf('truncate', '-s', '8M', `${disk}.image`) ??
    complaintOf('mkfs.ext4', '-q', `${disk}.image`) ??
    complaintOf('mount', '-o', 'loop', `${disk}.image`, disk) ??
    complaintOf('fsfreeze', '-f', disk) ??
    complaintOf('fsfreeze', '-u', disk)
  );
}

const reason = mountDisk();
if (reason !== null)
  console.warn(`\nSKIPPED: the tests on a real frozen disk, since none can be had here: ${reason}\n`);

afterAll(() => {
  spawnSync('umount', [disk]);
  rmSync(folder, { recursive: true, force: true });
});

let isFrozen = false;
const freeze = (): void => {
  expect(complaintOf('fsfreeze', '-f', disk)).toBeNull();
  isFrozen = true;
};
const thaw = (): void => {
  if (isFrozen) spawnSync('fsfreeze', ['-u', disk]);
  isFrozen = false;
};

describe.skipIf(reason !== null)('a disk that stops to answer while a bag is made', () => {
  const bench = useBench();
  afterEach(thaw);

  const work = async (name: string) => {
    const log = join(disk, name);
    const terminal = bench({ args: [pouch, '--log', log] });
    await terminal.waitFor('step 1 of');
    terminal.send('next 3\r');
    await terminal.waitFor('step 4 of');
    freeze();
    terminal.send('next 2\r');
    expect(await terminal.waitFor('step 6 of')).toMatch(
      /! Not saved: the disk does not answer\. The work goes on in memory and 1\s+line\s+waits/,
    );
    const from = performance.now();
    terminal.send('next\r');
    await terminal.waitFor('step 7 of');
    // Far below the second that the first press waited.
    expect(performance.now() - from).toBeLessThan(700);
    return { terminal, log };
  };

  it('loses nothing, and says that all is well once it answers, without a press', async () => {
    const { terminal, log } = await work('thawed.jsonl');
    thaw();
    await terminal.waitFor((screen) => !screen.includes('Not saved'));
    expect(readLog(readFileSync(log))).toMatchObject({
      fault: null,
      tornBytes: 0,
      state: { session: { done: 6 } },
    });
    terminal.send('next\r');
    await terminal.waitFor('step 8 of');
    terminal.send('quit\r');
    expect((await terminal.exited).code).toBe(0);
  });

  it('lets the whole log be saved on another, and leaves', async () => {
    const { terminal } = await work('left.jsonl');
    terminal.send('quit\r');
    await terminal.waitFor(/! \d lines of the log are not on disk: the disk does not answer\./);
    const elsewhere = join(folder, 'rescued.jsonl');
    terminal.send(`save ${elsewhere}\r`);
    await terminal.waitFor(
      (screen) => screen.includes('The whole log is in') && !screen.includes('Not saved'),
    );
    terminal.send('next\r');
    await terminal.waitFor('step 8 of');
    terminal.send('quit\r');
    await terminal.waitFor('The disk may hold up this terminal until it answers.');
    // A frozen disk holds even a process that was killed; a network drive lets it go.
    thaw();
    expect((await terminal.exited).signal).toBe('SIGINT');
    await bench({ args: ['--log', elsewhere] }).waitFor('step 8 of');
  });
});
