/** The plan as other programs read it: plain JSON, every key with its unit, nothing rounded. */

import { formatNeedle } from '../bed/needles.ts';
import { colourRuns } from '../planning/colour-run.ts';
import { modelLoopLength } from '../planning/gauge.ts';
import { edgesOfRow, type Hanging } from '../planning/hangings.ts';
import type { Plan } from '../planning/plan.ts';
import { closingTailCm } from '../planning/tails.ts';
import { smallerDoubt } from '../planning/uncertainty.ts';
import { planWarnings } from '../planning/warnings.ts';
import { classesOfGauge } from '../planning/yarn-class.ts';
import { harmlessJson } from '../shared/plain-text.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import { cautionOf } from '../wording/cautions.ts';
import { sayStep } from '../wording/steps.ts';
import { formatWarning } from '../wording/warnings.ts';
import type { Words } from '../wording/words.ts';

export function planJson(plan: Plan, words: Words): Record<string, unknown> {
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
    warnings: planWarnings(plan).map((warning) => ({ ...warning, text: formatWarning(warning, words) })),
  };
}

function hangingJson(plan: Plan, hanging: Hanging): Record<string, unknown> {
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

const afterJson = (after: Step['after']): Record<string, unknown> => ({
  ...after,
  parked: Object.fromEntries(after.parked),
});
