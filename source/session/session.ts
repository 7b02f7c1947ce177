import type { Bed } from '../bed/bed.ts';
import { Kept } from '../shared/kept.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import type { SetRight } from './mend.ts';
import type { Way } from './way.ts';

/** What taking back brings back: the place, the plan followed from there, the slips set right. */
export interface Standing {
  readonly job: Job;
  /** Steps confirmed; the step to do now is `done + 1`. */
  readonly done: number;
  readonly mends: readonly SetRight[];
  /** The way back or the mend that the hands are on. */
  readonly way: Way | null;
  /** The bed where a way was left between two places of the plan; null where the bed is the plan's. */
  readonly adrift: Bed | null;
}

/** Places left by earlier commands, newest first. A linked list, so that a press costs the same after a thousand. */
export interface Places extends Standing {
  readonly earlier: Places | null;
}

export interface Note {
  readonly done: number;
  readonly text: string;
}

/** A name for a place. */
export interface Mark {
  readonly name: string;
  /** Steps confirmed there. */
  readonly done: number;
}

/** What was left of a yarn when it was last weighed. */
export interface Weighing {
  readonly grams: number;
  /** Steps confirmed then. */
  readonly done: number;
}

/** The bag's own size, sewn and lying flat. */
export interface MeasuredBag {
  readonly widthCm: number;
  readonly depthCm: number;
  /** Steps confirmed then. */
  readonly done: number;
}

/** Where a maker is in a job. Immutable: `updateSession` gives the next one. */
export interface Session extends Standing {
  readonly takeBack: Places | null;
  readonly redo: Places | null;
  readonly notes: Kept<Note>;
  /** As they were made; of several with one name the last holds. */
  readonly marks: Kept<Mark>;
  /** By yarn. */
  readonly weighed: ReadonlyMap<string, Weighing>;
  /** As it was last measured; null before that. */
  readonly measured: MeasuredBag | null;
}

export const startSession = (job: Job): Session => ({
  job,
  done: 0,
  mends: [],
  way: null,
  adrift: null,
  takeBack: null,
  redo: null,
  notes: Kept.none,
  marks: Kept.none,
  weighed: new Map(),
  measured: null,
});

export const isFinished = ({ done, job }: Session): boolean => done === job.stepCount;

/** The step to do now; null once the bag is finished. */
export const currentStep = (session: Session): Step | null =>
  isFinished(session) ? null : stepAt(session.job, session.done + 1);

const places = new WeakMap<Kept<Mark>, ReadonlyMap<string, number>>();

/** Steps confirmed at each mark, by name. */
export function marksOf({ marks }: Session): ReadonlyMap<string, number> {
  const known = places.get(marks) ?? new Map([...marks].map(({ name, done }) => [name, done]));
  places.set(marks, known);
  return known;
}
