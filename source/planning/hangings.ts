/**
 * Where the work hangs on the bed, row by row. It starts near the trailing end and crawls one needle a shaping move; when
 * the bed runs out it is scrapped off and hung again. Fewest hangings come first, ⌈K / (usable − N)⌉; then each follows a
 * finished stripe where one is in reach, else any row that ends at home, and always comes before the shaping move of that
 * row. The needles that one hanging covers stand about the middle of the bed, where the mast feeds evenly and the carriage
 * clears the work at both sides, unless the maker wants them from the trailing end (common practice, no source).
 */
import type { Side } from '../bed/bed.ts';
import type { Brief } from './brief.ts';
import { type Counts, shapingsIn } from './geometry.ts';
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

/** Each hanging leaves room for as many moves as it has needles beyond the stitches, which must be one at least. */
export const fewestHangings = (brief: Brief, counts: Counts): number =>
  Math.max(1, Math.ceil(shapingsIn(counts) / (usableNeedles(brief) - counts.stitches)));

/** Shaping moves done when `row` is about to be knitted. */
export const shapingsBefore = (row: number, shapeEveryRows: number): number =>
  Math.floor((row - 1) / shapeEveryRows);

/** The rows of a plan and how they hang, as far as edges follow from them. */
interface Hung {
  readonly brief: Pick<Brief, 'crawl' | 'shapeEveryRows'>;
  readonly knittedRows: number;
  readonly hangings: readonly Hanging[];
}

/** A shaping move follows `row`; none follows the last one that is knitted. */
export const isShapedAfter = ({ brief, knittedRows }: Omit<Hung, 'hangings'>, row: number): boolean =>
  row > 0 && row < knittedRows && row % brief.shapeEveryRows === 0;

/** Edge needles while `row` is knitted, the shaping moves before it made. */
export function edgesOfRow(
  { brief, knittedRows, hangings }: Hung,
  row: number,
): { readonly left: number; readonly right: number } {
  const within = Math.min(Math.max(1, row), knittedRows);
  const hanging = hangings.find((one) => one.throughRow >= within);
  if (!hanging) throw new Error('a plan hangs every row that is knitted');
  return edgesAt(hanging, shapingsBefore(within, brief.shapeEveryRows), brief.crawl);
}

/** Edge needles of a hanging once `shapings` moves are done in all. */
export function edgesAt(
  hanging: Hanging,
  shapings: number,
  crawl: Side,
): { readonly left: number; readonly right: number } {
  const shift = (shapings - hanging.shapingsBefore) * (crawl === 'left' ? -1 : 1);
  return { left: hanging.hungLeft + shift, right: hanging.hungRight + shift };
}

/** Work on the needles: the hangings so far, the last of which it hangs in, and the rows knitted. */
export interface Begun {
  readonly hangings: readonly Hanging[];
  readonly row: number;
}

/** Hangings in order; needs at least one needle of room to crawl (`stitches` < usable needles). */
export function planHangings(
  brief: Brief,
  counts: Counts,
  stripes: readonly KnittedStripe[],
  begun: Begun | null = null,
): readonly Hanging[] {
  const before = begun?.hangings.slice(0, -1) ?? [];
  const current = begun?.hangings.at(-1) ?? null;
  const room = usableNeedles(brief) - counts.stitches;
  const shapings = shapingsIn(counts);
  let done = current?.shapingsBefore ?? 0;
  let fromRow = current?.fromRow ?? 1;
  let ownRoom = current ? roomAhead(brief, current) : room;
  const hangings: Hanging[] = [...before];
  const add = (throughRow: number, next: number): void => {
    const hungLeft =
      hangings.length === before.length && current
        ? current.hungLeft
        : hungLeftFor(brief, counts.stitches, next - done);
    const hungRight = hungLeft + counts.stitches - 1;
    hangings.push({ fromRow, throughRow, shapingsBefore: done, hungLeft, hungRight });
  };
  while (shapings - done > ownRoom) {
    const later = Math.ceil((shapings - done - ownRoom) / room);
    const throughRow = rehangRow(stripes, counts.shapeEveryRows, {
      afterRow: Math.max(fromRow - 1, hangings.length === before.length ? (begun?.row ?? 0) : 0),
      done,
      most: done + ownRoom,
      least: shapings - later * room,
    });
    const next = shapingsBefore(throughRow, counts.shapeEveryRows);
    add(throughRow, next);
    [done, fromRow, ownRoom] = [next, throughRow + 1, room];
  }
  add(counts.rows - 1, shapings);
  return hangings;
}

/** Moves that a hanging has needles for. */
const roomAhead = ({ bed, crawl }: Brief, { hungLeft, hungRight }: Hanging): number =>
  crawl === 'left' ? hungLeft - bed.marginNeedles : bed.needles - bed.marginNeedles - 1 - hungRight;

/**
 * The last row of a stay. As few hangings as can be come first, so that at least `least` moves are done by then; among such
 * rows the latest stripe end that follows a move, else the last row that the bed has room for.
 */
function rehangRow(
  stripes: readonly KnittedStripe[],
  shapeEveryRows: number,
  {
    afterRow,
    done,
    most,
    least,
  }: { readonly afterRow: number; readonly done: number; readonly most: number; readonly least: number },
): number {
  const lastRow = (most + 1) * shapeEveryRows;
  const stripeEnd = stripes.findLast((stripe) => stripe.lastRow <= lastRow)?.lastRow ?? 0;
  const moves = shapingsBefore(stripeEnd, shapeEveryRows);
  const useful = stripeEnd > afterRow && moves > done && moves >= least;
  return useful ? stripeEnd : lastRow;
}

/** The left edge needle where work of so many stitches is hung that will crawl by `moves` needles. */
function hungLeftFor({ bed, crawl }: Brief, stitches: number, moves: number): number {
  const { needles, marginNeedles, place } = bed;
  const covered = stitches + moves;
  const trailing = crawl === 'left' ? needles - marginNeedles - covered : marginNeedles;
  const leftmost = place === 'centre' ? Math.floor((needles - covered) / 2) : trailing;
  return crawl === 'left' ? leftmost + moves : leftmost;
}
