import type { Command } from '../session/command.ts';

/** Lines that only a copy of a log holds, put in by a teacher: something to read, and a place to stop. */
export type Teaching = { readonly do: 'say'; readonly text: string } | { readonly do: 'pause' };

/** What happened around the work. None of these moves the place. */
export type Occurrence =
  /** A new sitting; `at` by the clock on the wall, ISO 8601 in UTC. */
  | { readonly do: 'resume'; readonly at: string }
  /** An orderly end of a sitting. */
  | { readonly do: 'quit' }
  /** The last step has been confirmed: tells a finished log from an interrupted one. */
  | { readonly do: 'finished' }
  | Teaching;

/** A kind that a later program writes; kept and passed over. */
export interface UnknownEvent {
  readonly do: 'unknown';
  readonly name: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

export type LogEvent = Command | Occurrence | UnknownEvent;

/** One line of a log after the header. */
export interface Entry {
  readonly event: LogEvent;
  /** Since the line before, whole milliseconds; 0 at a resume, since the time away was not measured. */
  readonly afterMs: number;
  /** Steps confirmed when the event is done. */
  readonly stepsDone: number;
}
