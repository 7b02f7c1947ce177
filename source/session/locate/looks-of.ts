import { ravelCord } from '../../planning/brief.ts';
import { closingWasteRows, rehangWasteRows } from '../../planning/yarn-needs.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { yarnOfRow } from '../../steps/outline.ts';
import type { Step } from '../../steps/step.ts';
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
  };
}

/** By stripe: which band of colour it lies in, from 1. */
export function colourBands({ plan }: Job): readonly number[] {
  let band = 0;
  return plan.stripes.map(({ yarn }, i) => {
    if (i === 0 || plan.stripes[i - 1]?.yarn !== yarn) band++;
    return band;
  });
}

function newestYarn(job: Job, { phase, act, row }: Step): string {
  const { cord, waste } = job.plan.brief;
  if (phase === 'cord') return cord.yarn;
  const strand = waste.ravel === 'loop' ? waste.yarn : ravelCord;
  if (phase === 'cast-on') return onRavelCord.has(act.kind) ? strand : waste.yarn;
  if (act.kind === 'waste-pass' || act.kind === 'weights-off') return waste.yarn;
  return row === 0 ? strand : yarnOfRow(job.outline, row);
}

const onRavelCord: ReadonlySet<string> = new Set(['ravel-pass', 'trim-ravel-cord', 'hang-weights']);

function wasteRowsOf(job: Job, { phase, act, row }: Step): number {
  const { brief } = job.plan;
  switch (act.kind) {
    case 'waste-pass':
      return act.number;
    case 'weights-off':
      return act.rehang ? rehangWasteRows(brief) : closingWasteRows(brief);
    case 'rehang':
      return rehangWasteRows(brief);
    case 'lay-ravel-cord':
      return brief.waste.rows;
    default:
      return (phase === 'cast-on' && onRavelCord.has(act.kind)) || (phase === 'stripes' && row === 0)
        ? brief.waste.rows + (brief.waste.ravel === 'loop' ? 1 : 0)
        : 0;
  }
}
