import { type Job, stepAt } from '../../steps/job.ts';
import type { Place } from '../locate/locate.ts';
import type { Seen } from '../locate/seen.ts';
import { borrowedRun, mendFeeder, mendRows, unchangedRun } from './mend-yarn.ts';
import type { Diagnosis } from './slip.ts';
import { agrees, onBed, type Suspect, unsaid } from './suspect.ts';

/** The wrong yarn in the feeder, or none, before anything is knitted with it. */
export function wrongFeeder(job: Job, seen: Seen): readonly Suspect[] {
  const held = seen.feeder;
  if (held === undefined) return [];
  const at = (place: Place): Diagnosis | null => {
    const { feeder, rowCounter } = place.looks;
    if (!onBed(place) || feeder === null || feeder === held) return null;
    const mends = mendFeeder(job, held, place.done);
    return {
      ...unsaid,
      slip: 'wrong-yarn-in-feeder',
      place,
      row: rowCounter,
      yarn: feeder,
      usedYarn: held,
      mends,
    };
  };
  return [{ withoutSlip: { ...seen, feeder: undefined }, at }];
}

/** The last row is in the colour of another stripe. */
export function wrongColour(job: Job, seen: Seen): readonly Suspect[] {
  const used = seen.lastColour;
  if (!used || !job.plan.brief.yarns.has(used)) return [];
  const withoutSlip = { ...seen, lastColour: undefined, feeder: undefined, stripesCounted: undefined };
  return [
    { withoutSlip, at: (place) => unchangedStripe(job, seen, used, place) },
    { withoutSlip, at: (place) => borrowedYarn(job, seen, used, place) },
  ];
}

interface RowOfStripe {
  readonly due: string;
  readonly firstRow: number;
  readonly before: string | null;
  readonly row: number;
}

/** The row that hangs on the needles, where it is one of the bag's and not in `used` by plan. */
function wrongRow(job: Job, seen: Seen, used: string, { done, looks }: Place): RowOfStripe | null {
  const row = looks.rowCounter;
  const stripe = job.outline.stripeOfRow[row] ?? 0;
  const { yarn: due, firstRow } = job.plan.stripes[stripe] ?? {};
  if (done === 0 || looks.left === null || row === 0 || due === undefined || firstRow === undefined)
    return null;
  if (looks.lastColour !== due || due === used) return null;
  const feeder = looks.feeder === due ? used : looks.feeder;
  if (!agrees(seen.feeder, feeder)) return null;
  return { due, firstRow, before: job.plan.stripes[stripe - 1]?.yarn ?? null, row };
}

function unchangedStripe(job: Job, seen: Seen, used: string, place: Place): Diagnosis | null {
  const wrong = wrongRow(job, seen, used, place);
  if (wrong?.before !== used || !agrees(seen.stripesCounted, place.looks.stripesCounted - 1)) return null;
  const run = unchangedRun(job, wrong.firstRow, used, place.done);
  return {
    ...unsaid,
    slip: 'stripe-not-changed',
    place,
    row: wrong.firstRow - 1,
    rowsSince: wrong.row - wrong.firstRow + 1,
    yarn: wrong.due,
    usedYarn: used,
    mends: mendRows(job, run, used, place.done),
  };
}

function borrowedYarn(job: Job, seen: Seen, used: string, place: Place): Diagnosis | null {
  const wrong = wrongRow(job, seen, used, place);
  if (!wrong) return null;
  const startsStripe = wrong.row === wrong.firstRow;
  if (startsStripe && wrong.before === used) return null;
  const bands = place.looks.stripesCounted + (startsStripe ? 0 : 1);
  if (!agrees(seen.stripesCounted, bands)) return null;
  const run = borrowedRun(job, passOf(job, place.done), used, place.done);
  return {
    ...unsaid,
    slip: 'parked-yarn-used',
    place,
    row: wrong.row - 1,
    rowsSince: 1,
    yarn: wrong.due,
    usedYarn: used,
    mends: mendRows(job, run, used, place.done),
  };
}

/** Steps confirmed when the last pass was made. */
function passOf(job: Job, done: number): number {
  let at = done;
  while (at > 1 && !/^(closing-)?pass$/.test(stepAt(job, at).act.kind)) at--;
  return at;
}
