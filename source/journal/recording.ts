import type { Session } from '../session/session.ts';
import { instantOf } from '../shared/instant.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { JournalFault } from './fault.ts';
import type { LogHeader } from './header.ts';
import type { Entry } from './notation.ts';
import { readLog } from './read-log.ts';

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
}

export function readRecording(bytes: Uint8Array): Result<Recording, JournalFault> {
  const frames: Frame[] = [];
  const { start, state, fault } = readLog(bytes, (entry, { session }) => frames.push({ entry, session }));
  if (fault) return fail(fault);
  if (!start || !state) return fail({ code: 'journal/no-header' });
  return succeed({ header: state.header, start: start.session, frames, finished: state.finished });
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
