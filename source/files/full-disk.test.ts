/** A real file system with no room left: a small tmpfs, where this machine lets us mount one. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { namesIn, open, press, readingOf, start, stepIn } from '../../test/fixtures/disk/scratch.ts';

const folder = process.platform === 'linux' ? mountSmallDisk() : 'not Linux';
const reason = folder.startsWith('/') ? null : folder;
if (reason !== null)
  console.warn(`\nSKIPPED: the test on a real full disk, since no tmpfs can be mounted here: ${reason}\n`);

afterAll(() => {
  if (reason !== null) return;
  spawnSync('umount', [folder]);
  rmdirSync(folder);
});

/** The mount point of a new tmpfs of 64 KiB, or why there is none. */
function mountSmallDisk(): string {
  const point = mkdtempSync(join(tmpdir(), 'slantwise-disk-'));
  const { status, stderr, error } = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', point]);
  return status === 0 ? point : (error?.message ?? String(stderr)).trim().replace(/^\//, '');
}

/** Takes all the room there is; gives how to make some again. */
function fill(): () => void {
  const path = join(folder, 'ballast');
  for (const bytes of [4096, 512, 64, 1]) {
    try {
      for (;;) writeFileSync(path, Buffer.alloc(bytes), { flag: 'a' });
    } catch {}
  }
  return () => rmSync(path);
}

describe.skipIf(reason !== null)('on a full disk', () => {
  it('a running session goes on, and all of it is saved when there is room again', () => {
    const path = join(folder, 'bag.jsonl');
    const log = start(path);
    press(log, 3);
    const makeRoom = fill();
    while (log.status.state === 'saved') press(log);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble: 'disk-full' });
    press(log, 5);
    const onDisk = readingOf(path);
    expect([onDisk.fault, (onDisk.state?.session.done ?? 0) >= 3]).toEqual([null, true]);
    makeRoom();
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', log.session.done]);
    expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0 });
    log.leave();
    rmSync(path);
  });

  it('a session begins and is opened in memory', () => {
    const path = join(folder, 'bag.jsonl');
    const makeRoom = fill();
    const log = start(path);
    press(log, 2);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble: 'disk-full' });
    makeRoom();
    expect(log.leave().state).toBe('saved');
    const whole = readFileSync(path);
    const makeRoomAgain = fill();
    writeFileSync(path, whole);
    const again = open(path);
    while (again.status.state === 'saved') press(again);
    expect(again.status).toMatchObject({ trouble: 'disk-full' });
    makeRoomAgain();
    expect(again.leave().state).toBe('saved');
    expect([stepIn(path), namesIn(folder)]).toEqual([again.session.done, ['bag.jsonl']]);
  });
});
