import type { Plan } from '../planning/plan.ts';
import { castOnStep, countCastOn } from './cast-on.ts';
import { closingRowStep, countClosingRow } from './closing-row.ts';
import { cordStep, countCord } from './cord.ts';
import { countGraft, graftStep } from './graft.ts';
import { type Outline, outlineSteps } from './outline.ts';
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
}

interface PhaseSteps {
  readonly count: (outline: Outline) => number;
  readonly step: (outline: Outline, local: number) => StepBody;
}

const phaseSteps: Readonly<Record<Phase, PhaseSteps>> = {
  'cast-on': { count: countCastOn, step: castOnStep },
  stripes: { count: countStripes, step: stripesStep },
  'closing-row': { count: countClosingRow, step: closingRowStep },
  graft: { count: countGraft, step: graftStep },
  seam: { count: countSeam, step: seamStep },
  cord: { count: countCord, step: cordStep },
};

export function layOutJob(plan: Plan): Job {
  const outline = outlineSteps(plan);
  const phaseStarts: number[] = [];
  let stepCount = 0;
  for (const phase of phases) {
    phaseStarts.push(stepCount);
    stepCount += phaseSteps[phase].count(outline);
  }
  return { plan, outline, stepCount, phaseStarts };
}

/** The step with `number` (1 … stepCount). Throws outside that range: callers check against `stepCount`. */
export function stepAt({ outline, phaseStarts, stepCount }: Job, number: number): Step {
  if (!(number >= 1 && number <= stepCount)) throw new RangeError(`no step ${number} of ${stepCount}`);
  const index = number - 1;
  let which = phases.length - 1;
  while ((phaseStarts[which] ?? 0) > index) which--;
  const phase = phases[which] as Phase;
  const body = phaseSteps[phase].step(outline, index - (phaseStarts[which] ?? 0));
  return { step: number, phase, ...body };
}

/** All steps in order, one at a time. */
export function* allSteps(job: Job): Generator<Step> {
  for (let number = 1; number <= job.stepCount; number++) yield stepAt(job, number);
}
