import type { Draw } from '../planning/eyelets.ts';
import type { Plan } from '../planning/plan.ts';
import { castOnStep, countCastOn } from './cast-on.ts';
import { closingRowStep, countClosingRow } from './closing-row.ts';
import { cordStep } from './cord.ts';
import { countCord, drawAt } from './cord-count.ts';
import { countGraft, graftStep } from './graft.ts';
import { countHem, hemStep } from './hem.ts';
import { type KnittedPart, type Outline, outlineSteps } from './outline.ts';
import { countSeam, seamStep } from './seam.ts';
import { type Phase, phases, type Step, type StepBody } from './step.ts';
import { countStripes, stripesStep } from './stripes.ts';

/** A plan as work to do: where each phase starts, and the step at any index. */
export interface Job {
  readonly plan: Plan;
  readonly outline: Outline;
  readonly stepCount: number;
  /** By phase, in order: steps before its first one. */
  readonly phaseStarts: readonly number[];
  /** Where the plan was changed half-way: the steps done by then stay as they were. */
  readonly kept: { readonly job: Job; readonly done: number } | null;
}

interface PhaseSteps {
  readonly count: (outline: Outline) => number;
  readonly step: (outline: Outline, local: number) => StepBody;
}

const phaseSteps: Readonly<Record<Phase, PhaseSteps>> = {
  'cast-on': { count: countCastOn, step: castOnStep },
  stripes: { count: countStripes, step: stripesStep },
  'closing-row': { count: countClosingRow, step: closingRowStep },
  hem: { count: countHem, step: hemStep },
  graft: { count: countGraft, step: graftStep },
  seam: { count: countSeam, step: seamStep },
  cord: { count: countCord, step: cordStep },
};

/** The steps of a plan; of one changed half-way, those after the `kept` ones, which must have brought the work so far. */
export function layOutJob(plan: Plan, kept: Job['kept'] = null): Job {
  const outline = outlineSteps(plan, kept && knittedPart(kept));
  const phaseStarts: number[] = [];
  let stepCount = 0;
  for (const phase of phases) {
    phaseStarts.push(stepCount);
    stepCount += phaseSteps[phase].count(outline);
  }
  return { plan, outline, stepCount, phaseStarts, kept };
}

/** The same work with another cord, which is planned again before its rest is knitted: what comes before it stays. */
export function withCord(job: Job, plan: Plan): Job {
  const outline = { ...job.outline, plan };
  const others = job.phaseStarts[phases.indexOf('cord')] ?? 0;
  return { ...job, plan, outline, stepCount: others + countCord(outline) };
}

/** The parts that a bag has: not every mouth is hemmed. */
export const phasesOf = ({ hem }: Pick<Plan, 'hem'>): readonly Phase[] =>
  phases.filter((phase) => phase !== 'hem' || hem !== null);

/** Which cord a step of the cord's phase is about. */
export const drawOfStep = ({ outline, phaseStarts }: Job, step: number): Draw =>
  drawAt(outline, step - 1 - (phaseStarts[phases.indexOf('cord')] ?? 0));

function knittedPart({ job, done }: NonNullable<Job['kept']>): KnittedPart | null {
  if (done === 0) return null;
  const { row, after } = stepAt(job, done);
  return { row, feeder: after.feeder, parked: after.parked };
}

/** The step with `number` (1 … stepCount). Throws outside that range: callers check against `stepCount`. */
export function stepAt(job: Job, number: number): Step {
  const { outline, phaseStarts, stepCount, kept } = job;
  if (!(number >= 1 && number <= stepCount)) throw new RangeError(`no step ${number} of ${stepCount}`);
  if (kept && number <= kept.done) return stepAt(kept.job, number);
  const index = number - 1;
  let which = phases.length - 1;
  while ((phaseStarts[which] ?? 0) > index) which--;
  const phase = phases[which] as Phase;
  const { row, stripe, act, moves, after } = phaseSteps[phase].step(
    outline,
    index - (phaseStarts[which] ?? 0),
  );
  return { step: number, phase, row, stripe, act, moves, after };
}

/** Main-yarn rows knitted when `done` steps are confirmed. */
export const rowAt = (job: Job, done: number): number => (done === 0 ? 0 : stepAt(job, done).row);

/** All steps in order, one at a time. */
export function* allSteps(job: Job): Generator<Step> {
  for (let number = 1; number <= job.stepCount; number++) yield stepAt(job, number);
}
