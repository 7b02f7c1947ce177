import { opposite } from '../../bed/side.ts';
import type { Job } from '../../steps/job.ts';
import type { Seen } from '../locate/seen.ts';
import { mendShaping } from './mend-shaping.ts';
import { slipMoments } from './shaping-moment.ts';
import { type ShapingSlip, slipMarks } from './slip.ts';
import { agrees, type Look, type Suspect, shiftEdges, unsaid } from './suspect.ts';

/** A shaping move made wrong: its edges are out of step with the plan. Null where that cannot be seen. */
export function shapingSuspect(job: Job, seen: Look, slip: ShapingSlip): Suspect | null {
  const { leading, trailing, stitches } = slipMarks[slip];
  if (!seesEdges(job, seen, leading, trailing)) return null;
  const shifted = shiftEdges(job, seen, leading, trailing);
  if (!shifted) return null;
  return {
    withoutSlip: { ...shifted, stitches: undefined },
    at: (place) => {
      for (const { number, state } of slipMoments(job, place.done)) {
        const tooMany = stitches[state];
        if (tooMany === null || !agrees(seen.stitches, place.looks.stitches + tooMany)) continue;
        if (slip === 'decrease-missing' && state === 'passed' && seen.looseEdgeLoop) continue;
        const mends = mendShaping(job, slip, number, place.done);
        if (!mends) continue;
        const row = number * job.plan.brief.shapeEveryRows;
        return { ...unsaid, slip, place, number, row, rowsSince: place.looks.rowCounter - row, mends };
      }
      return null;
    },
  };
}

/** An edge that a slip moves must have been seen, or anything could be behind it. */
function seesEdges(job: Job, seen: Seen, leading: number, trailing: number): boolean {
  const { crawl } = job.plan.brief;
  return (leading === 0 || Boolean(seen[crawl])) && (trailing === 0 || Boolean(seen[opposite(crawl)]));
}
