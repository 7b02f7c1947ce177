/** Logs for tests, written by the same functions that the program writes with. The bags are invented. */
import type { LogEvent } from '../../source/journal/entry.ts';
import { beginLog, type LogState, recordEvent } from '../../source/journal/fold.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { stripedBrief } from '../fixtures/striped-brief.ts';

/** A bag of few steps: 8 stitches, 8 rows. */
export const smallBrief = { ...stripedBrief(8, 8, 60), name: 'Card sleeve' };

export const startedAt = '2031-03-04T18:00:00.000Z';

export interface SampleLine {
  readonly event: LogEvent;
  readonly afterMs?: number;
}

export interface SampleLog {
  readonly text: string;
  readonly bytes: Uint8Array;
  /** After the header and after each event. */
  readonly states: readonly LogState[];
}

/** The log of these events; throws where the session refuses one. */
export function writeLog(lines: readonly SampleLine[], brief: unknown = smallBrief): SampleLog {
  const begun = beginLog({ brief: briefOf(brief), program: '0.1.0', startedAt });
  if (!begun.ok) throw new Error(JSON.stringify(begun.fault));
  let { line: text, state } = begun.value;
  const states = [state];
  for (const { event, afterMs = 1000 } of lines) {
    const written = recordEvent(state, event, afterMs);
    if (!written.ok) throw new Error(JSON.stringify({ event, fault: written.fault }));
    text += written.value.line;
    state = written.value.state;
    states.push(state);
  }
  return { text, bytes: new TextEncoder().encode(text), states };
}

export const confirm = (count = 1, afterMs = 1000): SampleLine => ({
  event: { do: 'confirm', count },
  afterMs,
});

/** Every kind of line once or more, with letters of one to four bytes. */
export const sampleLines: readonly SampleLine[] = [
  confirm(1, 5321),
  confirm(4, 60_250),
  { event: { do: 'note', text: 'Kamm gehängt, Ösen "groß" – 🧶' }, afterMs: 12 },
  { event: { do: 'back' }, afterMs: 900 },
  { event: { do: 'redo' }, afterMs: 850 },
  { event: { do: 'mark', name: 'first stripe' } },
  { event: { do: 'go', done: 12 } },
  { event: { do: 'back' } },
  confirm(),
  { event: { do: 'quit' }, afterMs: 30 },
  { event: { do: 'resume', at: '2031-03-05T19:30:00.000Z' }, afterMs: 0 },
  { event: { do: 'say', text: 'Watch the left edge.' }, afterMs: 0 },
  { event: { do: 'pause' }, afterMs: 0 },
  { event: { do: 'weigh', yarn: 'plum', grams: 22.5 } },
  { event: { do: 'measured', widthCm: 13.6, depthCm: 18 } },
  { event: { do: 'unknown', name: 'humidity', fields: { yarn: 'plum', grams: 41.5 } } },
  confirm(3),
];

/** The sample's events, and then the bag confirmed to its end and marked as finished. */
export function finishedLines(): readonly SampleLine[] {
  const last = writeLog(sampleLines).states.at(-1) as LogState;
  const left = last.session.job.stepCount - last.session.done;
  return [...sampleLines, confirm(left), { event: { do: 'finished' }, afterMs: 0 }];
}
