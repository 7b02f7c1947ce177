import { describe, expect, it } from 'vitest';
import { seenOf } from '../../test/fixtures/compare-sessions.ts';
import { sampleLines, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { formatLessonFault } from '../wording/file-faults.ts';
import { englishWords } from '../wording/words.ts';
import { readRecording } from './read-log.ts';
import { addToCopy } from './teaching.ts';

const original = writeLog(sampleLines);
const read = valueIn(readRecording(original.bytes));
const recording = read;

const copyOf = (text: string) => {
  return valueIn(readRecording(new TextEncoder().encode(text)));
};

describe('a lesson', () => {
  it('without additions is the log itself', () => {
    expect(addToCopy(recording, [])).toEqual({ ok: true, value: original.text });
  });

  it('holds what a teacher adds, in its place, and the steps as they were', () => {
    const lesson = valueIn(
      addToCopy(recording, [
        { after: 1, event: { do: 'say', text: 'Is the carriage at home?' } },
        { after: 1, event: { do: 'pause' } },
        { after: 0, event: { do: 'mark', name: 'start' } },
        { after: sampleLines.length, event: { do: 'note', text: 'The end of today.' } },
      ]),
    );
    const { frames } = copyOf(lesson);
    expect(frames.slice(0, 4).map(({ entry }) => entry.event.do)).toEqual([
      'mark',
      'confirm',
      'say',
      'pause',
    ]);
    expect(frames.at(-1)?.entry).toMatchObject({
      event: { text: 'The end of today.' },
      afterMs: 0,
      stepsDone: 9,
    });
    const kept = frames.filter(({ entry }) => recording.frames.some((one) => sameEntry(one.entry, entry)));
    expect(kept.map(({ entry }) => entry)).toEqual(recording.frames.map(({ entry }) => entry));
    expect(frames.at(-1)?.session.done).toBe(recording.frames.at(-1)?.session.done);
  });

  it('leaves the recording alone', () => {
    const before = recording.frames.map(({ session }) => seenOf(session));
    addToCopy(recording, [{ after: 3, event: { do: 'mark', name: 'here' } }]);
    expect(recording.frames.map(({ session }) => seenOf(session))).toEqual(before);
  });

  it('refuses a place that the log does not have, and a note that says nothing', () => {
    const astray = { code: 'lesson/no-such-event', after: 18, events: 17 } as const;
    expect(addToCopy(recording, [{ after: 18, event: { do: 'pause' } }])).toEqual({
      ok: false,
      fault: astray,
    });
    expect(formatLessonFault(astray, englishWords)).toBe('There is no event 18: the log has 17 events.');
    expect(addToCopy(recording, [{ after: 0, event: { do: 'note', text: ' ' } }])).toMatchObject({
      ok: false,
      fault: { code: 'session/nothing-to-say' },
    });
  });
});

const sameEntry = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
