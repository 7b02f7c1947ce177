/** Whatever happens to the file, a log is read up to the damage and never beyond it into a wrong place. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JournalFault } from '../../source/journal/fault.ts';
import { rebuildLog } from '../../source/journal/log-state.ts';
import { type LogReading, readLog } from '../../source/journal/read-log.ts';
import { seenOf } from '../fixtures/compare-sessions.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { finishedLines, smallBrief, startedAt, writeLog } from '../fixtures/sample-log.ts';
import { tries } from '../tools/tries.ts';

const { bytes, text, states } = writeLog(finishedLines());
const lines = text.split('\n').slice(0, -1);
const seen = states.map(({ session }) => JSON.stringify(seenOf(session)));

/** Where each line ends, its line end included. */
const ends: number[] = [];
for (const [i, byte] of bytes.entries()) if (byte === 10) ends.push(i + 1);

const joined = (some: readonly string[]): Uint8Array =>
  new TextEncoder().encode(some.map((line) => `${line}\n`).join(''));

/** The reading must end after exactly `lineCount` lines, in the state that stood there. */
function expectReadThrough(reading: LogReading, lineCount: number): void {
  const { state, soundBytes } = reading;
  const whole = {
    soundBytes,
    events: state?.events ?? -1,
    seen: state ? JSON.stringify(seenOf(state.session)) : null,
  };
  expect(whole).toEqual({
    soundBytes: lineCount === 0 ? 0 : ends[lineCount - 1],
    events: lineCount - 1,
    seen: lineCount === 0 ? null : seen[lineCount - 1],
  });
}

const lineOf = (fault: JournalFault | null): number | null =>
  fault?.code === 'journal/damaged-line' ? fault.line : null;

describe('a log', () => {
  it('reads whole', () => {
    const reading = readLog(bytes);
    expectReadThrough(reading, lines.length);
    expect(reading).toMatchObject({
      fault: null,
      tornBytes: 0,
      state: { finished: true, sittings: 2, skipped: 1 },
    });
  });

  it('cut off anywhere is read up to the last whole line, the rest reported as torn', () => {
    for (let length = 0; length < bytes.length; length++) {
      const reading = readLog(bytes.subarray(0, length));
      const whole = ends.filter((end) => end <= length).length;
      expectReadThrough(reading, whole);
      if (whole === 0) expect(reading.fault?.code).toBe('journal/no-header');
      else expect([reading.fault, reading.tornBytes]).toEqual([null, length - (ends[whole - 1] ?? 0)]);
    }
  });

  it('with any one bit flipped is read up to that line, and the line is named', () => {
    const bits = tries(8, 2);
    for (let at = 0; at < bytes.length; at++) {
      const line = ends.findIndex((end) => at < end) + 1;
      for (let turn = 0; turn < bits; turn++) {
        // Others at the next byte, so that each bit has its turn.
        const bit = (3 * at + 5 * turn) % 8;
        const flipped = bytes.slice();
        flipped[at] = (flipped[at] as number) ^ (1 << bit);
        const reading = readLog(flipped);
        expectReadThrough(reading, line - 1);
        const lostItsEnd = at === bytes.length - 1;
        if (lostItsEnd) expect([reading.fault, reading.tornBytes > 0]).toEqual([null, true]);
        else expect(lineOf(reading.fault)).toBe(line);
      }
    }
  });

  it('with any one line removed is read up to the gap, which is named', () => {
    for (let removed = 0; removed < lines.length - 1; removed++) {
      const reading = readLog(joined(lines.filter((_, i) => i !== removed)));
      expectReadThrough(reading, removed);
      expect(lineOf(reading.fault)).toBe(removed + 1);
    }
  });

  it('with any two neighbouring lines swapped, or a line doubled, is read up to there', () => {
    for (let at = 1; at < lines.length - 1; at++) {
      const swapped = lines.with(at, lines[at + 1] as string).with(at + 1, lines[at] as string);
      const doubled = lines.toSpliced(at, 0, lines[at] as string);
      expect(lineOf(readLog(joined(swapped)).fault)).toBe(at + 1);
      expect(lineOf(readLog(joined(doubled)).fault)).toBe(at + 2);
    }
  });

  it('edited at random places is read through some of its lines or not at all, and never crashes', () => {
    const edit = fc.record({
      at: fc.nat(bytes.length - 1),
      cut: fc.nat(40),
      put: fc.uint8Array({ maxLength: 20 }),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
        let edited = Buffer.from(bytes);
        for (const { at, cut, put } of edits) {
          edited = Buffer.concat([edited.subarray(0, at), put, edited.subarray(at + cut)]);
        }
        const reading = readLog(edited);
        expectReadThrough(reading, reading.state ? reading.state.events + 1 : 0);
      }),
      { numRuns: tries(2000) },
    );
  });

  it('damaged in the middle still tells how far the work had come', () => {
    const changed = lines.with(4, (lines[4] as string).replace('"stepsDone":', '"stepsDone":1'));
    const reading = readLog(joined(changed));
    expect(reading.fault).toEqual({
      code: 'journal/damaged-line',
      line: 5,
      reason: 'checksum',
      laterStep: states.at(-1)?.session.done,
    });
  });

  it('that went through Windows or an editor reads the same, and what was put in is named', () => {
    const mark = Uint8Array.of(0xef, 0xbb, 0xbf);
    const windows = new TextEncoder().encode(text.replaceAll('\n', '\r\n'));
    for (const [bytes_, foreign] of [
      [windows, ['windows-line-ends']],
      [Buffer.concat([mark, bytes]), ['byte-order-mark']],
      [Buffer.concat([mark, windows]), ['byte-order-mark', 'windows-line-ends']],
    ] as const) {
      const { state, fault, soundBytes, foreign: found } = readLog(bytes_);
      expect([fault, found, soundBytes, state?.events]).toEqual([
        null,
        foreign,
        bytes_.length,
        lines.length - 1,
      ]);
      expect(JSON.stringify(state && seenOf(state.session))).toBe(seen.at(-1));
    }
  });

  it('with any one bit of its first line flipped still tells the step, and the brief brings all of it back', () => {
    const beginning = { brief: briefOf(smallBrief), program: '0.2.0', startedAt: '2040-01-01T00:00:00.000Z' };
    const last = states.at(-1)?.session.done;
    for (let at = 0; at < (ends[0] as number) - 1; at++) {
      const flipped = bytes.slice();
      flipped[at] = (flipped[at] as number) ^ (1 << (at % 8));
      const { fault } = readLog(flipped);
      expect(fault).toMatchObject({ code: 'journal/damaged-line', line: 1, laterStep: last });
      const rebuilt = rebuildLog(flipped, beginning);
      const again = readLog(rebuilt?.bytes ?? new Uint8Array());
      expect([again.fault, again.state?.events], `byte ${at}`).toEqual([null, lines.length - 1]);
      expect(JSON.stringify(again.state && seenOf(again.state.session))).toBe(seen.at(-1));
    }
  });

  it('with its first line damaged is not taken for the log of another brief', () => {
    const flipped = Buffer.from(bytes);
    flipped[2] = 0;
    const other = { ...smallBrief, name: 'Another sleeve', bag: { stitches: 10, rows: 16 } };
    expect(rebuildLog(flipped, { brief: briefOf(other), program: '0.2.0', startedAt })).toBeNull();
  });

  it('with garbage of any length behind it is given up soon', () => {
    for (const filler of ['\n', 'x\n', '{"do":"redo","sum":"00000000"}\n']) {
      const garbage = Buffer.alloc(30_000_000, filler);
      const from = performance.now();
      expect(readLog(Buffer.concat([bytes, Buffer.from('x\n'), garbage])).fault).toMatchObject({
        line: lines.length + 1,
        laterStep: null,
      });
      expect(performance.now() - from).toBeLessThan(5000);
    }
  });

  it('whose tail was filled with zeros by a power cut is read up to them', () => {
    const zeros = new Uint8Array(200);
    expect(readLog(Buffer.concat([bytes, zeros]))).toMatchObject({ fault: null, tornBytes: 200 });
  });
});
