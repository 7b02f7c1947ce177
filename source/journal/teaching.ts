/**
 * What a teacher does with logs: a copy of one with things to read, places to stop, notes and marks in it, of which none moves
 * the place, so that the steps stay as they were recorded while every line is sealed again; and how a class stands by the logs
 * of its pupils. The logs themselves are not touched.
 */
import type { Command, SessionFault } from '../session/command.ts';
import { currentStep } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Phase } from '../steps/step.ts';
import { beginWith, recordEvent, type Written } from './log-state.ts';
import type { Entry, Teaching } from './notation.ts';
import type { Recording } from './read-log.ts';
import { recordOf } from './record.ts';

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
  return writeLog(beginWith(header, start), events);
}

function writeLog(
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

export interface Pupil {
  /** The name of the log's file, without its ending. */
  readonly log: string;
  readonly bag: string;
  readonly stepsDone: number;
  readonly stepCount: number;
  /** Null once the bag is finished. */
  readonly phase: Phase | null;
  readonly workS: number;
  readonly takenBack: number;
}

/** A step that was slow for more than one. */
interface HardStep {
  readonly step: number;
  readonly row: number;
  readonly pupils: number;
}

export interface ClassProgress {
  readonly pupils: readonly Pupil[];
  readonly hardSteps: readonly HardStep[];
}

const mostHardSteps = 5;

/** How far each is, those furthest on first, and which steps cost several of them time. */
export function classProgress(
  logs: readonly { readonly log: string; readonly recording: Recording }[],
): ClassProgress {
  const records = logs.map(({ log, recording }) => ({ log, recording, record: recordOf(recording) }));
  const pupils = records.map(({ log, recording, record }): Pupil => {
    const session = recording.frames.at(-1)?.session ?? recording.start;
    const { done, job, name } = session;
    return {
      log,
      bag: name,
      stepsDone: done,
      stepCount: job.stepCount,
      phase: currentStep(session)?.phase ?? null,
      workS: record.benchMs / 1000,
      takenBack: record.takenBack,
    };
  });
  const slow = records.flatMap(({ record }) => record.slowPlaces);
  const steps = [...new Set(slow.map(({ step }) => step))].map((step): HardStep => {
    const alike = slow.filter((place) => place.step === step);
    return { step, row: alike[0]?.row ?? 0, pupils: alike.length };
  });
  const share = ({ stepsDone, stepCount }: Pupil): number => stepsDone / stepCount;
  return {
    pupils: pupils.toSorted((a, b) => share(b) - share(a) || a.log.localeCompare(b.log)),
    hardSteps: steps
      .filter(({ pupils: many }) => many > 1)
      .toSorted((a, b) => b.pupils - a.pupils || a.step - b.step)
      .slice(0, mostHardSteps),
  };
}
