/**
 * Which step each recorded interval was spent on. Time before a confirmation belongs to the steps it confirms, in equal
 * parts; time before anything else to the step that was to be done. The clock cannot tell a rest from a slow step, so a
 * gap longer than a limit counts as a rest: a rule of thumb, no source.
 */
import type { Session } from '../session/session.ts';
import { stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import type { Entry } from './entry.ts';
import type { Recording } from './recording.ts';

export const usualRestLimitMs = 5 * 60_000;

/** Time spent on one step, once. */
export interface Spent {
  readonly step: Step;
  readonly ms: number;
  /** It ended in a press that confirmed this step and no other, so the time is the step's own. */
  readonly alone: boolean;
  /** The gap was too long to be work. */
  readonly rest: boolean;
}

/** In order of recording. `restLimitMs` is for one step: ten passes confirmed together may take ten times as long. */
export function* spentTimes(recording: Recording, restLimitMs = usualRestLimitMs): Generator<Spent> {
  let before = recording.start;
  for (const { entry, session } of recording.moments) {
    const steps = stepsOf(entry, before);
    const ms = entry.afterMs / steps.count;
    for (let i = 0; i < steps.count; i++) {
      const step = stepAt(before.job, steps.first + i);
      yield { step, ms, alone: steps.confirmed && steps.count === 1, rest: ms > restLimitMs };
    }
    before = session;
  }
}

interface StepsOf {
  readonly first: number;
  readonly count: number;
  readonly confirmed: boolean;
}

function stepsOf({ event }: Entry, { done, job }: Session): StepsOf {
  if (event.do === 'confirm') return { first: done + 1, count: event.count, confirmed: true };
  return { first: Math.min(done + 1, job.stepCount), count: 1, confirmed: false };
}
