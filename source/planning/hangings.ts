/**
 * Where the work hangs on the bed, row by row. It starts at the trailing end and crawls one needle a shaping move;
 * when the bed runs out it is scrapped off and hung again at the trailing end: after a finished stripe where one is
 * in reach, else after any row that ends at home, and always before the shaping move of that row (common practice).
 */
import type { Side } from '../bed/side.ts';
import type { Brief } from './brief.ts';
import type { Counts } from './geometry.ts';
import { shapingsIn } from './geometry.ts';
import type { KnittedStripe } from './stripe-sequence.ts';

/** One stay on the bed. Edges are needle places: 0 is the far left. */
export interface Hanging {
  readonly fromRow: number;
  readonly throughRow: number;
  /** Shaping moves done before the work was hung here. */
  readonly shapingsBefore: number;
  /** Edges as the work is hung, before any move in this hanging. */
  readonly hungLeft: number;
  readonly hungRight: number;
}

/** Needles that the carriage can pass clear of at both ends. */
export const usableNeedles = ({ bed }: Brief): number => bed.needles - 2 * bed.marginNeedles;

/** Shaping moves done when `row` is about to be knitted. */
export const shapingsBefore = (row: number, shapeEveryRows: number): number =>
  Math.floor((row - 1) / shapeEveryRows);

/** Edge needles of a hanging once `shapings` moves are done in all. */
export function edgesAt(
  hanging: Hanging,
  shapings: number,
  crawl: Side,
): { readonly left: number; readonly right: number } {
  const shift = (shapings - hanging.shapingsBefore) * (crawl === 'left' ? -1 : 1);
  return { left: hanging.hungLeft + shift, right: hanging.hungRight + shift };
}

/** Hangings in order; needs at least one needle of room to crawl (`stitches` < usable needles). */
export function planHangings(
  brief: Brief,
  counts: Counts,
  stripes: readonly KnittedStripe[],
): readonly Hanging[] {
  const room = usableNeedles(brief) - counts.stitches;
  const shapings = shapingsIn(counts);
  const hangings: Hanging[] = [];
  let hungAfterRow = 0;
  let done = 0;
  while (shapings - done > room) {
    const throughRow = reseatRow(stripes, counts.shapeEveryRows, hungAfterRow, done, room);
    hangings.push(hang(brief, counts, hungAfterRow + 1, throughRow, done));
    hungAfterRow = throughRow;
    done = shapingsBefore(throughRow, counts.shapeEveryRows);
  }
  return [...hangings, hang(brief, counts, hungAfterRow + 1, counts.rows - 1, done)];
}

/** The last row of a stay: the latest stripe end in reach that follows at least one move, else the last row in reach. */
function reseatRow(
  stripes: readonly KnittedStripe[],
  shapeEveryRows: number,
  hungAfterRow: number,
  done: number,
  room: number,
): number {
  const lastRow = (done + room + 1) * shapeEveryRows;
  const stripeEnd = stripes.findLast((stripe) => stripe.lastRow <= lastRow)?.lastRow ?? 0;
  const useful = stripeEnd > hungAfterRow && shapingsBefore(stripeEnd, shapeEveryRows) > done;
  return useful ? stripeEnd : lastRow;
}

function hang(
  { bed, crawl }: Brief,
  { stitches }: Counts,
  fromRow: number,
  throughRow: number,
  done: number,
): Hanging {
  const hungLeft = crawl === 'left' ? bed.needles - bed.marginNeedles - stitches : bed.marginNeedles;
  return { fromRow, throughRow, shapingsBefore: done, hungLeft, hungRight: hungLeft + stitches - 1 };
}
