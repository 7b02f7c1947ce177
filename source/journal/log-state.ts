/**
 * What a log has come to, line by line: the same `updateSession` begins, continues, opens and replays it. One whose first line is
 * damaged is begun again from the brief at hand: what was recorded behind that line is sound by the sum that it states, and half
 * of it must still say that it is the log of this very brief.
 */
import type { BriefFile } from '../planning/brief.ts';
import type { PlanFault } from '../planning/fault.ts';
import { planBag } from '../planning/plan-bag.ts';
import type { SessionFault } from '../session/command.ts';
import { isFinished, type Session, startSession } from '../session/session.ts';
import { updateSession } from '../session/update-session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { layOutJob } from '../steps/job.ts';
import type { JournalFault, LineFault } from './fault.ts';
import { figuresOf, headerJson, type LogHeader, readHeader } from './header.ts';
import { lineEnd, lineIn, sealLine, statedSum, unsealLine } from './line.ts';
import { type Entry, entryJson, isCommand, isInstant, type LogEvent, readEntry } from './notation.ts';

/** A log up to some line: all that is needed to go on, whatever its length. */
export interface LogState {
  readonly header: LogHeader;
  /** What it was begun with: the session's plan may have changed. */
  readonly begun: BriefFile;
  readonly session: Session;
  readonly sum: number;
  readonly events: number;
  /** Events of kinds that this program does not know. */
  readonly skipped: number;
  readonly sittings: number;
  /** Time recorded in all sittings, rests included. */
  readonly durationMs: number;
  /** The bag is finished and marked so. */
  readonly finished: boolean;
}

/** A line to write, and the log once it is written. */
export interface Written {
  readonly line: string;
  readonly state: LogState;
}

interface Beginning {
  readonly brief: BriefFile;
  /** Version of this program. */
  readonly program: string;
  /** ISO 8601 in UTC. */
  readonly startedAt: string;
}

/** The first line of a new log. */
export function beginLog({ brief, program, startedAt }: Beginning): Result<Written, PlanFault> {
  const plan = planBag(brief.brief);
  if (!plan.ok) return plan;
  const job = layOutJob(plan.value);
  const header = { name: brief.brief.name, program, brief: brief.json, figures: figuresOf(job), startedAt };
  return succeed(beginWith(header, startSession(job)));
}

/** The first line of a log with this very header, as a copy of another log has it. */
export function beginWith(header: LogHeader, session: Session): Written {
  const { text, sum } = sealLine(headerJson(header), 0);
  return { line: text, state: start(header, session, sum) };
}

/** The line for an event, if the session accepts it. */
export function recordEvent(
  state: LogState,
  event: LogEvent,
  afterMs: number,
): Result<Written, SessionFault> {
  const session = isCommand(event) ? updateSession(state.session, event) : succeed(state.session);
  if (!session.ok) return session;
  const entry = { event, afterMs, stepsDone: session.value.done };
  const { text, sum } = sealLine(entryJson(entry), state.sum);
  return succeed({ line: text, state: next(state, entry, session.value, sum) });
}

/** Opens a log with its first line, given without its line end. */
export function openWith(line: Uint8Array): Result<LogState, JournalFault> {
  const opened = unsealLine(line, 0);
  if (!opened.ok)
    return fail({ code: 'journal/damaged-line', line: 1, reason: opened.fault, laterStep: null });
  const read = readHeader(opened.value.json);
  if (!read.ok) return read;
  return succeed(start(read.value.header, startSession(read.value.job), opened.value.sum));
}

export interface Taken {
  readonly entry: Entry;
  readonly state: LogState;
}

/** Takes the next line, given without its line end. */
export function takeLine(state: LogState, line: Uint8Array): Result<Taken, JournalFault> {
  const number = state.events + 2;
  const damaged = (reason: LineFault) =>
    fail<JournalFault>({ code: 'journal/damaged-line', line: number, reason, laterStep: null });
  const opened = unsealLine(line, state.sum);
  if (!opened.ok) return damaged(opened.fault);
  const read = readEntry(opened.value.json);
  if (!read.ok) return damaged(read.fault);
  const entry = read.value;
  if (entry.event.do === 'finished' && !isFinished(state.session)) return damaged('out-of-place');
  const session = apply(state.session, entry, number);
  if (!session.ok) return session;
  return succeed({ entry, state: next(state, entry, session.value, opened.value.sum) });
}

function apply(before: Session, { event, stepsDone }: Entry, line: number): Result<Session, JournalFault> {
  const after = isCommand(event) ? updateSession(before, event) : succeed(before);
  if (!after.ok) return fail({ code: 'journal/command-refused', line, fault: after.fault });
  if (after.value.done === stepsDone) return after;
  return event.do === 'unknown'
    ? fail({ code: 'journal/unknown-event', line, name: event.name })
    : fail({ code: 'journal/step-differs', line, recorded: stepsDone, reached: after.value.done });
}

const start = (header: LogHeader, session: Session, sum: number): LogState => ({
  header,
  begun: { json: header.brief, brief: session.job.plan.brief },
  session,
  sum,
  events: 0,
  skipped: 0,
  sittings: 1,
  durationMs: 0,
  finished: false,
});

const next = (state: LogState, { event, afterMs }: Entry, session: Session, sum: number): LogState => ({
  header: state.header,
  begun: state.begun,
  session,
  sum,
  events: state.events + 1,
  skipped: state.skipped + (event.do === 'unknown' ? 1 : 0),
  sittings: state.sittings + (event.do === 'resume' ? 1 : 0),
  durationMs: state.durationMs + afterMs,
  finished: event.do === 'finished' || (state.finished && isFinished(session)),
});

export interface Rebuilt {
  readonly bytes: Uint8Array;
  readonly state: LogState;
}

/** Null where it is the log of another brief, or nothing behind its first line is sound. */
export function rebuildLog(bytes: Uint8Array, beginning: Beginning): Rebuilt | null {
  const headerEnd = bytes.indexOf(lineEnd);
  const header = lineIn(bytes, 0, Math.max(0, headerEnd));
  const text = new TextDecoder().decode(header);
  const begun = beginLog({ ...beginning, ...fieldsIn(text) });
  if (!begun.ok || !isLogOf(text, begun.value)) return null;
  // Where the sum itself is what was damaged, that of the line as it should be is the one.
  for (const sum of [statedSum(header), begun.value.state.sum]) {
    const copied = sum === null ? null : copyEvents(bytes, headerEnd + 1, sum, begun.value);
    if (copied) return copied;
  }
  return null;
}

/** What else the line says, where it can be read. */
function fieldsIn(header: string): Partial<Beginning> {
  const textOf = (field: string): string | undefined =>
    new RegExp(`"${field}":"([^"\\\\]+)"`).exec(header)?.[1];
  const [program, startedAt] = [textOf('program'), textOf('startedAt')];
  return {
    ...(program === undefined ? {} : { program }),
    ...(startedAt !== undefined && isInstant(startedAt) ? { startedAt } : {}),
  };
}

function isLogOf(header: string, { state }: Written): boolean {
  const { brief, figures } = headerJson(state.header);
  return [brief, figures].some((part) => header.includes(JSON.stringify(part)));
}

/** Each line is read by the sums of the old log and written by those of the new one. */
function copyEvents(bytes: Uint8Array, begins: number, sum: number, begun: Written): Rebuilt | null {
  const lines = [begun.line];
  let read = { ...begun.state, sum };
  let { state } = begun;
  let from = begins;
  for (let end = bytes.indexOf(lineEnd, from); end >= 0; end = bytes.indexOf(lineEnd, from)) {
    const taken = takeLine(read, lineIn(bytes, from, end));
    if (!taken.ok) break;
    read = taken.value.state;
    const { event, afterMs } = taken.value.entry;
    const written = recordEvent(state, event, afterMs);
    if (!written.ok) break;
    lines.push(written.value.line);
    state = written.value.state;
    from = end + 1;
  }
  return lines.length === 1 ? null : { bytes: new TextEncoder().encode(lines.join('')), state };
}
