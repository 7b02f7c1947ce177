import { parseNeedle } from '../../bed/needles.ts';
import { opposite } from '../../bed/side.ts';
import { type Job, stepAt } from '../../steps/job.ts';
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

/** Every hanging is hung on the same needles, so the trailing edge tells whether a move has been made since. */
function hasCrawled(
  { plan }: Job,
  after: { readonly left: string | null; readonly right: string | null },
): boolean {
  const trailing = opposite(plan.brief.crawl);
  const hung = trailing === 'left' ? plan.hangings[0]?.hungLeft : plan.hangings[0]?.hungRight;
  return parseNeedle(plan.brief.bed.needles, after[trailing] ?? '') !== hung;
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
