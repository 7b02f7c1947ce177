import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { namesIn, scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { type TroubledDisk, troubledDisk } from '../../test/fixtures/disk/troubled-disk.ts';
import { writeWhole } from './write-whole.ts';

const sheet = new TextEncoder().encode('a whole sheet');

describe.each([
  ['links', (_: TroubledDisk): void => undefined],
  ['no links', (disk: TroubledDisk) => disk.fail('EPERM', 'link')],
])('a new file on a drive with %s', (_, prepare) => {
  const begin = () => {
    const folder = scratchFolder();
    const seen: (readonly string[])[] = [];
    const disk = troubledDisk(() => seen.push(namesIn(folder)));
    prepare(disk);
    return { folder, path: join(folder, 'sheet.html'), disk, seen };
  };

  it('has its name only once it is whole on the disk', () => {
    const { folder, path, disk, seen } = begin();
    expect(writeWhole(disk.disk, path, sheet)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe('a whole sheet');
    expect(namesIn(folder)).toEqual(['sheet.html']);
    // While it was written it was under another name; what took its own name was empty.
    expect(seen[0]).toEqual([expect.stringContaining('.draft-')]);
  });

  it('leaves alone what has the name', () => {
    const { folder, path, disk } = begin();
    writeFileSync(path, 'mine');
    expect(writeWhole(disk.disk, path, sheet)).toBe(false);
    expect(readFileSync(path, 'utf8')).toBe('mine');
    expect(namesIn(folder)).toEqual(['sheet.html']);
  });

  it('leaves nothing where the disk is full', () => {
    const { folder, path, disk } = begin();
    disk.fillAfter(5);
    expect(() => writeWhole(disk.disk, path, sheet)).toThrow('ENOSPC');
    expect(namesIn(folder)).toEqual([]);
  });
});

it('leaves nothing where it can be given neither its name nor another’s place', () => {
  const folder = scratchFolder();
  const { disk, fail } = troubledDisk();
  fail('EPERM', 'link');
  fail('EIO', 'rename');
  expect(() => writeWhole(disk, join(folder, 'sheet.html'), sheet)).toThrow('EIO');
  expect(namesIn(folder)).toEqual([]);
});
