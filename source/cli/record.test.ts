/** The record of a bag; the log is invented, its times counted by hand. */

import { describe, expect, it } from 'vitest';
import { confirm, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { readRecording } from '../journal/read-log.ts';
import { recordOf } from '../journal/record.ts';
import { formatRecord } from '../wording/record.ts';
import { englishWords } from '../wording/words.ts';
import { recordJson } from './record.ts';

/** 1 min and 2 min at the bench, an hour away while the log was open, then a second sitting of 1 min. */
const read = valueIn(
  readRecording(
    writeLog([
      confirm(1, 60_000),
      confirm(1, 120_000),
      confirm(1, 3_600_000),
      { event: { do: 'back' }, afterMs: 0 },
      { event: { do: 'quit' }, afterMs: 0 },
      { event: { do: 'resume', at: '2031-03-08T09:00:00.000Z' }, afterMs: 0 },
      { event: { do: 'note', text: 'mint is tight' }, afterMs: 0 },
      confirm(1, 60_000),
    ]).bytes,
  ),
);
const recording = read;
const record = recordOf(recording);

describe('the record of a bag', () => {
  const page = formatRecord(recording, record, englishWords);

  it('tells time at the bench apart from rests, and counts what was taken back', () => {
    expect(page).toContain('at work   4 min in 2 sittings, and rests of 1 h 0 min');
    expect(page).toContain('back      1 time something was taken back');
  });

  it('has dates, size, yarn, needles and notes', () => {
    expect(page).toContain('begun 2031-03-04, last worked on 2031-03-08, 3 of 74 steps done');
    for (const part of ['SIZE', 'YARN, BY THE PLAN', 'plum', 'on R21 to R28', 'step 3    mint is tight'])
      expect(page).toContain(part);
    expect(Math.max(...page.split('\n').map((line) => line.length))).toBeLessThanOrEqual(78);
  });

  it('is the same as JSON, in seconds', () => {
    expect(recordJson(recording, record, englishWords)).toMatchObject({
      startedAt: '2031-03-04T18:00:00.000Z',
      lastUsedAt: '2031-03-08T09:01:00.000Z',
      workS: 240,
      restS: 3600,
      sittings: 2,
      takenBack: 1,
      phaseS: { 'cast-on': 240 },
      minutesPerRow: null,
      notes: [{ step: 3, text: 'mint is tight' }],
    });
  });
});
