import { formatNeedle, parseNeedle } from '../../bed/needles.ts';
import type { Job } from '../../steps/job.ts';
import type { Place } from '../locate/locate.ts';
import type { Seen } from '../locate/seen.ts';
import type { Diagnosis } from './slip.ts';

/** What else an eye can tell once it knows where to look. */
export interface Look extends Seen {
  /** The outermost loop at the trailing edge hangs on nothing below it. */
  readonly looseEdgeLoop?: boolean | undefined;
}

export interface Suspect {
  /** What would have been seen without the slip. */
  readonly withoutSlip: Seen;
  /** The slip at a place that fits, if it can have happened there. */
  readonly at: (place: Place) => Diagnosis | null;
}

/** What most slips leave unsaid. */
export const unsaid = { number: null, rowsSince: 0, needle: null, yarn: null, usedYarn: null } as const;

/** What was seen agrees with a fact, or says nothing of it. */
export const agrees = <T>(seen: T | undefined, value: T): boolean => seen === undefined || seen === value;

export const onBed = (place: Place): boolean => place.looks.left !== null;

/** What was seen with each edge moved back along the crawl; null where an edge would leave the bed. */
export function shiftEdges(job: Job, seen: Seen, leading: number, trailing: number): Seen | null {
  const { crawl, bed } = job.plan.brief;
  const backwards = crawl === 'left' ? 1 : -1;
  const shifted: { left?: string | null; right?: string | null } = {};
  for (const side of ['left', 'right'] as const) {
    const name = seen[side];
    if (name === undefined || name === null) continue;
    const by = (side === crawl ? leading : trailing) * backwards;
    const place = (parseNeedle(bed.needles, name) ?? 0) + by;
    if (place < 0 || place >= bed.needles) return null;
    shifted[side] = formatNeedle(bed.needles, place);
  }
  return { ...seen, ...shifted };
}
