import { appendFileSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
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
import { briefOf } from '../../test/fixtures/plan-of.ts';
import { smallBrief, startedAt } from '../../test/fixtures/sample-log.ts';
import { readLogFile } from './log-list.ts';
import { openSessionLog, saveSoundPart, startSessionLog } from './open-log.ts';

function saveSound(path: string): ReturnType<typeof saveSoundPart> {
  const found = readLogFile(path);
  return found.ok ? saveSoundPart(found.value) : found;
}

describe('a session log', () => {
  it('has every command on disk when it answers', () => {
    const path = inScratch();
    const log = start(path);
    for (let step = 1; step <= 20; step++) {
      press(log);
      expect([log.status.state, stepIn(path)]).toEqual(['saved', step]);
    }
    log.append({ do: 'back' });
    expect(stepIn(path)).toBe(19);
  });

  it('leaves no line for what the session refuses', () => {
    const path = inScratch();
    const log = start(path);
    const before = readFileSync(path);
    expect(log.append({ do: 'redo' })).toEqual({ ok: false, fault: { code: 'session/nothing-to-redo' } });
    expect(readFileSync(path)).toEqual(before);
  });

  it('writes and flushes once a press, whatever the length, and flushes the folder once', () => {
    const { disk, calls } = troubledDisk();
    const log = start(inScratch(), { disk });
    expect(calls.filter((call) => call === 'flushFolderOf')).toHaveLength(2);
    press(log, 3);
    calls.length = 0;
    press(log);
    expect(calls).toEqual(['stateOf', 'write', 'flush', 'stateOf']);
  });

  it('records intervals in whole milliseconds without drift, and wall-clock times of sittings', () => {
    const path = inScratch();
    let nowMs = 1000.4;
    const clock = { elapsedMs: () => nowMs, now: () => new Date(startedAt) };
    const log = start(path, { clock });
    for (let i = 0; i < 10; i++) {
      nowMs += 100.3;
      press(log);
    }
    log.leave();
    expect(readingOf(path).state).toMatchObject({ durationMs: 1003, header: { startedAt } });
    nowMs -= 5000;
    open(path, { clock }).leave();
    expect(readingOf(path).state).toMatchObject({ durationMs: 1003, sittings: 2 });
  });

  it('is in order and true in its times whatever the wall clock says, and however it jumps', () => {
    // ECMAScript: times reach 8.64e15 ms to both sides of 1970, and a date beyond that is none.
    const times = fc.oneof(
      fc.integer({ min: -8.64e15, max: 8.64e15 }),
      fc.constantFrom(-8.64e15, 8.64e15, Date.UTC(10_000, 0), Date.UTC(-1, 0), 0, Number.NaN, 9e15),
    );
    fc.assert(
      fc.property(fc.array(times, { minLength: 3, maxLength: 5 }), (jumps) => {
        let elapsedMs = 0;
        let at = 0;
        const now = (): Date => new Date(jumps[at++ % jumps.length] ?? 0);
        const clock = { elapsedMs: () => elapsedMs, now };
        const path = inScratch();
        let log = start(path, { clock });
        for (const _ of jumps) {
          elapsedMs += 100;
          press(log);
          log.leave();
          log = open(path, { clock });
        }
        log.leave();
        const { state, fault } = readingOf(path);
        expect([fault, state?.durationMs, state?.sittings]).toEqual([
          null,
          jumps.length * 100,
          jumps.length + 1,
        ]);
      }),
      { numRuns: 12 },
    );
  });

  it('marks a finished bag, and once more when its end was taken back', () => {
    const path = inScratch();
    const log = start(path);
    log.append({ do: 'confirm', count: log.session.job.stepCount });
    expect(readingOf(path).state?.finished).toBe(true);
    log.append({ do: 'back' });
    expect(readingOf(path).state?.finished).toBe(false);
    log.append({ do: 'redo' });
    expect(readingOf(path).state).toMatchObject({ finished: true, events: 5 });
  });

  it('is private to the user', () => {
    const path = inScratch();
    start(path);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    const inOwnFolder = inScratch('data', 'bags', 'bag.jsonl');
    start(inOwnFolder, { ownFolder: true });
    expect(statSync(join(inOwnFolder, '..')).mode & 0o777).toBe(0o700);
  });

  it('goes on where it was left', () => {
    const path = inScratch();
    const first = start(path);
    press(first, 7);
    first.append({ do: 'note', text: 'mint is short' });
    first.leave();
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl']);
    const second = open(path);
    expect([second.session.done, second.session.notes.length, second.tornKeptAs]).toEqual([7, 1, null]);
    press(second);
    expect(stepIn(path)).toBe(8);
  });
});

describe('beginning a log', () => {
  it('leaves a file alone that is there already, but takes an empty one', () => {
    const path = inScratch();
    writeFileSync(path, 'my diary');
    expect(startSessionLog({ path, brief: briefOf(smallBrief), program: '0.1.0' })).toMatchObject({
      ok: false,
      fault: { code: 'files/exists', path },
    });
    expect(readFileSync(path, 'utf8')).toBe('my diary');
    writeFileSync(path, '');
    press(start(path));
    expect(stepIn(path)).toBe(1);
  });

  it('needs a brief that can be planned, and a folder', () => {
    const path = inScratch();
    const brief = briefOf({ ...smallBrief, bag: { stitches: 8, rows: 7 } });
    expect(startSessionLog({ path, brief, program: '0.1.0' })).toMatchObject({
      fault: { code: 'plan/rows-not-whole-repeats' },
    });
    expect(existsSync(path)).toBe(false);
    const astray = join(path, 'nowhere', 'bag.jsonl');
    expect(startSessionLog({ path: astray, brief: briefOf(smallBrief), program: '0.1.0' })).toMatchObject({
      fault: { code: 'files/no-folder' },
    });
    expect(
      startSessionLog({ path: join(path, '..'), brief: briefOf(smallBrief), program: '0.1.0' }),
    ).toMatchObject({
      fault: { code: 'files/is-folder' },
    });
  });
});

describe('opening a log', () => {
  it('moves a torn last line aside, says so, and goes on', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 3);
    log.close();
    const whole = readFileSync(path, 'utf8');
    for (const [number, torn] of ['{"do":"confirm","cou', '\0\0\0\0'].entries()) {
      appendFileSync(path, torn);
      const again = open(path);
      expect([again.session.done, again.tornKeptAs]).toEqual([3, `bag.jsonl.torn-${number + 1}`]);
      again.close();
      expect(readFileSync(`${path}.torn-${number + 1}`, 'utf8')).toBe(torn);
    }
    expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0, state: { sittings: 3 } });
    expect(readFileSync(path, 'utf8').startsWith(whole)).toBe(true);
  });

  it('stops at any other damage, changes nothing, and offers the sound part', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 9);
    log.close();
    const damaged = readFileSync(path, 'utf8').replace('"stepsDone":5', '"stepsDone":6');
    writeFileSync(path, damaged);
    expect(openSessionLog({ path })).toMatchObject({
      fault: { code: 'journal/damaged-line', line: 6, reason: 'checksum', laterStep: 9 },
    });
    const sound = path.replace('.jsonl', '-sound-1.jsonl');
    const part = saveSound(path);
    expect(part).toEqual({ ok: true, value: { path: sound, lines: 5, stepsDone: 4, finished: false } });
    expect(saveSound(path)).toEqual(part);
    expect(readFileSync(path, 'utf8')).toBe(damaged);
    expect(open(sound).session.done).toBe(4);
    expect(saveSound(path)).toEqual(part);
    expect(namesIn(join(path, '..'))).toEqual(['bag-sound-1.jsonl', 'bag-sound-1.jsonl.lock', 'bag.jsonl']);
  });

  it('touches nothing that is not a log', () => {
    const path = inScratch('diary.txt');
    writeFileSync(path, 'Dear diary');
    expect(openSessionLog({ path })).toEqual({ ok: false, fault: { code: 'journal/not-a-log' } });
    expect(readFileSync(path, 'utf8')).toBe('Dear diary');
    expect(saveSound(path)).toEqual({ ok: true, value: null });
    expect(namesIn(join(path, '..'))).toEqual(['diary.txt']);
  });

  it('names a file that is missing, and one cut off in its first line', () => {
    const path = inScratch();
    expect(openSessionLog({ path })).toEqual({ ok: false, fault: { code: 'files/missing', path } });
    start(path).close();
    writeFileSync(path, readFileSync(path).subarray(0, 100));
    expect(openSessionLog({ path })).toEqual({ ok: false, fault: { code: 'journal/no-header' } });
  });
});
