import { parseNeedle } from '../../bed/needles.ts';
import { opposite } from '../../bed/side.ts';
import { edgesAt } from '../../planning/hangings.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { BedAfter } from '../../steps/step.ts';
import type { ShapingState } from './slip.ts';

export interface ShapingMoment {
  /** The last shaping move begun, from 1. */
  readonly number: number;
  readonly state: ShapingState;
}

/** The last shaping move made on the needles that the work now hangs on; null where there is none. */
export function shapingMoment(job: Job, done: number): ShapingMoment | null {
  if (done === 0) return null;
  const { act, after, phase } = stepAt(job, done);
  if ((phase !== 'stripes' && phase !== 'closing-row') || after.left === null) return null;
  if (act.kind === 'increase') return { number: act.number, state: 'increased' };
  if (!hasCrawled(job, after)) return null;
  return {
    number: after.shapings,
    state: after.stitches < job.plan.stitches ? 'decreased' : 'passed',
  };
}

/** The trailing edge tells which hanging the work is in, and whether a move has been made since it was hung there. */
function hasCrawled({ plan }: Job, after: BedAfter): boolean {
  const { crawl, bed } = plan.brief;
  const trailing = opposite(crawl);
  const edge = parseNeedle(bed.needles, after[trailing] ?? '');
  const hanging = plan.hangings.findLast(
    (one) => one.shapingsBefore <= after.shapings && edgesAt(one, after.shapings, crawl)[trailing] === edge,
  );
  return hanging !== undefined && after.shapings > hanging.shapingsBefore;
}

/**
 * The moves at which a slip may still show: the last one, and while only its increase is made also the one before, for a
 * slip at the other edge.
 */
export function slipMoments(job: Job, done: number): readonly ShapingMoment[] {
  const moment = shapingMoment(job, done);
  if (!moment) return [];
  if (moment.state !== 'increased' || !hasCrawled(job, stepAt(job, done).after)) return [moment];
  return [moment, { number: moment.number - 1, state: 'passed' }];
}
