import { formatNeedle } from '../bed/needles.ts';
import { plannedCost } from '../journal/bag-cost.ts';
import { type Pace, timeByPhase } from '../journal/pace.ts';
import { colourRuns } from '../planning/colour-run.ts';
import type { BagFromYarn } from '../planning/from-yarn.ts';
import { classesOfGauge, modelLoopLength } from '../planning/gauge.ts';
import { edgesOfRow, type Hanging } from '../planning/hangings.ts';
import { orderParty, partyKit, sharedYarn } from '../planning/party.ts';
import type { Plan } from '../planning/plan.ts';
import { withoutNull } from '../planning/shelf.ts';
import { closingTailCm } from '../planning/tails.ts';
import { smallerDoubt } from '../planning/uncertainty.ts';
import { planWarnings } from '../planning/warnings.ts';
import { harmlessJson } from '../shared/plain-text.ts';
import type { JsonGroup } from '../shared/result.ts';
import { allSteps, type Job, layOutJob, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import { sayBy } from '../wording/by-kind.ts';
import { formatPlanPage } from '../wording/plan-page.ts';
import { formatParty, partySeconds } from '../wording/shelf.ts';
import { cautionOf, sayStep } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printJson } from './outcome.ts';
import { ownPace, readBagFromYarn, readPlan } from './read-input.ts';

interface PlanOptions {
  readonly json: boolean;
  readonly fromYarn: boolean;
  /** From bag to bag each stripe takes the yarn of the next. */
  readonly coloursTurned: boolean;
  readonly words: Words;
}

/**
 * Prints the plan of a brief, or of several and their yarn together; `fromYarn` takes the size for a shape, and makes that
 * as large as the yarn allows.
 */
export function printPlan(
  paths: readonly string[],
  { json, fromYarn, coloursTurned, words }: PlanOptions,
): number {
  const bags: PlannedBag[] = [];
  for (const [i, path] of paths.entries()) {
    const bag = fromYarn ? readBagFromYarn(path, words) : readPlan(path, words, coloursTurned ? i : 0);
    if (!bag.ok) return complain(bag.fault);
    bags.push(
      'plan' in bag.value
        ? { plan: bag.value.plan, fromYarn: bag.value }
        : { plan: bag.value, fromYarn: null },
    );
  }
  if (json) printJson(bagsJson(bags, words), 2);
  else print(pageText(bags, words));
  return exitCodes.done;
}

interface PlannedBag {
  readonly plan: Plan;
  /** Null where a size was asked for. */
  readonly fromYarn: BagFromYarn | null;
}

function bagsJson(bags: readonly PlannedBag[], words: Words): unknown {
  const pace = ownPace();
  const plans = bags.map(({ plan, fromYarn }) => ({
    ...planJson(plan, words),
    time: timeJson(plan, pace),
    ...withoutNull({ cost: plannedCost(plan, pace) }),
    ...(fromYarn ? { limit: fromYarn.limit, nearShapes: fromYarn.nearShapes } : {}),
  }));
  if (plans.length === 1) return plans[0];
  const all = bags.map(({ plan }) => plan);
  return {
    bags: plans,
    yarn: sharedYarn(all),
    ...orderParty(all),
    tools: partyKit(all),
    workS: partySeconds(all, pace),
  };
}

function timeJson(plan: Plan, pace: Pace) {
  const byPhase = timeByPhase(layOutJob(plan), pace);
  const workS = [...byPhase.values()].reduce((sum, seconds) => sum + seconds, 0);
  return { workS, phaseS: Object.fromEntries(byPhase), ownBags: pace.bags };
}

function pageText(bags: readonly PlannedBag[], words: Words): string {
  const pace = ownPace();
  const pages = bags.map(({ plan, fromYarn }) => formatPlanPage(plan, words, { pace, fromYarn }));
  const plans = bags.map(({ plan }) => plan);
  return [...pages, ...(plans.length > 1 ? [formatParty(plans, pace, words)] : [])].join('\n\n\n');
}

export async function printSteps(path: string, json: boolean, words: Words): Promise<number> {
  const plan = readPlan(path, words);
  if (!plan.ok) return complain(plan.fault);
  for (const line of json ? jsonLines(plan.value, words) : textLines(plan.value, words)) {
    if (!print(line)) await new Promise((resolve) => process.stdout.once('drain', resolve));
  }
  return exitCodes.done;
}

function* jsonLines(plan: Plan, words: Words): Generator<string> {
  const job = layOutJob(plan);
  for (let number = 1; number <= job.stepCount; number++) yield stepJson(job, number, words);
}

/** The steps with a heading for each phase. */
function* textLines(plan: Plan, words: Words): Generator<string> {
  const job = layOutJob(plan);
  const width = String(job.stepCount).length;
  let phase: string | null = null;
  for (const step of allSteps(job)) {
    if (step.phase !== phase)
      yield `${phase === null ? '' : '\n'}${words.prompt.phases[step.phase].toUpperCase()}`;
    phase = step.phase;
    yield `${String(step.step).padStart(width)}  ${sayStep(step, words)}`;
  }
}

/** As other programs read it: plain JSON, every key with its unit, nothing rounded. */
export function planJson(plan: Plan, words: Words): JsonGroup {
  const { brief, gauge } = plan;
  const runs = colourRuns(plan);
  return {
    name: brief.name,
    stitches: plan.stitches,
    rows: plan.rows,
    knittedRows: plan.knittedRows,
    shapings: plan.shapings,
    shapeEveryRows: brief.shapeEveryRows,
    edgeStitches: brief.edgeStitches,
    gauge: {
      stitchMm: gauge.stitchMm,
      rowMm: gauge.rowMm,
      stitchesPer10Cm: 100 / gauge.stitchMm,
      rowsPer10Cm: 100 / gauge.rowMm,
    },
    size: { ...plan.size, smallerDoubt: smallerDoubt(plan) },
    ...(brief.learned ? { learned: brief.learned } : {}),
    ...(plan.asKnitted ? { asKnitted: plan.asKnitted } : {}),
    stripes: plan.stripes,
    ...(runs.length > 0 ? { colourRuns: runs } : {}),
    neighbours: plan.neighbours,
    bed: {
      needlesUsed: plan.needlesUsed,
      hangings: plan.hangings.map((hanging) => hangingJson(plan, hanging)),
      savings: plan.savings,
    },
    yarn: plan.yarn,
    loopLengthMm: gauge.loopLengthMm,
    loopLengthMeasured: gauge.loopLengthMeasured,
    modelLoopLengthMm: modelLoopLength(gauge.asKnitted.stitchMm, gauge.asKnitted.rowMm, brief.swatch.state),
    tightness: plan.tightness,
    fabricGramsPerM2: plan.fabricGramsPerM2,
    yarnClasses: classesOfGauge(gauge.asKnitted.stitchMm).map(({ number }) => number),
    aim: plan.aim,
    ravelCord: { lengthCm: plan.ravelCordCm },
    graft: { ...plan.graft, cutCm: closingTailCm(plan) },
    seam: plan.seam,
    boxed: plan.boxed,
    hem: plan.hem,
    lining: plan.lining,
    cord: plan.cord,
    eyelets: plan.eyelets,
    warnings: planWarnings(plan).map((warning) => ({
      ...warning,
      text: sayBy('code', words.warnings, warning),
    })),
  };
}

function hangingJson(plan: Plan, hanging: Hanging): JsonGroup {
  const { bed } = plan.brief;
  const { fromRow, throughRow } = hanging;
  const first = edgesOfRow(plan, fromRow);
  const last = edgesOfRow(plan, throughRow);
  return {
    fromRow,
    throughRow,
    firstLeft: formatNeedle(bed.needles, first.left),
    firstRight: formatNeedle(bed.needles, first.right),
    lastLeft: formatNeedle(bed.needles, last.left),
    lastRight: formatNeedle(bed.needles, last.right),
  };
}

/** One step as other programs read it: a line of JSON Lines. */
export function stepJson(job: Job, number: number, words: Words): string {
  const step = stepAt(job, number);
  const { phase, row, stripe, moves, after } = step;
  const say = sayStep(step, words);
  const caution = cautionOf(job.plan, step, words);
  return harmlessJson({
    step: step.step,
    phase,
    say,
    ...(caution === null ? {} : { caution }),
    row,
    stripe,
    moves,
    after: afterJson(after),
  });
}

const afterJson = (after: Step['after']): JsonGroup => ({
  ...after,
  parked: Object.fromEntries(after.parked),
});
