import { describe, expect, it } from 'vitest';
import { confirm, sampleLines, smallBrief, writeLog } from '../../test/fixtures/sample-log.ts';
import { formatJournalFault } from '../wording/file-faults.ts';
import { englishWords } from '../wording/words.ts';
import { sealLine } from './line.ts';
import { readLog, tallyLog } from './read-log.ts';

type Json = Record<string, unknown>;

/** A log sealed line by line from any JSON, as another program might have written it. */
function sealed(...objects: readonly Json[]): Uint8Array {
  let sum = 0;
  const texts = objects.map((json) => {
    const line = sealLine(json, sum);
    sum = line.sum;
    return line.text;
  });
  return new TextEncoder().encode(texts.join(''));
}

const sound = writeLog([confirm(2)]);
const [header, event] = sound.text
  .trim()
  .split('\n')
  .map((line): Json => {
    const { sum: _, ...json } = JSON.parse(line);
    return json;
  }) as [Json, Json];

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const faultOf = (bytes: Uint8Array) => readLog(bytes).fault;
const damaged = (line: number, reason: string) => ({ code: 'journal/damaged-line', line, reason });

describe('a file that is not a sound log is named for what it is', () => {
  it.each([
    ['another text', bytesOf('Dear diary,\nrow 7\n'), { code: 'journal/not-a-log' }],
    ['another text without a line end', bytesOf('Dear diary'), { code: 'journal/not-a-log' }],
    ['other JSON lines', bytesOf('{"row":1}\n'), { code: 'journal/not-a-log' }],
    ['sealed JSON of another kind', sealed({ format: 'recipe', version: 1 }), { code: 'journal/not-a-log' }],
    ['nothing', bytesOf(''), { code: 'journal/no-header' }],
    [
      'a later version',
      sealed({ ...header, version: 2 }),
      { code: 'journal/newer-version', version: 2, known: 1 },
    ],
    ['a version that never was', sealed({ ...header, version: 0 }), damaged(1, 'wrong-fields')],
    ['a header without its start', sealed({ ...header, startedAt: 'Tuesday' }), damaged(1, 'wrong-fields')],
    ['a line of other bytes', Buffer.concat([sound.bytes, Buffer.of(0xff, 10)]), damaged(3, 'not-text')],
    ['a line of text', bytesOf(`${sound.text}row 7\n`), damaged(3, 'not-json')],
    ['an empty line', bytesOf(`${sound.text}\n`), damaged(3, 'not-json')],
    ['a line without its sum', bytesOf(`${sound.text}{"do":"redo"}\n`), damaged(3, 'no-checksum')],
    ['a wrong sum', bytesOf(`${sound.text}{"do":"redo","sum":"00000000"}\n`), damaged(3, 'checksum')],
    [
      'a colour that is none',
      sealed(header, {
        do: 'replan',
        rows: 8,
        stitchMm: null,
        rowMm: null,
        from: 'plum',
        to: 'red',
        colour: 'url(http://example.invalid)',
        metresPer100g: 100,
        afterMs: 0,
        stepsDone: 0,
      }),
      damaged(2, 'wrong-fields'),
    ],
    ['the name of another bag', sealed({ ...header, name: 'Another' }), damaged(1, 'wrong-fields')],
    ['a line without its fields', sealed(header, { ...event, count: null }), damaged(2, 'wrong-fields')],
    [
      'an early end mark',
      sealed(header, { do: 'finished', afterMs: 0, stepsDone: 0 }),
      damaged(2, 'out-of-place'),
    ],
    [
      'a step that does not follow',
      sealed(header, { ...event, stepsDone: 7 }),
      { code: 'journal/step-differs', line: 2, recorded: 7, reached: 2 },
    ],
    [
      'a command that cannot be',
      sealed(header, { do: 'redo', afterMs: 0, stepsDone: 0 }),
      { code: 'journal/command-refused', line: 2, fault: { code: 'session/nothing-to-redo' } },
    ],
    [
      'an unknown event that moved the place',
      sealed(header, event, { do: 'rewind', afterMs: 0, stepsDone: 1 }),
      { code: 'journal/unknown-event', line: 3, name: 'rewind' },
    ],
    [
      'a brief that cannot be planned',
      sealed({ ...header, brief: { ...smallBrief, bag: { stitches: 8, rows: 7 } } }),
      { code: 'journal/brief', program: '0.1.0', fault: { code: 'plan/rows-not-whole-repeats' } },
    ],
    [
      'a plan that came out otherwise',
      sealed({ ...header, figures: { ...(header.figures as Json), shapings: 9 } }),
      { code: 'journal/plan-differs', figure: 'shapings', recorded: '9', planned: '3', program: '0.1.0' },
    ],
  ])('%s', (_, bytes, fault) => {
    const found = faultOf(bytes);
    expect(found).toMatchObject(fault);
    const sentence = found ? formatJournalFault(found, englishWords) : '';
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/undefined|null|\b1 steps|NaN/);
    expect(sentence.length).toBeLessThanOrEqual(200);
  });

  it('a figure that the log does not have is not missed', () => {
    expect(faultOf(sealed({ ...header, figures: {} }))).toBeNull();
  });
});

describe('the tally of a sound log', () => {
  it('counts what the sample holds', () => {
    const { bytes } = writeLog(sampleLines);
    // By hand: 5321 + 60250 + 12 + 900 + 850 + 4 × 1000 + 30 + 4 × 1000 = 75 363 ms.
    expect(tallyLog(readLog(bytes))).toEqual({
      ok: true,
      value: {
        name: 'Card sleeve',
        brief: smallBrief,
        startedAt: '2031-03-04T18:00:00.000Z',
        events: 17,
        skipped: 1,
        sittings: 2,
        finished: false,
        stepsDone: 9,
        stepCount: 74,
        durationS: 75.363,
        tornBytes: 0,
        foreign: [],
      },
    });
  });

  it('is the fault where there is one', () => {
    expect(tallyLog(readLog(bytesOf('')))).toEqual({ ok: false, fault: { code: 'journal/no-header' } });
  });
});
