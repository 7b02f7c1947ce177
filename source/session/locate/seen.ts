import type { Side } from '../../bed/bed.ts';
import { formatNeedle, parseNeedle } from '../../bed/needles.ts';
import { ravelCord } from '../../planning/brief.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Job } from '../../steps/job.ts';

/** Everything about a place that can be seen at the bench. */
export interface Looks {
  /** Outermost needles that hold loops; null on an empty bed. */
  readonly left: string | null;
  readonly right: string | null;
  readonly carriage: Side;
  /** The yarn of the newest loops on the needles. */
  readonly lastColour: string | null;
  readonly feeder: string | null;
  /** Needles that hold a loop; a doubled needle counts once. */
  readonly stitches: number;
  /** Waste rows hanging below the needles, knitted since the last row of the bag. */
  readonly wasteRows: number;
  /** Stripes begun, as they can be counted on the work: neighbours of one colour read as one. */
  readonly stripesCounted: number;
  /** Rows of the bag knitted. */
  readonly rowCounter: number;
  /** Rows of the newest of the bag's colours, from the needles down to the colour before it. */
  readonly rowsOfColour: number;
  /** Of what is made in several pieces, those that are off the needles: sections of the hem at the hem, cords at the cord. */
  readonly piecesDone: number;
}

export type Fact = keyof Looks;

/** The facts by how easily they are seen, easiest first: the order in which equally telling questions are asked. */
export const facts = [
  'carriage',
  'lastColour',
  'feeder',
  'left',
  'right',
  'stitches',
  'wasteRows',
  'rowsOfColour',
  'rowCounter',
  'stripesCounted',
  'piecesDone',
] as const satisfies readonly Fact[];

/** As much of it as the maker knows; what is left out is unknown, and null says that there is nothing. */
export type Seen = { readonly [F in Fact]?: Looks[F] | undefined };

/** What else an eye can tell once it knows where to look. */
export interface Look extends Seen {
  /** The outermost loop at the trailing edge hangs on nothing below it. */
  readonly looseEdgeLoop?: boolean | undefined;
  /** The work was taken off and hung again where the plan has that last, wherever it hangs. */
  readonly rehung?: boolean | undefined;
  /** Rows too many at a shaping move lie before it, not after it. */
  readonly beforeMove?: boolean | undefined;
  /** Which edge steps at the place that was named first. */
  readonly edgeStep?: 'leading' | 'trailing' | undefined;
  /** Somewhere along an edge a column of stitches begins on nothing. */
  readonly strayColumn?: boolean | undefined;
}

/** What can be seen of any place, whatever went wrong. */
export const plainly = ({
  looseEdgeLoop: _,
  rehung: __,
  strayColumn: ___,
  beforeMove: ____,
  edgeStep: _____,
  ...seen
}: Look): Seen => seen;

export type SeenFault =
  | { readonly code: 'seen/needle-off-bed'; readonly needle: string; readonly needleCount: number }
  | { readonly code: 'seen/unknown-yarn'; readonly yarn: string; readonly known: readonly string[] }
  | { readonly code: 'seen/not-a-count'; readonly fact: Fact; readonly value: number };

/** All yarns that can hang on the needles of a job. */
export const yarnsSeen = ({ plan }: Job): readonly string[] => [
  ...new Set([...plan.brief.yarns.keys(), plan.brief.waste.yarn, ravelCord]),
];

/** What was seen with its needle names spelt as the program spells them, or the first thing that cannot be. */
export function checkSeen(job: Job, seen: Seen): Result<Seen, SeenFault> {
  const needleCount = job.plan.brief.bed.needles;
  const known = yarnsSeen(job);
  const checked: { -readonly [F in keyof Seen]: Seen[F] } = { ...seen };
  for (const edge of ['left', 'right'] as const) {
    const needle = seen[edge];
    if (needle === undefined || needle === null) continue;
    const place = parseNeedle(needleCount, needle);
    if (place === null) return fail({ code: 'seen/needle-off-bed', needle, needleCount });
    checked[edge] = formatNeedle(needleCount, place);
  }
  for (const fact of ['lastColour', 'feeder'] as const) {
    const yarn = seen[fact];
    if (yarn !== undefined && yarn !== null && !known.includes(yarn)) {
      return fail({ code: 'seen/unknown-yarn', yarn, known });
    }
  }
  for (const fact of [
    'stitches',
    'wasteRows',
    'stripesCounted',
    'rowCounter',
    'rowsOfColour',
    'piecesDone',
  ] as const) {
    const value = seen[fact];
    if (value !== undefined && !(Number.isInteger(value) && value >= 0)) {
      return fail({ code: 'seen/not-a-count', fact, value });
    }
  }
  return succeed(checked);
}
