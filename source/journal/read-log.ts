import type { Session } from '../session/session.ts';
import { instantOf } from '../shared/numbers.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { JournalFault } from './fault.ts';
import { type LogHeader, logFormat } from './header.ts';
import { carriageReturn, lineEnd, lineIn, statedSum, unsealLine } from './line.ts';
import { type LogState, openWith, takeLine } from './log-state.ts';
import { type Entry, readEntry } from './notation.ts';

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
  readonly foreign: readonly ForeignSign[];
}

/** What other programs put into a text on its way, such as mail or an editor. No part of any line, so it does no harm. */
export type ForeignSign = 'byte-order-mark' | 'windows-line-ends';

const byteOrderMark = Uint8Array.of(0xef, 0xbb, 0xbf);

/** Reads a log from the bytes of its file, calling `each` for every sound entry. Cost linear in its length. */
export function readLog(
  bytes: Uint8Array,
  each: (entry: Entry, state: LogState) => void = () => {},
): LogReading {
  const begins = byteOrderMark.every((byte, i) => bytes[i] === byte) ? byteOrderMark.length : 0;
  const headerEnd = bytes.indexOf(lineEnd);
  const foreign = foreignSigns(begins > 0, bytes[headerEnd - 1] === carriageReturn);
  const nothing = { start: null, state: null, soundBytes: 0, tornBytes: 0, foreign };
  if (headerEnd < 0) {
    const code = startsAsLog(bytes.subarray(begins)) ? 'journal/no-header' : 'journal/not-a-log';
    return { ...nothing, fault: { code } };
  }
  const header = openHeader(lineIn(bytes, begins, headerEnd));
  if (!header.ok) return { ...nothing, fault: withLaterStep(header.fault, bytes, Number.POSITIVE_INFINITY) };
  const start = header.value;
  let state = start;
  let from = headerEnd + 1;
  for (let end = bytes.indexOf(lineEnd, from); end >= 0; end = bytes.indexOf(lineEnd, from)) {
    const taken = takeLine(state, lineIn(bytes, from, end));
    if (!taken.ok) {
      const fault = withLaterStep(taken.fault, bytes.subarray(from), state.session.job.stepCount);
      return { start, state, fault, soundBytes: from, tornBytes: 0, foreign };
    }
    state = taken.value.state;
    each(taken.value.entry, state);
    from = end + 1;
  }
  return { start, state, fault: null, soundBytes: from, tornBytes: bytes.length - from, foreign };
}

const foreignSigns = (hasMark: boolean, hasReturns: boolean): readonly ForeignSign[] => [
  ...(hasMark ? (['byte-order-mark'] as const) : []),
  ...(hasReturns ? (['windows-line-ends'] as const) : []),
];

const opening = new TextEncoder().encode(`{"format":"${logFormat}"`);

const startsAsLog = (bytes: Uint8Array): boolean =>
  opening.subarray(0, bytes.length).every((byte, i) => byte === bytes[i]);

function openHeader(line: Uint8Array): ReturnType<typeof openWith> {
  const header = openWith(line);
  const ours = header.ok || startsAsLog(line) || statedSum(line) !== null;
  return ours ? header : { ok: false, fault: { code: 'journal/not-a-log' } };
}

/** Lines tried from the end, so that garbage of any length is soon given up (a rule of thumb). */
const mostTried = 100_000;

/** Damage in the middle leaves later lines that say how far the work had come: worth knowing when going on from there. */
function withLaterStep(fault: JournalFault, rest: Uint8Array, stepCount: number): JournalFault {
  if (fault.code !== 'journal/damaged-line') return fault;
  let end = lastEnd(rest, rest.length);
  for (let tried = 0; tried < mostTried && end > 0; tried++) {
    const before = lastEnd(rest, end);
    if (before < 0) break;
    const step = soundStep(lineBefore(rest, before), lineBefore(rest, end));
    if (step !== null && step <= stepCount) return { ...fault, laterStep: step };
    end = before;
  }
  return fault;
}

/** Where the last line end before a place stands, -1 where there is none; of several side by side the first. */
function lastEnd(bytes: Uint8Array, place: number): number {
  let end = place === 0 ? -1 : bytes.lastIndexOf(lineEnd, place - 1);
  while (end > 0 && bytes[end - 1] === lineEnd) end--;
  return end;
}

const lineBefore = (bytes: Uint8Array, end: number): Uint8Array =>
  lineIn(bytes, end === 0 ? 0 : bytes.lastIndexOf(lineEnd, end - 1) + 1, end);

/** Steps done after `line`, if it follows from the sum that the line before it states. */
function soundStep(before: Uint8Array, line: Uint8Array): number | null {
  const sum = statedSum(before);
  const opened = sum === null ? null : unsealLine(line, sum);
  const entry = opened?.ok ? readEntry(opened.value.json) : null;
  return entry?.ok ? entry.value.stepsDone : null;
}

/** What a sound log holds. */
export interface Tally {
  /** As it is called now. */
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
  readonly stepsDone: number;
  readonly stepCount: number;
  /** Recorded time in all sittings, rests included. */
  readonly durationS: number;
  /** Bytes of a last line that was cut off; they belong to no event. */
  readonly tornBytes: number;
  readonly foreign: readonly ForeignSign[];
}

export function tallyLog({ state, fault, tornBytes, foreign }: LogReading): Result<Tally, JournalFault> {
  if (fault) return fail(fault);
  if (!state) return fail({ code: 'journal/no-header' });
  const { header, session, events, skipped, sittings, finished, durationMs } = state;
  return succeed({
    name: session.name,
    startedAt: header.startedAt,
    brief: header.brief,
    events,
    skipped,
    sittings,
    finished,
    stepsDone: session.done,
    stepCount: session.job.stepCount,
    durationS: durationMs / 1000,
    tornBytes,
    foreign,
  });
}

/** An entry and the session after it. */
export interface Frame {
  readonly entry: Entry;
  readonly session: Session;
}

/** A whole log in memory, for playing it and for record with it. */
export interface Recording {
  readonly header: LogHeader;
  /** Before the first entry. */
  readonly start: Session;
  readonly frames: readonly Frame[];
  readonly finished: boolean;
  /** Of a last line that was cut off. */
  readonly tornBytes: number;
}

export function readRecording(bytes: Uint8Array): Result<Recording, JournalFault> {
  const frames: Frame[] = [];
  const { start, state, fault, tornBytes } = readLog(bytes, (entry, { session }) =>
    frames.push({ entry, session }),
  );
  if (fault) return fail(fault);
  if (!start || !state) return fail({ code: 'journal/no-header' });
  const { header, finished } = state;
  return succeed({ header, start: start.session, frames, finished, tornBytes });
}

/** The session as the recording leaves it. */
export const lastSession = ({ frames, start }: Recording): Session => frames.at(-1)?.session ?? start;

/** When the last thing recorded happened; ISO 8601 in UTC. */
export function lastInstant({ header, frames }: Recording): string {
  let ms = Date.parse(header.startedAt);
  for (const { entry } of frames) {
    ms = entry.event.do === 'resume' ? Date.parse(entry.event.at) : ms + entry.afterMs;
  }
  return instantOf(ms);
}
