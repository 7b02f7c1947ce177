/**
 * A copy of a log with a teacher's lines in it: things to read, places to stop, notes and marks. None of these moves
 * the place, so the steps stay as they were recorded, while every line is sealed again. The log itself is not touched.
 */
import type { Command, SessionFault } from '../session/command.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { beginWith, recordEvent, type Written } from './log-state.ts';
import type { Entry, Teaching } from './notation.ts';
import type { Recording } from './recording.ts';

export interface Addition {
  /** Put in after this many of the recorded events; 0 is before the first. */
  readonly after: number;
  readonly event: Teaching | Extract<Command, { readonly do: 'note' | 'mark' }>;
}

export type LessonFault =
  | { readonly code: 'lesson/no-such-event'; readonly after: number; readonly events: number }
  | SessionFault;

/** The text of the copy. Additions at the same place keep their order; they take no time. */
export function addToCopy(recording: Recording, additions: readonly Addition[]): Result<string, LessonFault> {
  const { header, start, frames } = recording;
  const astray = additions.find(
    ({ after }) => !(Number.isInteger(after) && after >= 0 && after <= frames.length),
  );
  if (astray) return fail({ code: 'lesson/no-such-event', after: astray.after, events: frames.length });
  const events = [undefined, ...frames.map(({ entry }) => entry)].flatMap((entry, i) => {
    const added = additions.filter(({ after }) => after === i).map(({ event }) => ({ event, afterMs: 0 }));
    return entry ? [entry, ...added] : added;
  });
  return writeAll(beginWith(header, start), events);
}

function writeAll(
  begun: Written,
  events: readonly Pick<Entry, 'event' | 'afterMs'>[],
): Result<string, SessionFault> {
  const lines = [begun.line];
  let { state } = begun;
  for (const { event, afterMs } of events) {
    const written = recordEvent(state, event, afterMs);
    if (!written.ok) return written;
    lines.push(written.value.line);
    state = written.value.state;
  }
  return succeed(lines.join(''));
}
