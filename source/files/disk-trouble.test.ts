import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  inScratch,
  namesIn,
  open,
  press,
  readingOf,
  start,
  stepIn,
} from '../../test/fixtures/disk/scratch.ts';
import { troubledDisk } from '../../test/fixtures/disk/troubled-disk.ts';
import { startedAt } from '../../test/fixtures/sample-log.ts';
import type { DiskTrouble } from '../journal/fault.ts';
import { formatFileFault, formatSaveStatus } from '../wording/file-faults.ts';
import { englishWords } from '../wording/words.ts';
import { type Disk, systemDisk } from './disk.ts';

const keptOf = (path: string): string => path.replace('.jsonl', '-kept-1.jsonl');

describe('when the disk fails under a running session', () => {
  it.each<[DiskTrouble, string, keyof Disk]>([
    ['disk-full', 'ENOSPC', 'write'],
    ['disk-full', 'EDQUOT', 'write'],
    ['read-only', 'EROFS', 'write'],
    ['no-permission', 'EACCES', 'write'],
    ['gone', 'ESTALE', 'write'],
    ['disk-error', 'EIO', 'write'],
    ['disk-error', 'EIO', 'flush'],
    ['disk-full', 'ENOSPC', 'flush'],
  ])(
    '%s (%s at %s): the work goes on, waits, and is saved once the disk is back',
    (trouble, code, operation) => {
      const path = inScratch();
      const { disk, fail, mend } = troubledDisk();
      const log = start(path, { disk });
      press(log, 2);
      fail(code, operation);
      press(log, 3);
      expect(log.status).toMatchObject({ state: 'unsaved', trouble, waiting: 3 });
      expect(log.session.done).toBe(5);
      mend();
      expect(log.retry()).toMatchObject({ state: 'saved' });
      expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0 });
      expect(stepIn(path)).toBe(5);
    },
  );

  it('the next press saves what was waiting', () => {
    const path = inScratch();
    const { disk, fail, mend } = troubledDisk();
    const log = start(path, { disk });
    fail('EIO', 'write', 'open', 'close');
    press(log, 4);
    mend();
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 5]);
  });

  it('a write that comes to a few bytes at a time is finished', () => {
    const path = inScratch();
    const { disk, writeAtMost } = troubledDisk();
    writeAtMost(7);
    press(start(path, { disk }), 3);
    expect(stepIn(path)).toBe(3);
  });

  it('a disk that fills up in the middle of a line leaves no half line behind in the end', () => {
    for (let room = 0; room < 75; room += 5) {
      const path = inScratch();
      const { disk, fillAfter, mend } = troubledDisk();
      const log = start(path, { disk });
      fillAfter(room);
      press(log, 2);
      expect(log.status.state).toBe('unsaved');
      expect(readingOf(path)).toMatchObject({ fault: null });
      mend();
      press(log);
      expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0, state: { events: 3 } });
    }
  });

  it('a failed flush is not trusted: what it covered is written again', () => {
    const path = inScratch();
    const { disk, fail, mend, calls } = troubledDisk();
    const log = start(path, { disk });
    fail('EIO', 'flush');
    press(log);
    mend();
    calls.length = 0;
    log.retry();
    expect(calls.filter((call) => ['cut', 'write', 'flush'].includes(call))).toEqual([
      'cut',
      'write',
      'flush',
    ]);
    expect(readingOf(path)).toMatchObject({ fault: null, state: { events: 1 } });
  });

  it('a folder that is deleted is missed; when it is there again the whole log is written again', () => {
    const path = inScratch('logs', 'bag.jsonl');
    mkdirSync(join(path, '..'));
    const log = start(path);
    press(log, 2);
    rmSync(join(path, '..'), { recursive: true });
    press(log);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble: 'gone' });
    mkdirSync(join(path, '..'));
    expect(log.retry().state).toBe('saved');
    expect(stepIn(path)).toBe(3);
  });

  it('the program makes its own folder again', () => {
    const path = inScratch('data', 'bags', 'bag.jsonl');
    const log = start(path, { ownFolder: true });
    press(log, 2);
    rmSync(join(path, '..', '..'), { recursive: true });
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 3]);
  });

  it('a log that is deleted is written again', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 2);
    rmSync(path);
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 3]);
  });

  it('another file that takes the place of the log is left alone, and all of the log is kept beside it', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 2);
    writeFileSync(`${path}.new`, 'something else');
    renameSync(`${path}.new`, path);
    press(log);
    expect([log.status.state, log.path, stepIn(log.path)]).toEqual(['saved', keptOf(path), 3]);
    expect(readFileSync(path, 'utf8')).toBe('something else');
  });

  it('a lock that another process took meanwhile is respected, and all of the log is kept beside it', () => {
    const path = inScratch();
    const { disk, fail, mend } = troubledDisk();
    const log = start(path, { disk });
    fail('EIO', 'write');
    press(log);
    mend();
    rmSync(`${path}.lock`);
    writeFileSync(`${path}.lock`, JSON.stringify({ pid: 1, host: 'elsewhere', started: null }));
    press(log);
    expect([log.status.state, log.path, stepIn(log.path)]).toEqual(['saved', keptOf(path), 2]);
    expect(stepIn(path)).toBe(0);
  });

  it('slowness is reported from the first flush that takes longer than anybody would miss, and keeps its first figure', () => {
    let nowMs = 0;
    let flushMs = 300;
    const clock = { elapsedMs: () => nowMs, now: () => new Date(startedAt) };
    const { disk } = troubledDisk(() => {
      nowMs += flushMs;
    });
    const log = start(inScratch(), { disk, clock });
    press(log);
    expect(log.status).toEqual({ state: 'saved', slowFlushMs: null });
    flushMs = 301;
    press(log);
    flushMs = 900;
    press(log);
    expect(log.status).toEqual({ state: 'saved', slowFlushMs: 301 });
  });
});

describe('when the disk will not have a log from the start', () => {
  it.each<[DiskTrouble, string]>([
    ['read-only', 'EROFS'],
    ['no-permission', 'EACCES'],
    ['disk-full', 'ENOSPC'],
  ])('%s: a new session begins in memory and is saved later', (trouble, code) => {
    const path = inScratch();
    const { disk, fail, mend } = troubledDisk();
    fail(code, 'create');
    const log = start(path, { disk });
    press(log, 2);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble, waiting: 3 });
    expect(existsSync(path)).toBe(false);
    mend();
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 3]);
  });

  it('an old session goes on in memory, its torn line untouched until it can be kept', () => {
    const path = inScratch();
    const first = start(path);
    press(first, 2);
    first.close();
    writeFileSync(path, 'torn', { flag: 'a' });
    const { disk, fail, mend } = troubledDisk();
    fail('EROFS', 'create', 'open');
    const log = open(path, { disk });
    press(log);
    expect([log.status.state, log.session.done, log.tornKeptAs]).toEqual(['unsaved', 3, null]);
    expect(readingOf(path)).toMatchObject({ tornBytes: 4, state: { events: 2 } });
    mend();
    press(log);
    expect([log.status.state, stepIn(path), log.tornKeptAs]).toEqual(['saved', 4, 'bag.jsonl.torn-1']);
  });

  it('the same torn line is kept once, however often the cut fails', () => {
    const path = inScratch();
    start(path).close();
    writeFileSync(path, 'torn', { flag: 'a' });
    const { disk, fail, mend } = troubledDisk();
    fail('EIO', 'cut');
    const log = open(path, { disk });
    press(log, 3);
    mend();
    log.leave();
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl', 'bag.jsonl.torn-1']);
  });
});

describe('saving elsewhere', () => {
  it('writes the whole log and goes on there', () => {
    const path = inScratch();
    const { disk, fail, mend } = troubledDisk();
    const log = start(path, { disk });
    press(log, 2);
    fail('EIO', 'write');
    press(log);
    mend();
    const elsewhere = inScratch();
    expect(log.saveElsewhere(elsewhere)).toMatchObject({ ok: true, value: { state: 'saved' } });
    press(log);
    expect([log.path, stepIn(elsewhere), stepIn(path)]).toEqual([elsewhere, 4, 2]);
    expect(log.leave().state).toBe('saved');
    expect(namesIn(join(elsewhere, '..'))).toEqual(['bag.jsonl']);
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl']);
  });

  it('refuses a name that is taken, a folder that is not there and a full disk, and leaves nothing behind', () => {
    const { disk, fillAfter, mend } = troubledDisk();
    const log = start(inScratch(), { disk });
    const taken = inScratch();
    writeFileSync(taken, 'my diary');
    expect(log.saveElsewhere(taken)).toMatchObject({ fault: { code: 'files/exists' } });
    expect(readFileSync(taken, 'utf8')).toBe('my diary');
    expect(log.saveElsewhere(join(taken, 'x', 'y'))).toMatchObject({ fault: { code: 'files/not-a-folder' } });
    expect(log.saveElsewhere(join(taken, '..', 'nowhere', 'y'))).toMatchObject({
      fault: { code: 'files/no-folder' },
    });
    const small = inScratch();
    fillAfter(300);
    expect(log.saveElsewhere(small)).toMatchObject({
      fault: { code: 'files/trouble', trouble: 'disk-full' },
    });
    expect(namesIn(join(small, '..'))).toEqual([]);
    mend();
    press(log);
    expect([log.status.state, stepIn(log.path)]).toEqual(['saved', 1]);
  });
});

describe('leaving', () => {
  it('does not let go of what is not saved', () => {
    const path = inScratch();
    const { disk, fail, mend } = troubledDisk();
    const log = start(path, { disk });
    fail('EIO', 'write');
    press(log);
    expect(log.leave()).toMatchObject({ state: 'unsaved', waiting: 2 });
    expect(log.leave()).toMatchObject({ state: 'unsaved', waiting: 2 });
    mend();
    expect(log.leave()).toMatchObject({ state: 'saved' });
    expect(readingOf(path)).toMatchObject({ fault: null, state: { events: 2 } });
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl']);
  });
});

describe('the sentences', () => {
  it('say what is wrong and what happens', () => {
    expect(formatSaveStatus({ state: 'saved', slowFlushMs: 60 }, englishWords)).toBeNull();
    expect(
      formatSaveStatus(
        { state: 'unsaved', waiting: 1, trouble: 'disk-full', slowFlushMs: null },
        englishWords,
      ),
    ).toBe(
      'Not saved: the disk is full. The work goes on in memory and 1 line waits to be written; saving is tried every few seconds.',
    );
    expect(englishWords.files.slow(61.4)).toBe(
      'The disk is slow: it took 61 ms to save a press. Each press waits for it, but not longer than a second.',
    );
    const inUse = {
      code: 'files/in-use',
      path: 'a.jsonl',
      pid: 7,
      host: null,
    } as const;
    expect(formatFileFault(inUse, englishWords)).toBe(
      'a.jsonl is open in another Slantwise (process 7): close that one, or just watch. If there is none, copy the log and go on in the copy: slantwise --log COPY',
    );
    expect(
      formatFileFault(
        { code: 'files/trouble', path: 'a', trouble: 'disk-error', detail: 'EIO' },
        englishWords,
      ),
    ).toBe('a: the disk reports an error (EIO).');
  });
});

it.skipIf(process.platform !== 'linux')(
  'a folder where none can be made is a trouble like others, and no wait',
  () => {
    expect(() => systemDisk.makeFolder('/proc/slantwise/bags')).toThrow('ENOENT');
  },
);
