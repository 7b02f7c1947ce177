import { fail, type Result, succeed } from '../shared/result.ts';
import type { Entry } from './entry.ts';
import type { JournalFault } from './fault.ts';
import { foldHeader, foldLine, type LogState } from './fold.ts';
import { logFormat } from './header.ts';
import { statedSum, unsealLine } from './line.ts';
import { readEntry } from './notation.ts';

/** How far a log could be read. */
export interface LogReading {
  /** Before the first event; null where not even the header is sound. */
  readonly start: LogState | null;
  /** After the last sound line. */
  readonly state: LogState | null;
  readonly fault: JournalFault | null;
  /** Length of the sound lines together. */
  readonly soundBytes: number;
  /** Length of a last line without its end, left by a crash while it was being written. No fault: it was never confirmed. */
  readonly tornBytes: number;
}

const lineEnd = 10;

/** Reads a log from the bytes of its file, calling `each` for every sound entry. Cost linear in its length. */
export function readLog(
  bytes: Uint8Array,
  each: (entry: Entry, state: LogState) => void = () => {},
): LogReading {
  const headerEnd = bytes.indexOf(lineEnd);
  if (headerEnd < 0)
    return { ...nothing, fault: { code: startsAsLog(bytes) ? 'journal/no-header' : 'journal/not-a-log' } };
  const header = openHeader(bytes.subarray(0, headerEnd));
  if (!header.ok) return { ...nothing, fault: header.fault };
  const start = header.value;
  let state = start;
  let from = headerEnd + 1;
  for (let end = bytes.indexOf(lineEnd, from); end >= 0; end = bytes.indexOf(lineEnd, from)) {
    const folded = foldLine(state, bytes.subarray(from, end));
    if (!folded.ok) {
      const fault = withLaterStep(folded.fault, bytes.subarray(from), state.session.job.stepCount);
      return { start, state, fault, soundBytes: from, tornBytes: 0 };
    }
    state = folded.value.state;
    each(folded.value.entry, state);
    from = end + 1;
  }
  return { start, state, fault: null, soundBytes: from, tornBytes: bytes.length - from };
}

const nothing = { start: null, state: null, soundBytes: 0, tornBytes: 0 };
const opening = new TextEncoder().encode(`{"format":"${logFormat}"`);

const startsAsLog = (bytes: Uint8Array): boolean =>
  opening.subarray(0, bytes.length).every((byte, i) => byte === bytes[i]);

function openHeader(line: Uint8Array): ReturnType<typeof foldHeader> {
  const header = foldHeader(line);
  const ours = header.ok || startsAsLog(line) || statedSum(line) !== null;
  return ours ? header : { ok: false, fault: { code: 'journal/not-a-log' } };
}

/** Damage in the middle leaves later lines that say how far the work had come: worth knowing when going on from there. */
function withLaterStep(fault: JournalFault, rest: Uint8Array, stepCount: number): JournalFault {
  if (fault.code !== 'journal/damaged-line') return fault;
  const lines = splitLines(rest);
  for (let i = lines.length - 1; i > 0; i--) {
    const step = soundStep(lines[i - 1] as Uint8Array, lines[i] as Uint8Array);
    if (step !== null && step <= stepCount) return { ...fault, laterStep: step };
  }
  return fault;
}

/** Steps done after `line`, if it follows from the sum that the line before it states. */
function soundStep(before: Uint8Array, line: Uint8Array): number | null {
  const sum = statedSum(before);
  const opened = sum === null ? null : unsealLine(line, sum);
  const entry = opened?.ok ? readEntry(opened.value.json) : null;
  return entry?.ok ? entry.value.step : null;
}

function splitLines(bytes: Uint8Array): readonly Uint8Array[] {
  const lines: Uint8Array[] = [];
  let from = 0;
  for (let end = bytes.indexOf(lineEnd); end >= 0; end = bytes.indexOf(lineEnd, from)) {
    lines.push(bytes.subarray(from, end));
    from = end + 1;
  }
  return lines;
}

/** What a sound log holds. */
export interface Tally {
  readonly name: string;
  readonly startedAt: string;
  /** The brief as it stood in its file. */
  readonly brief: unknown;
  /** Lines after the header. */
  readonly events: number;
  /** Of these, kinds that this program does not know. */
  readonly skipped: number;
  readonly sittings: number;
  readonly finished: boolean;
  /** Steps confirmed, and steps in all. */
  readonly step: number;
  readonly stepCount: number;
  /** Recorded time in all sittings, rests included. */
  readonly durationS: number;
  /** Bytes of a last line that was cut off; they belong to no event. */
  readonly tornBytes: number;
}

export function tallyLog({ state, fault, tornBytes }: LogReading): Result<Tally, JournalFault> {
  if (fault) return fail(fault);
  if (!state) return fail({ code: 'journal/no-header' });
  const { header, session, events, skipped, sittings, finished, durationMs } = state;
  return succeed({
    name: header.name,
    startedAt: header.startedAt,
    brief: header.brief,
    events,
    skipped,
    sittings,
    finished,
    step: session.done,
    stepCount: session.job.stepCount,
    durationS: durationMs / 1000,
    tornBytes,
  });
}
