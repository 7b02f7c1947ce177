import { fail, type Result, succeed } from '../shared/result.ts';
import type { JournalFault } from './fault.ts';
import type { LogReading } from './read-log.ts';

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
