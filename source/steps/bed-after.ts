/** The bed at a moment of the job, by formula: nothing is simulated here. */
import { opposite, type Side } from '../bed/bed.ts';
import { edgesAt, type Hanging, isShapedAfter, shapingsBefore } from '../planning/hangings.ts';
import { type Outline, rehangsAfter, yarnOfRow } from './outline.ts';
import type { BedAfter } from './step.ts';

const nothingParked: ReadonlyMap<string, Side> = new Map();

/** What the row counter shows after so many passes since it was set; null on a bed that has none. */
export const counterAt = ({ plan }: Outline, passes: number): number | null =>
  plan.brief.bed.without.includes('counter') ? null : passes;

/** The bed without loops, once the work is off. */
export const bareBed = (outline: Outline, carriage: Side, counter: number | null): BedAfter => ({
  left: null,
  right: null,
  stitches: 0,
  carriage,
  feeder: null,
  parked: nothingParked,
  counter,
  shapings: outline.plan.shapings,
});

export const hangingOf = ({ plan, hangingOfRow }: Outline, row: number): Hanging =>
  plan.hangings[hangingOfRow[row] ?? 0] as Hanging;

/** Where the carriage waits once `row` rows are knitted: at home after an even count. */
export function carriageAfter({ plan }: Outline, row: number): Side {
  const home = plan.brief.homeSide;
  return row % 2 === 0 ? home : opposite(home);
}

/** Yarns that wait at their own end while `feeder` knits: used before `row` is over, and needed after it. */
export function parkedDuring(
  { yarnSpans }: Outline,
  row: number,
  feeder: string | null,
): ReadonlyMap<string, Side> {
  const parked = new Map<string, Side>();
  for (const span of yarnSpans) {
    if (span.yarn !== feeder && span.firstRow <= row && span.lastRow > row) parked.set(span.yarn, span.end);
  }
  return parked;
}

interface BedMoment {
  readonly hanging: Hanging;
  /** Rows knitted. */
  readonly row: number;
  readonly shapings: number;
  readonly feeder: string | null;
  readonly parked: ReadonlyMap<string, Side>;
  /** Stitches fewer than N: one after a decrease, until the next pass fills the eyelet needle. */
  readonly doubled?: boolean;
  /** The leading edge is one ahead: the increase is made and the decrease is not. */
  readonly increased?: boolean;
  readonly carriage?: Side;
  /** Where waste rows have turned it on beyond the bag's own. */
  readonly counter?: number | null;
}

export function bedAt(outline: Outline, moment: BedMoment): BedAfter {
  const { plan, needles } = outline;
  const { left, right } = edgesAt(moment.hanging, moment.shapings, plan.brief.crawl);
  const ahead = moment.increased ? 1 : 0;
  const leadsLeft = plan.brief.crawl === 'left';
  return {
    left: needles[left - (leadsLeft ? ahead : 0)] ?? null,
    right: needles[right + (leadsLeft ? 0 : ahead)] ?? null,
    stitches: plan.stitches - (moment.doubled ? 1 : 0),
    carriage: moment.carriage ?? carriageAfter(outline, moment.row),
    feeder: moment.feeder,
    parked: moment.parked,
    counter: moment.counter === undefined ? counterAt(outline, moment.row) : moment.counter,
    shapings: moment.shapings,
  };
}

/** The bed before the pass of `row`, its shaping moves made; `threaded` once its own yarn is in the feeder. */
export function bedBeforePass(outline: Outline, row: number, threaded: boolean): BedAfter {
  const feeder = threaded
    ? yarnOfRow(outline, row)
    : rehangsAfter(outline, row - 1)
      ? null
      : yarnOfRow(outline, row - 1);
  return bedAt(outline, {
    hanging: hangingOf(outline, row),
    row: row - 1,
    shapings: shapingsBefore(row, outline.plan.brief.shapeEveryRows),
    feeder,
    parked: parkedDuring(outline, threaded ? row : row - 1, feeder),
    doubled: isShapedAfter(outline.plan, row - 1),
  });
}
