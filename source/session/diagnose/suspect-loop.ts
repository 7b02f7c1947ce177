import { formatNeedle, parseNeedle } from '../../bed/needles.ts';
import { opposite } from '../../bed/side.ts';
import type { Job } from '../../steps/job.ts';
import type { Place } from '../locate/locate.ts';
import type { Seen } from '../locate/seen.ts';
import { shapingMoment } from './shaping-moment.ts';
import type { Diagnosis } from './slip.ts';
import { agrees, type Look, onBed, type Suspect, shiftEdges, unsaid } from './suspect.ts';

/** A resting needle left working at the trailing edge has taken a loop of its own. */
export function strayLoop(job: Job, seen: Look): readonly Suspect[] {
  const needle = seen[opposite(job.plan.brief.crawl)];
  const shifted = shiftEdges(job, seen, 0, -1);
  if (!needle || !shifted || seen.looseEdgeLoop === false) return [];
  const at = (place: Place): Diagnosis | null => {
    const moment = shapingMoment(job, place.done);
    if (moment?.state !== 'passed' || !agrees(seen.stitches, place.looks.stitches + 1)) return null;
    const { done } = place;
    const row = moment.number * job.plan.brief.shapeEveryRows;
    const step = { moves: [{ undo: 'stray', needle } as const], row: place.looks.rowCounter };
    return {
      ...unsaid,
      slip: 'needle-left-working',
      place,
      number: moment.number,
      row,
      rowsSince: place.looks.rowCounter - row,
      needle,
      mends: [
        {
          how: 'now',
          afterDone: done,
          steps: [{ ...step, turnsCounterBack: false }],
          thenDone: done,
          shows: [],
        },
      ],
    };
  };
  return [{ withoutSlip: { ...shifted, stitches: undefined }, at }];
}

/** One loop too few between edges that are right: the eyelet's needle was left resting, or a stitch has dropped. */
export function missingLoop(job: Job, seen: Seen): readonly Suspect[] {
  if (seen.stitches === undefined) return [];
  const withoutSlip = { ...seen, stitches: undefined };
  const restingEyelet = (place: Place): Diagnosis | null => {
    const moment = shapingMoment(job, place.done);
    if (moment?.state !== 'passed' || seen.stitches !== place.looks.stitches - 1) return null;
    const { done } = place;
    const row = moment.number * job.plan.brief.shapeEveryRows;
    const needle = eyeletNeedle(job, place);
    const moves = [{ move: 'work', needles: [needle] } as const];
    const steps = [{ moves, row: place.looks.rowCounter, turnsCounterBack: false }];
    return {
      ...unsaid,
      slip: 'needle-left-resting',
      place,
      number: moment.number,
      row,
      rowsSince: place.looks.rowCounter - row,
      needle,
      mends: [{ how: 'make-up', afterDone: done, steps, thenDone: done, shows: ['eyelet-out-of-line'] }],
    };
  };
  const dropped = (place: Place): Diagnosis | null =>
    onBed(place) && seen.stitches === place.looks.stitches - 1
      ? { ...unsaid, slip: 'stitch-dropped', place, row: place.looks.rowCounter, mends: [] }
      : null;
  return [
    { withoutSlip, at: restingEyelet },
    { withoutSlip, at: dropped },
  ];
}

/** The needle that the last increase uncovered: as far in from the leading edge as stitches move together. */
function eyeletNeedle(job: Job, { looks }: Place): string {
  const { crawl, bed, edgeStitches } = job.plan.brief;
  const edge = parseNeedle(bed.needles, looks[crawl] ?? '') ?? 0;
  return formatNeedle(bed.needles, edge + (crawl === 'left' ? edgeStitches : -edgeStitches));
}
