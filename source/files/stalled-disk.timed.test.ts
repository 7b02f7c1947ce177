/** A disk that neither does what it is asked nor refuses: the thread that writes to it hangs in the system. */

import { existsSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import {
  inScratch,
  namesIn,
  open,
  press,
  readingOf,
  scratchFolder,
  start,
  stepIn,
} from '../../test/fixtures/disk/scratch.ts';
import { buildScript, run } from '../../test/fixtures/disk/scripts.ts';
import { stall } from '../../test/fixtures/disk/stall.ts';
import { formatLoss, formatSaveStatus } from '../wording/file-faults.ts';
import { englishWords } from '../wording/words.ts';
import { hasStuckThread, JournalThread } from './journal-thread.ts';
import type { SessionLog } from './session-log.ts';

const worker = buildScript('stalled-worker.ts');
const leaving = buildScript('leave-stalled.ts');
/** Shorter than the program's, so that the tests are quick. */
const patienceMs = 400;

const releases: (() => void)[] = [];
afterEach(() => {
  for (const release of releases.splice(0)) release();
});

/** Stalls a disk; what is given back releases it. */
function stallDisk(folder: string): () => void {
  const release = stall(folder);
  releases.push(release);
  return () => {
    releases.splice(releases.indexOf(release), 1);
    release();
  };
}

function inThread(log: SessionLog): SessionLog {
  log.saveIn((file) => JournalThread.goOn(file, { script: pathToFileURL(worker), patienceMs }));
  return log;
}

const begin = () => {
  const folder = scratchFolder();
  const path = join(folder, 'bag.jsonl');
  return { folder, path, log: inThread(start(path)) };
};

/** Milliseconds that something takes. */
const timed = (act: () => void): number => {
  const from = performance.now();
  act();
  return performance.now() - from;
};

/** The disk was released: the thread answers in its own time. */
const untilSaved = (log: SessionLog) => expect.poll(() => log.retry().state).toBe('saved');

describe('a log that is written in another thread', () => {
  it('has each press on disk before it is answered', () => {
    const { path, log } = begin();
    for (let step = 1; step <= 20; step++) {
      press(log);
      expect([log.status.state, stepIn(path)]).toEqual(['saved', step]);
    }
  });

  it('lets go of file and lock on leaving, and can be opened again', () => {
    const { folder, path, log } = begin();
    press(log, 3);
    expect([log.leave().state, hasStuckThread()]).toEqual(['saved', false]);
    expect(namesIn(folder)).toEqual(['bag.jsonl']);
    const again = inThread(open(path));
    press(again);
    expect([again.status.state, stepIn(path), again.leave().state]).toEqual(['saved', 4, 'saved']);
  });

  it('still knows another trouble, and saves when it is over', () => {
    const { folder, path, log } = begin();
    press(log, 2);
    rmSync(folder, { recursive: true });
    press(log);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble: 'gone', waiting: 1 });
    expect(existsSync(path)).toBe(false);
  });
});

describe('when the disk stops to answer', () => {
  it('one press waits as long as a press may, the next do not, and nothing that was confirmed before is lost', () => {
    const { folder, path, log } = begin();
    press(log, 3);
    stallDisk(folder);
    const firstMs = timed(() => press(log));
    expect(firstMs).toBeGreaterThanOrEqual(patienceMs);
    expect(firstMs).toBeLessThan(4 * patienceMs);
    expect(timed(() => press(log, 20))).toBeLessThan(patienceMs);
    expect(log.status).toMatchObject({ state: 'unsaved', trouble: 'no-answer', waiting: 21 });
    expect(log.session.done).toBe(24);
    expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0, state: { session: { done: 3 } } });
    expect(formatSaveStatus(log.status, englishWords)).toBe(
      'Not saved: the disk does not answer. The work goes on in memory and 21 lines wait to be written; saving is tried every few seconds.',
    );
  });

  it('all that waits is written in order as soon as it answers, and presses are on disk again', async () => {
    const { folder, path, log } = begin();
    const release = stallDisk(folder);
    press(log, 30);
    expect(hasStuckThread()).toBe(true);
    release();
    await untilSaved(log);
    expect([log.status.state, stepIn(path), hasStuckThread()]).toEqual(['saved', 30, false]);
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 31]);
    expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0, state: { events: 31 } });
  });

  it('it may stop again and again', async () => {
    const { folder, path, log } = begin();
    for (let round = 1; round <= 3; round++) {
      const release = stallDisk(folder);
      press(log, 5);
      expect(log.status.state).toBe('unsaved');
      release();
      await untilSaved(log);
      expect(stepIn(path)).toBe(5 * round);
    }
  });

  it('the whole log can be saved elsewhere, and the work goes on there', async () => {
    const { folder, path, log } = begin();
    press(log, 2);
    const release = stallDisk(folder);
    press(log, 3);
    const elsewhere = inScratch('rescued.jsonl');
    expect(log.saveElsewhere(elsewhere)).toMatchObject({ ok: true, value: { state: 'saved' } });
    press(log);
    expect([log.status.state, log.path, stepIn(elsewhere)]).toEqual(['saved', elsewhere, 6]);
    expect(log.leave().state).toBe('saved');
    expect(namesIn(dirname(elsewhere))).toEqual(['rescued.jsonl']);
    release();
    await expect.poll(hasStuckThread).toBe(false);
    // The old file has what it was given before, and is free for others.
    expect([stepIn(path), namesIn(folder)]).toEqual([5, ['bag.jsonl']]);
  });

  it('saving on the same disk says so in time, and the work goes on where it was', async () => {
    const { folder, path, log } = begin();
    const release = stallDisk(folder);
    press(log);
    const tookMs = timed(() =>
      expect(log.saveElsewhere(join(folder, 'other.jsonl'))).toMatchObject({
        fault: { code: 'files/trouble', trouble: 'no-answer' },
      }),
    );
    expect(tookMs).toBeLessThan(4 * patienceMs);
    press(log);
    release();
    await untilSaved(log);
    expect([log.path, stepIn(path)]).toEqual([path, 2]);
    await expect.poll(hasStuckThread).toBe(false);
  });

  it('refuses a name that is taken like any other log', () => {
    const { folder, path, log } = begin();
    stallDisk(folder);
    press(log);
    const taken = inScratch();
    start(taken).close();
    expect(log.saveElsewhere(taken)).toMatchObject({ fault: { code: 'files/exists' } });
    expect(log.path).toBe(path);
  });

  it('leaving says what would be lost', () => {
    const { folder, log } = begin();
    stallDisk(folder);
    press(log, 2);
    expect(formatLoss(log.retry(), englishWords)).toBe(
      '2 lines of the log are not on disk: the disk does not answer. Type save and a file elsewhere, such as save ../bag.jsonl, or quit again without saving.',
    );
    expect(log.leave()).toMatchObject({ state: 'unsaved', trouble: 'no-answer', waiting: 3 });
  });

  it('the process can end all the same', async () => {
    const folder = scratchFolder();
    const child = run(leaving, [folder, worker]);
    expect(await child.said('left')).toBe('left unsaved true');
    await child.ended;
    expect(child.process.signalCode).toBe('SIGINT');
    expect(stepIn(join(folder, 'bag.jsonl'))).toBe(1);
    rmSync(join(folder, 'stalled'));
    // Its lock names a process that is dead.
    expect(open(join(folder, 'bag.jsonl')).session.done).toBe(1);
  });
});
