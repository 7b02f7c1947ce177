/** Something else has the log's file while it is open: before the next line it is noticed, and all in memory is kept. */
import {
  appendFileSync,
  copyFileSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inScratch, open, press, readingOf, start, stepIn } from '../../test/fixtures/disk/scratch.ts';

/** Keeps the times of the file, as some copying does. */
function unnoticed(path: string, change: () => void): void {
  change();
  utimesSync(path, 1_900_000_000, 1_900_000_000);
}

describe('a log whose file is', () => {
  it.each<[string, (path: string) => void]>([
    ['emptied', (path) => truncateSync(path)],
    ['cut', (path) => truncateSync(path, 900)],
    ['deleted', (path) => rmSync(path)],
    ['moved away', (path) => renameSync(path, `${path}.old`)],
    [
      'moved away and copied back',
      (path) => {
        renameSync(path, `${path}.old`);
        copyFileSync(`${path}.old`, path);
      },
    ],
  ])('%s: is whole again under its name after the next press', (_, change) => {
    const path = inScratch();
    const log = start(path);
    press(log, 9);
    change(path);
    press(log);
    expect([log.path, log.status.state, stepIn(path), readingOf(path).fault]).toEqual([
      path,
      'saved',
      10,
      null,
    ]);
    expect(log.tellTakenOver()).toBeNull();
    log.leave();
  });

  it.each<[string, (path: string) => void]>([
    ['appended to', (path) => appendFileSync(path, 'mine\n')],
    [
      'overwritten by a text as long',
      (path) => writeFileSync(path, Buffer.alloc(readFileSync(path).length, 'x')),
    ],
    [
      'overwritten so that its times stay',
      (path) => unnoticed(path, () => writeFileSync(path, Buffer.alloc(readFileSync(path).length, 'x'))),
    ],
    [
      'replaced by another',
      (path) => {
        writeFileSync(`${path}.new`, 'mine\n');
        renameSync(`${path}.new`, path);
      },
    ],
  ])('%s: is left as it is, and the work goes on beside it', (_, change) => {
    const path = inScratch();
    const log = start(path);
    press(log, 9);
    change(path);
    const theirs = readFileSync(path);
    press(log);
    expect(log.path).toBe(path.replace('.jsonl', '-kept-1.jsonl'));
    expect([log.tellTakenOver(), log.tellTakenOver()]).toEqual([path, null]);
    press(log);
    expect([log.status.state, stepIn(log.path), readingOf(log.path).fault]).toEqual(['saved', 11, null]);
    expect(readFileSync(path).equals(theirs)).toBe(true);
    log.leave();
    expect(open(log.path).session.done).toBe(11);
  });

  it('written to by a second program, once somebody has deleted the lock: both keep all they did', () => {
    const path = inScratch();
    const first = start(path);
    press(first, 3);
    rmSync(`${path}.lock`);
    const second = open(path);
    press(second, 2);
    press(first, 4);
    press(second, 1);
    expect([second.path, stepIn(path), readingOf(path).fault]).toEqual([path, 6, null]);
    expect([first.status.state, stepIn(first.path), readingOf(first.path).fault]).toEqual(['saved', 7, null]);
    expect(first.tellTakenOver()).toBe(path);
    first.leave();
    second.leave();
  });

  it('changed just before leaving: is compared once more', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 2);
    truncateSync(path);
    expect(log.leave().state).toBe('saved');
    expect([stepIn(path), readingOf(path).state?.events]).toEqual([2, 3]);
  });
});
