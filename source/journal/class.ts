/** How a class stands by the logs of its pupils: how far each is, and which steps cost several of them time. */
import { currentStep } from '../session/session.ts';
import type { Phase } from '../steps/step.ts';
import { recordOf } from './record.ts';
import type { Recording } from './recording.ts';

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
export interface HardStep {
  readonly step: number;
  readonly row: number;
  readonly pupils: number;
}

export interface ClassProgress {
  readonly pupils: readonly Pupil[];
  readonly hardSteps: readonly HardStep[];
}

const mostHardSteps = 5;

/** Those furthest on come first. */
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
