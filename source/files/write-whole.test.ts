import { chmodSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inScratch, namesIn, scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { type TroubledDisk, troubledDisk } from '../../test/fixtures/disk/troubled-disk.ts';
import { writeBriefIn } from './kept-files.ts';
import { readDraftFile, removeDraftFile, writeDraftFile, writeWhole } from './write-whole.ts';

describe('the answers of a bag that is being planned', () => {
  it('are kept privately, replaced whole, and removed', () => {
    const folder = inScratch('slantwise');
    const path = join(folder, 'new-bag.json');
    expect(readDraftFile(path)).toBe('');
    expect(writeDraftFile(path, 'one')).toMatchObject({ ok: true });
    expect(writeDraftFile(path, 'two')).toMatchObject({ ok: true });
    expect(readDraftFile(path)).toBe('two');
    expect(namesIn(folder)).toEqual(['new-bag.json']);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    removeDraftFile(path);
    removeDraftFile(path);
    expect(readDraftFile(path)).toBe('');
  });

  it('cannot be kept where a file stands in place of the folder: a fault, and what is there stays', () => {
    const file = inScratch('slantwise');
    writeFileSync(file, 'mine');
    expect(writeDraftFile(join(file, 'new-bag.json'), 'one')).toMatchObject({ ok: false });
    removeDraftFile(join(file, 'new-bag.json'));
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });
});

describe('a brief in the folder of briefs', () => {
  it('has the name of the bag, with a number where that is taken, and replaces nothing', () => {
    const folder = inScratch('briefs');
    const kept = [1, 2, 3].map((rows) => writeBriefIn(folder, 'Dice bag!', { rows }));
    expect(kept.map((one) => one.ok && one.value)).toEqual(
      ['dice-bag.json', 'dice-bag-2.json', 'dice-bag-3.json'].map((name) => join(folder, name)),
    );
    expect(readFileSync(join(folder, 'dice-bag.json'), 'utf8')).toBe('{\n  "rows": 1\n}\n');
  });

  it('stays in the folder whatever the bag is called', () => {
    const folder = inScratch('briefs');
    expect(writeBriefIn(folder, '../../etc/passwd', {})).toEqual({
      ok: true,
      value: join(folder, 'etc-passwd.json'),
    });
    expect(writeBriefIn(folder, '🧶', {})).toEqual({ ok: true, value: join(folder, 'bag.json') });
  });

  it.skipIf(process.getuid?.() === 0 || process.platform === 'win32')(
    'is a fault where nothing may be written',
    () => {
      const folder = inScratch('briefs');
      mkdirSync(folder);
      chmodSync(folder, 0o500);
      expect(writeBriefIn(folder, 'Dice bag', {})).toMatchObject({ fault: { trouble: 'no-permission' } });
    },
  );
});

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
