/** Names of files as long as the disk takes them, and what a kill left beside them. */
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import {
  inScratch,
  namesIn,
  open,
  press,
  readingOf,
  scratchFolder,
  start,
} from '../../test/fixtures/disk/scratch.ts';
import { slugOf } from './log-list.ts';
import { beside, clearDrafts, draftBeside, writeDraftFile, writeText } from './write-whole.ts';

it.each([1, 100, 191, 192, 240, 246, 250, 249, 255])(
  'a log with a name of %i bytes is written, locked and gone on with',
  (length) => {
    const path = inScratch(`${'a'.repeat(Math.max(1, length - 6))}.jsonl`.slice(-length));
    const log = start(path);
    press(log, 2);
    expect(log.status.state).toBe('saved');
    expect(namesIn(join(path, '..'))).toHaveLength(2);
    log.leave();
    const again = open(path);
    press(again);
    expect([again.status.state, readingOf(path).state?.session.done]).toEqual(['saved', 3]);
    again.leave();
    expect(namesIn(join(path, '..'))).toHaveLength(1);
  },
);

it('two long names that begin alike do not share what stands beside them', () => {
  const name = 'ü'.repeat(127);
  const [one, other] = [beside(`${name}a`, '.lock'), beside(`${name}b`, '.lock')];
  expect(one).not.toBe(other);
  expect(Buffer.byteLength(one)).toBeLessThan(255 - '.draft-00000000-4194304'.length);
});

it('a name is never cut within a sign', () => {
  expect(slugOf('𝒳'.repeat(60))).toBe('𝒳'.repeat(40).toLowerCase());
  expect(slugOf('')).toBe('bag');
});

/** No process has this number: Linux gives none so high. */
const ended = 2 ** 22 + 1;

it('what a kill left half written is cleared when something is written there again, and nothing else', () => {
  const folder = scratchFolder();
  const left = draftBeside(join(folder, 'sheet.html')).replace(/\d+$/, String(ended));
  const elsewhere = left.replace(/draft-[0-9a-f]{8}/, 'draft-00000000');
  for (const path of [left, elsewhere, join(folder, 'mine.draft-1')]) writeFileSync(path, 'half');
  expect(writeText(join(folder, 'sheet.html'), 'whole').ok).toBe(true);
  expect(readdirSync(folder).toSorted()).toEqual(
    [elsewhere.slice(folder.length + 1), 'mine.draft-1', 'sheet.html'].toSorted(),
  );
  writeFileSync(left, 'half');
  expect(writeDraftFile(join(folder, 'new-bag.json'), 'answers').ok).toBe(true);
  expect(readdirSync(folder)).not.toContain(left.slice(folder.length + 1));
});

it('a folder that is not there has nothing to clear', () => {
  expect(() => clearDrafts(inScratch('nowhere'))).not.toThrow();
});
