/**
 * Keeping a slip and making up for it, so that edges and stitches agree with the plan again from here on. Tools go in only
 * while the carriage is at home, clear of the needles (common practice); what is kept leaves a trace.
 */
import { opposite } from '../../bed/side.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import type { Mend, Trace } from '../mend.ts';
import { due, type Hand, handSteps, setIn, setOut } from './hands.ts';
import type { ShapingSlip } from './slip.ts';
import { followPlan, type Run } from './slipped-run.ts';

const traces: Readonly<Record<ShapingSlip, readonly Trace[]>> = {
  'increase-missing': ['step-in-leading-edge', 'eyelet-out-of-line'],
  'decrease-missing': ['step-in-trailing-edge'],
  'increase-doubled': ['extra-eyelet', 'step-in-leading-edge'],
  'decrease-doubled': ['step-in-trailing-edge', 'hole-at-trailing-edge'],
  'move-missing': ['step-in-leading-edge', 'step-in-trailing-edge', 'eyelet-out-of-line'],
  'move-doubled': ['step-in-leading-edge', 'extra-eyelet', 'step-in-trailing-edge', 'hole-at-trailing-edge'],
  'move-mirrored': [],
};

/** What makes up for a slip once rows have followed: the edges agree with the plan again from here on. */
function makeUpHands(job: Job, slip: ShapingSlip): readonly Hand[] {
  const { crawl, edgeStitches } = job.plan.brief;
  const trailing = opposite(crawl);
  const leadingIn: Hand = (bed) => setIn(bed, crawl, edgeStitches);
  const trailingOut: Hand = (bed) => setOut(bed, trailing, edgeStitches);
  switch (slip) {
    case 'increase-doubled':
      return [leadingIn];
    case 'decrease-doubled':
      return [trailingOut];
    case 'move-doubled':
      return [leadingIn, trailingOut];
    case 'move-mirrored':
      return [];
    default:
      return due(job, slip);
  }
}

/** Not with waste on the needles, not before the work comes off them, and not once the last row is knitted. */
export function makeUp(job: Job, slip: ShapingSlip, run: Run, done: number): Mend | null {
  const hands = makeUpHands(job, slip);
  const home = job.plan.brief.homeSide;
  const now = stepAt(job, done);
  if (hands.length === 0 || now.row >= job.plan.knittedRows) return null;
  const afterDone = now.after.carriage === home ? done : done + 1;
  const there = stepAt(job, afterDone);
  if (there.after.carriage !== home || rehangsAfter(job.outline, there.row)) return null;
  const bed = followPlan(job, run, done + 1, afterDone)?.bed;
  const steps = bed ? handSteps(bed, [], hands, there.row) : null;
  const opensHole = slip === 'increase-missing' || slip === 'move-missing';
  const wide = opensHole && stepAt(job, afterDone + 1).act.kind === 'increase';
  const shows = wide ? [...traces[slip], 'wide-hole' as const] : traces[slip];
  return steps && { how: 'make-up', afterDone, steps, thenDone: afterDone, shows };
}
