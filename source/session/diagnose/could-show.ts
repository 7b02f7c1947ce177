/** Whether what is seen can come of some slips: told by arithmetic, since most of what is supposed need not be carried out. */
import { parseNeedle } from '../../bed/needles.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import type { Fact, Look, Looks } from '../locate/seen.ts';
import { isShapingSlip, type ShapingSlip, type Slip } from '../mend/slip.ts';
import { coloursAt } from './colours.ts';
import { passesUpTo, passOfRow } from './slip-moment.ts';

type Shift = readonly [leading: number, trailing: number];

/** Needles that each edge is too far along the crawl; more than one where that depends on how the work went on. */
const shifts: Readonly<Record<ShapingSlip, readonly Shift[]>> = {
  'increase-missing': [[-1, 0]],
  'decrease-missing': [[0, -1]],
  'increase-doubled': [[1, 0]],
  'decrease-doubled': [[0, 1]],
  'move-missing': [[-1, -1]],
  'move-doubled': [[1, 1]],
  'move-mirrored': [[-2, -2]],
  'needle-left-working': [
    [0, 0],
    [0, -1],
  ],
  'needle-left-out-of-work': [[0, 0]],
};

/** Where `done` steps are confirmed: whether these slips could look so. Of the edges only once no move is half done. */
export function showingAt(job: Job, look: Look, done: number): (slips: readonly Slip[]) => boolean {
  const due = looksAt(job, done, placeIndex(job).bands);
  const hung = lastHung(job, done);
  const movesBefore = hung === 0 ? 0 : stepAt(job, hung).after.shapings;
  const off = edgesOff(job, look, done);
  const coloursCouldShow = coloursAt(job, done);
  return (slips) =>
    slips.some(({ is }) => is.startsWith('rehang') || is === 'work-dropped') ||
    ((off === null || edgesCouldShow(off, movesBefore, slips)) &&
      rowsCouldShow(job, look, due, hung, slips) &&
      coloursCouldShow(look, slips));
}

/** How far along the crawl each edge is beyond where it is due; null where that tells nothing. */
function edgesOff(job: Job, look: Look, done: number): Shift | null {
  const step = stepAt(job, Math.max(1, done));
  if (step.act.kind === 'increase' || !look.left || !look.right) return null;
  const { crawl, bed } = job.plan.brief;
  const along = crawl === 'left' ? -1 : 1;
  const place = (name: string | null): number => parseNeedle(bed.needles, name ?? '') ?? 0;
  const off = (side: 'left' | 'right'): number =>
    (place(look[side] ?? null) - place(step.after[side])) * along;
  return [off(crawl), off(crawl === 'left' ? 'right' : 'left')];
}

/** What was shaped before the work was hung last does not show in its edges any more. */
function edgesCouldShow(off: Shift, movesBefore: number, slips: readonly Slip[]): boolean {
  let sums: readonly Shift[] = [[0, 0]];
  for (const slip of slips) {
    if (!isShapingSlip(slip) || slip.move <= movesBefore) continue;
    sums = sums.flatMap(([a, b]) => shifts[slip.is].map(([c, d]) => [a + c, b + d] as const));
  }
  return sums.some(([leading, trailing]) => leading === off[0] && trailing === off[1]);
}

const ofRows: readonly Fact[] = [
  'rowCounter',
  'carriage',
  'lastColour',
  'feeder',
  'rowsOfColour',
  'stripesCounted',
];
const ofYarns: ReadonlySet<Fact> = new Set(['lastColour', 'feeder', 'rowsOfColour', 'stripesCounted']);

/** Whether counter, carriage and colours can come of these slips; what was knitted before `hung` does not show in them. */
function rowsCouldShow(job: Job, look: Look, due: Looks, hung: number, slips: readonly Slip[]): boolean {
  const more = slips.reduce((sum, slip) => {
    if (slip.is === 'rows-too-many') return slip.step > hung ? sum + slip.rows : sum;
    if (slip.is !== 'rows-too-few') return sum;
    return sum - passesUpTo(job, slip.step, slip.rows).filter((step) => step > hung).length;
  }, 0);
  const hasRows = slips.some(({ is }) => is.startsWith('rows'));
  const hasYarns = slips.some((slip) => 'used' in slip);
  return ofRows.every((fact) => {
    const seen = look[fact];
    if (seen === undefined) return true;
    if (fact === 'rowCounter') return seen === due.rowCounter + more;
    if (fact === 'carriage') {
      const crosses = (more % 2 !== 0) !== slips.some(({ is }) => is === 'carriage-wrong-side');
      return (seen !== due.carriage) === crosses;
    }
    if (fact === 'feeder' && slips.some(({ is }) => is === 'wrong-yarn-in-feeder')) return true;
    return (ofYarns.has(fact) && (hasRows || hasYarns)) || seen === due[fact];
  });
}

/** Rows further back than this are not suspected: those that ten moves take where one comes every second row. */
export const farRows = 24;
/** Moves likewise: of the last ten, and of the one that is made now. */
export const farMoves = 11;

/** The step that hung the work last, and set carriage and counter again. */
function lastHung(job: Job, done: number): number {
  const now = rowAt(job, done);
  const rows = Math.max(farRows, farMoves * job.plan.brief.shapeEveryRows);
  for (let row = now; row > 0 && row > now - rows; row--) {
    if (!rehangsAfter(job.outline, row)) continue;
    let step = passOfRow(job, row) + 1;
    while (step < job.stepCount && stepAt(job, step).act.kind !== 'release-waste') step++;
    if (step <= done) return step;
  }
  return 0;
}
