import { planJson } from '../chat/plan-json.ts';
import { stepJson } from '../chat/steps-json.ts';
import { pageWidth, wrap } from '../chat/wording/page.ts';
import { formatPlanPage } from '../chat/wording/plan-page.ts';
import { sayPhase, sayStep } from '../chat/wording/steps.ts';
import type { BagLimit } from '../planning/from-yarn.ts';
import type { Plan } from '../planning/plan.ts';
import { type Result, succeed } from '../shared/result.ts';
import type { Units } from '../shared/units.ts';
import { shadeWarnings } from '../sheet/colour/shades.ts';
import { formatShadeWarning } from '../sheet/page/content.ts';
import { allSteps, layOutJob } from '../steps/job.ts';
import { complain, exitCodes } from './outcome.ts';
import { ownRowMinutes } from './pace.ts';
import { readBagFromYarn, readPlan } from './read-brief.ts';

export interface PlanOptions {
  readonly json: boolean;
  readonly fromYarn: boolean;
  readonly units: Units;
}

/** Prints the plan of a brief; `fromYarn` takes its size for a shape, and makes that as large as the yarn allows. */
export function printPlan(path: string, { json, fromYarn, units }: PlanOptions): number {
  const bag = fromYarn ? readBagFromYarn(path) : withoutLimit(readPlan(path));
  if (!bag.ok) return complain(bag.fault);
  const text = json ? jsonText(bag.value) : pageText(bag.value, units);
  process.stdout.write(`${text}\n`);
  return exitCodes.done;
}

interface Bag {
  readonly plan: Plan;
  /** Null where a size was asked for. */
  readonly limit: BagLimit | null;
}

const withoutLimit = (plan: Result<Plan, string>): Result<Bag, string> =>
  plan.ok ? succeed({ plan: plan.value, limit: null }) : plan;

const jsonText = ({ plan, limit }: Bag): string =>
  JSON.stringify({ ...planJson(plan), ...(limit ? { limit } : {}) }, null, 2);

function pageText({ plan, limit }: Bag, units: Units): string {
  const page = formatPlanPage(plan, { units, minutesPerRow: ownRowMinutes(), limit });
  const shades = shadeWarnings(plan).map(formatShadeWarning);
  return [page, ...shades.map((shade) => wrap(shade, pageWidth).join('\n'))].join('\n\n');
}

export async function printSteps(path: string, json: boolean, units: Units): Promise<number> {
  const plan = readPlan(path);
  if (!plan.ok) return complain(plan.fault);
  for (const line of json ? jsonLines(plan.value) : textLines(plan.value, units)) {
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
function* textLines(plan: Plan, units: Units): Generator<string> {
  const job = layOutJob(plan);
  const width = String(job.stepCount).length;
  let phase: string | null = null;
  for (const step of allSteps(job)) {
    if (step.phase !== phase) yield `${phase === null ? '' : '\n'}${sayPhase(step.phase).toUpperCase()}`;
    phase = step.phase;
    yield `${String(step.step).padStart(width)}  ${sayStep(plan, step, units)}`;
  }
}
