import { planJson } from '../chat/plan-json.ts';
import { stepJson } from '../chat/steps-json.ts';
import { formatPlanPage } from '../chat/wording/plan-page.ts';
import { phaseNames, sayStep } from '../chat/wording/steps.ts';
import type { Plan } from '../planning/plan.ts';
import { allSteps, layOutJob } from '../steps/job.ts';
import { complain, exitCodes } from './outcome.ts';
import { readPlan } from './read-brief.ts';

export interface PlanOptions {
  readonly json: boolean;
  readonly fromYarn: boolean;
}

export function printPlan(path: string, { json }: PlanOptions): number {
  const plan = readPlan(path);
  if (!plan.ok) return complain(plan.fault);
  process.stdout.write(
    json ? `${JSON.stringify(planJson(plan.value), null, 2)}\n` : `${formatPlanPage(plan.value)}\n`,
  );
  return exitCodes.done;
}

export async function printSteps(path: string, json: boolean): Promise<number> {
  const plan = readPlan(path);
  if (!plan.ok) return complain(plan.fault);
  for (const line of json ? jsonLines(plan.value) : textLines(plan.value)) {
    if (!process.stdout.write(`${line}\n`))
      await new Promise((resolve) => process.stdout.once('drain', resolve));
  }
  return exitCodes.done;
}

function* jsonLines(plan: Plan): Generator<string> {
  const job = layOutJob(plan);
  for (let number = 1; number <= job.stepCount; number++) yield stepJson(job, number);
}

/** The steps with a heading for each phase. */
function* textLines(plan: Plan): Generator<string> {
  const job = layOutJob(plan);
  const width = String(job.stepCount).length;
  let phase: string | null = null;
  for (const step of allSteps(job)) {
    if (step.phase !== phase) yield `${phase === null ? '' : '\n'}${phaseNames[step.phase].toUpperCase()}`;
    phase = step.phase;
    yield `${String(step.step).padStart(width)}  ${sayStep(plan, step)}`;
  }
}
