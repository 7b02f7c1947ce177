import { type Brief, ravelStrand } from '../../planning/brief.ts';
import { closingWasteRows, rehangWasteRows } from '../../planning/yarn-needs.ts';
import type { Act } from '../../steps/act.ts';
import { rowsBeforeComb } from '../../steps/cast-on.ts';
import { cordsDone } from '../../steps/cord-count.ts';
import { hemsDone } from '../../steps/hem.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { yarnOfRow } from '../../steps/outline.ts';
import { phases, type Step } from '../../steps/step.ts';
import type { Looks } from './seen.ts';

/** What can be seen once `done` steps are confirmed. Before the first, the carriage stands wherever it was left. */
export function looksAt(job: Job, done: number, bands = colourBands(job)): Looks {
  if (done === 0) {
    const carriage = stepAt(job, 1).after.carriage;
    return { ...bare, carriage };
  }
  return looksAfter(job, stepAt(job, done), bands);
}

const bare = {
  left: null,
  right: null,
  lastColour: null,
  feeder: null,
  stitches: 0,
  wasteRows: 0,
  stripesCounted: 0,
  rowCounter: 0,
  rowsOfColour: 0,
  piecesDone: 0,
} as const;

export function looksAfter(job: Job, step: Step, bands: readonly number[]): Looks {
  const { left, right, carriage, feeder, stitches } = step.after;
  const stripe = job.outline.stripeOfRow[step.row] ?? 0;
  return {
    left,
    right,
    carriage,
    feeder,
    stitches,
    lastColour: left === null ? null : newestYarn(job, step),
    wasteRows: left === null ? 0 : wasteRowsOf(job, step),
    stripesCounted: step.row === 0 ? 0 : (bands[stripe] ?? 0),
    rowCounter: step.row,
    rowsOfColour:
      step.phase === 'hem' && left !== null ? hemRows(job, step.act) : rowsOfColour(job, step.row, bands),
    piecesDone: piecesDone(job, step),
  };
}

function piecesDone(job: Job, { phase, step }: Step): number {
  if (phase === 'hem') return hemsDone(step - (job.phaseStarts[phases.indexOf('hem')] ?? 0));
  return phase === 'cord' ? cordsDone(job.outline, step - (job.phaseStarts[phases.indexOf('cord')] ?? 0)) : 0;
}

/** Rows of one colour below the needles, neighbouring stripes of that colour together. */
function rowsOfColour({ plan, outline }: Job, row: number, bands: readonly number[]): number {
  const stripe = outline.stripeOfRow[row] ?? 0;
  let first = stripe;
  while (first > 0 && bands[first - 1] === bands[stripe]) first--;
  return row - (plan.stripes[first]?.firstRow ?? 1) + 1;
}

/** By stripe: which band of colour it lies in, from 1. */
export function colourBands({ plan }: Job): readonly number[] {
  let band = 0;
  return plan.stripes.map(({ yarn }, i) => {
    if (i === 0 || plan.stripes[i - 1]?.yarn !== yarn) band++;
    return band;
  });
}

function newestYarn(job: Job, { phase, act, row }: Step): string | null {
  const { cord, waste } = job.plan.brief;
  if (phase === 'cord') return cord.yarn;
  // Loops of the edge alone are of all the stripes' yarns.
  if (phase === 'hem') return hemRows(job, act) === 0 ? null : (job.plan.hem?.yarn ?? null);
  const strand = ravelStrand(job.plan.brief);
  if (phase === 'cast-on') return onRavelCord.has(act.kind) ? strand : waste.yarn;
  if (act.kind === 'waste-rows' || act.kind === 'weights-off') return waste.yarn;
  return row === 0 ? strand : yarnOfRow(job.outline, row);
}

/** Rows of the hem from the needles down to the edge that they were picked up from. */
function hemRows({ plan }: Job, act: Act): number {
  switch (act.kind) {
    case 'hem-rows':
      return act.through;
    case 'fold-row':
    case 'hem-close':
      return act.number;
    case 'hang-fold':
      return (plan.hem?.passes ?? 1) - 1;
    default:
      return 0;
  }
}

const onRavelCord: ReadonlySet<string> = new Set(['ravel-pass', 'trim-ravel-cord']);

function wasteRowsOf(job: Job, { phase, act, row }: Step): number {
  const { brief } = job.plan;
  if (act.kind === 'waste-rows') return act.through;
  if (phase === 'cast-on') return castOnRows(brief, act.kind);
  switch (act.kind) {
    case 'weights-off':
      return act.rehangs ? rehangWasteRows(brief) : closingWasteRows(brief);
    case 'rehang':
    case 'hang-weights':
      return rehangWasteRows(brief);
    default:
      return row === 0 ? openStartRows(brief) : 0;
  }
}

/** All that hangs below the first row of the bag; a ravel row of waste looks like one row more of it. */
const openStartRows = ({ waste }: Brief): number => waste.rows + (waste.ravel === 'loop' ? 1 : 0);

function castOnRows(brief: Brief, kind: Act['kind']): number {
  switch (kind) {
    case 'hang-comb':
    case 'hang-weights':
      return Math.min(brief.waste.rows, rowsBeforeComb);
    case 'lay-ravel-cord':
      return brief.waste.rows;
    case 'ravel-pass':
    case 'trim-ravel-cord':
      return openStartRows(brief);
    default:
      return 0;
  }
}
