/**
 * What goes wrong at the bench, and what the bed shows of it. Leading edge one ahead of the trailing edge: the decrease of
 * the last move is missing; trailing ahead of leading: the increase is; a loop too many at the trailing edge: a needle
 * that should rest was left working (common practice).
 */

import type { Place } from '../locate/locate.ts';
import type { Mend } from '../mend.ts';

export type ShapingSlip =
  | 'increase-missing'
  | 'decrease-missing'
  | 'increase-doubled'
  | 'decrease-doubled'
  | 'move-missing'
  | 'move-doubled'
  /** Increased at the trailing edge and decreased at the leading one: left and right swapped. */
  | 'move-mirrored';

export type Slip =
  | ShapingSlip
  | 'needle-left-working'
  | 'needle-left-resting'
  | 'stitch-dropped'
  | 'carriage-wrong-side'
  | 'wrong-yarn-in-feeder'
  /** The yarn was not changed: two stripes of one colour. */
  | 'stripe-not-changed'
  | 'parked-yarn-used'
  /** What was read off the bed fits once left and right change places. */
  | 'sides-swapped';

export interface Diagnosis {
  readonly slip: Slip;
  /** Where the work is, but for the slip. */
  readonly place: Place;
  /** The shaping move it happened at, from 1. */
  readonly number: number | null;
  /** Rows knitted when it happened, and since. */
  readonly row: number;
  readonly rowsSince: number;
  readonly needle: string | null;
  /** The yarn that should have been used, and the one that was. */
  readonly yarn: string | null;
  readonly usedYarn: string | null;
  /** Ways to set it right, the best first; none where only the reading was wrong. */
  readonly mends: readonly Mend[];
}

/** Since its move: only the increase is due, the whole move is made, or a pass has followed. */
export type ShapingState = 'increased' | 'decreased' | 'passed';

interface SlipMark {
  /** Needles each edge is too far along the crawl. */
  readonly leading: number;
  readonly trailing: number;
  /** Needles with loops too many; null where the slip cannot be seen in that state. */
  readonly stitches: Readonly<Record<ShapingState, number | null>>;
}

const mark = (
  leading: number,
  trailing: number,
  increased: number | null,
  decreased: number,
  passed: number,
): SlipMark => ({ leading, trailing, stitches: { increased, decreased, passed } });

export const slipMarks: Readonly<Record<ShapingSlip, SlipMark>> = {
  'increase-missing': mark(-1, 0, 0, 0, -1),
  'decrease-missing': mark(0, -1, null, 1, 1),
  'increase-doubled': mark(1, 0, 0, 0, 1),
  'decrease-doubled': mark(0, 1, null, -1, -1),
  'move-missing': mark(-1, -1, null, 1, 0),
  'move-doubled': mark(1, 1, null, -1, 0),
  'move-mirrored': mark(-2, -2, null, 0, 0),
};

export const shapingSlips = Object.keys(slipMarks) as readonly ShapingSlip[];

/** Every slip by its name, as a log may hold it. */
export const slips: readonly Slip[] = [
  ...shapingSlips,
  'needle-left-working',
  'needle-left-resting',
  'stitch-dropped',
  'carriage-wrong-side',
  'wrong-yarn-in-feeder',
  'stripe-not-changed',
  'parked-yarn-used',
  'sides-swapped',
];
