/** The colours that slips leave to see, by the rows that were knitted and the yarns they took: told without a bed. */
import type { Job } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import type { Look } from '../locate/seen.ts';
import type { Slip } from '../mend/slip.ts';
import { yarnFor } from './hands.ts';
import { baseOf, isPass } from './slip-moment.ts';
import { stepOf } from './story.ts';

type Colours = Pick<Look, 'lastColour' | 'feeder' | 'stripesCounted' | 'rowsOfColour'>;

/** Steps looked back over. */
const reach = 250;

/** The steps that knit a row or change the yarn, since the stripes began or the work was last taken off. */
function yarnSteps(job: Job, done: number): { readonly from: number; readonly steps: readonly Step[] } {
  const steps: Step[] = [];
  let from = done;
  for (; from > 0 && from > done - reach; from--) {
    const step = stepOf(job, from);
    if (step.phase !== 'stripes' || step.act.kind === 'thread-waste') break;
    if (isPass(step) || step.act.kind === 'thread') steps.push(step);
  }
  return { from, steps: steps.toReversed() };
}

/** Whether what is seen of the colours once `done` steps are confirmed can come of these slips. */
export function coloursAt(job: Job, done: number): (look: Look, slips: readonly Slip[]) => boolean {
  const { from, steps } = yarnSteps(job, done);
  const begins = looksAt(job, from, placeIndex(job).bands);
  const isWaste = begins.wasteRows > 0 && begins.rowCounter > 0;
  return (look, slips) => {
    if (isWaste || steps.length === 0 || baseOf(job, slips, done) < from) return true;
    const colours = coloursOf(job, begins, steps, slips);
    return told.every((fact) => look[fact] === undefined || look[fact] === colours[fact]);
  };
}

const told = ['lastColour', 'feeder', 'stripesCounted', 'rowsOfColour'] as const;

function coloursOf(job: Job, begins: Colours, steps: readonly Step[], slips: readonly Slip[]): Colours {
  let { lastColour, feeder, stripesCounted = 0, rowsOfColour = 0 } = begins;
  if (stripesCounted === 0) lastColour = null;
  const knit = (rows: number): void => {
    if (rows === 0) return;
    if (lastColour !== feeder) {
      stripesCounted++;
      rowsOfColour = 0;
    }
    rowsOfColour += rows;
    lastColour = feeder;
  };
  const omitted = omittedBy(steps, slips);
  const extra = (from: number, below: number): number =>
    slips.reduce(
      (sum, slip) =>
        slip.is === 'rows-too-many' && from <= slip.step && slip.step < below ? sum + slip.rows : sum,
      0,
    );
  if (steps[0]) knit(extra(0, steps[0].step));
  for (const [i, step] of steps.entries()) {
    const { act } = step;
    const other = slips.find((slip) => slip.is === 'row-in-other-yarn' && slip.step === step.step);
    if (act.kind === 'thread') feeder = yarnFor(job, slips, step, act.yarn);
    else if (!omitted.has(step.step)) {
      if (other?.is === 'row-in-other-yarn') feeder = other.used;
      knit(1);
    }
    knit(extra(step.step, steps[i + 1]?.step ?? Number.POSITIVE_INFINITY));
  }
  const held = slips.find((slip) => slip.is === 'wrong-yarn-in-feeder');
  return {
    lastColour: stripesCounted === 0 ? begins.lastColour : lastColour,
    feeder: held?.is === 'wrong-yarn-in-feeder' ? held.held : feeder,
    stripesCounted,
    rowsOfColour,
  };
}

/** Passes that were left out: the last so many up to a step. */
function omittedBy(steps: readonly Step[], slips: readonly Slip[]): ReadonlySet<number> {
  const passes = steps.filter(isPass).map(({ step }) => step);
  return new Set(
    slips.flatMap((slip) =>
      slip.is === 'rows-too-few' ? passes.filter((step) => step <= slip.step).slice(-slip.rows) : [],
    ),
  );
}
