/** A log that something else writes to while it is open: nothing in memory may be lost, and nothing of the other's. */
import { appendFileSync, readFileSync, statSync, truncateSync, utimesSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inScratch } from '../../test/fixtures/disk/scratch.ts';
import { JournalFile } from './journal-file.ts';

function threeLines(path: string): JournalFile {
  const file = new JournalFile(path);
  for (const line of ['one\n', 'two\n', 'three\n']) expect(file.append(line).state).toBe('saved');
  return file;
}

describe('a log changed under the program', () => {
  it.each([
    ['emptied', (path: string) => truncateSync(path, 0)],
    ['cut', (path: string) => truncateSync(path, 5)],
  ])('%s: is written again whole with the next line', (_, change) => {
    const path = inScratch();
    const file = threeLines(path);
    change(path);
    expect(file.append('four\n').state).toBe('saved');
    expect(readFileSync(path, 'utf8')).toBe('one\ntwo\nthree\nfour\n');
    file.close();
  });

  it.each([
    ['appended to', (path: string) => appendFileSync(path, 'mine\n')],
    ['overwritten', (path: string) => writeFileSync(path, 'ONE\nTWO\nTHREE\n')],
  ])('%s: is left as it is, and the program says that it is not saved', (_, change) => {
    const path = inScratch();
    const file = threeLines(path);
    change(path);
    // Disks that count time in seconds see it too.
    const { atime, mtime } = statSync(path);
    utimesSync(path, atime, new Date(mtime.getTime() + 2000));
    const found = readFileSync(path, 'utf8');
    expect(file.append('four\n')).toMatchObject({ state: 'unsaved', trouble: 'changed', waiting: 1 });
    expect(readFileSync(path, 'utf8')).toBe(found);
    const copy = file.copyTo(`${path}-elsewhere`);
    expect(copy.ok && readFileSync(`${path}-elsewhere`, 'utf8')).toBe('one\ntwo\nthree\nfour\n');
    if (copy.ok) copy.value.close();
    file.close();
  });
});
