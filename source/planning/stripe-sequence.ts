/**
 * The stripes as they are knitted, one after another, and orders that are not simply taken in turn. A stripe has an even
 * number of rows so that every yarn waits on the home side; the last row of the last stripe is the graft (common practice).
 * Each order fills the whole way round the tube as one repeat, and joins: the last stripe differs from the first.
 */
import { labOf, linear, parseColour } from '../shared/colour.ts';
import type { Stripe } from './brief.ts';

export interface KnittedStripe extends Stripe {
  /** Counted from 1. */
  readonly number: number;
  readonly firstRow: number;
  /** The grafted row of the last stripe included. */
  readonly lastRow: number;
}

/** The repeat laid end to end until it fills `rows`, which must be whole repeats. */
export function layStripes(repeat: readonly Stripe[], rows: number): readonly KnittedStripe[] {
  const stripes: KnittedStripe[] = [];
  for (let firstRow = 1; firstRow <= rows; ) {
    const stripe = repeat[stripes.length % repeat.length] as Stripe;
    const lastRow = firstRow + stripe.rows - 1;
    stripes.push({ yarn: stripe.yarn, rows: stripe.rows, number: stripes.length + 1, firstRow, lastRow });
    firstRow = lastRow + 1;
  }
  return stripes;
}

/** The same for the same seed, in every run. */
function* chance(seed: number): Generator<number, never> {
  for (let state = seed >>> 0; ; ) {
    // Mulberry32, a small generator in the public domain.
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    yield ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
}

/** A brief has no more stripes than this, and none higher. */
const mostStripes = 200;
const mostRows = 40;

/** Stripes of 2, 4 or 6 rows in an order without a pattern; `rows` is even and has room for two stripes, of two yarns at least. */
export function randomStripes(yarns: readonly string[], rows: number, seed: number): readonly Stripe[] {
  const next = chance(seed);
  const pick = <Item>(items: readonly Item[]): Item =>
    items[Math.floor(next.next().value * items.length)] as Item;
  const unit = 2 * Math.ceil(rows / (2 * mostStripes));
  const heights = [unit];
  for (let left = rows - unit; left > 0; ) {
    const height = Math.min(left, unit * pick([1, 1, 2, 3]));
    heights.push(height);
    left -= height;
  }
  // Two yarns take turns, so their stripes are even in number.
  if (yarns.length === 2 && heights.length % 2 === 1)
    heights.splice(-2, 2, (heights.at(-2) ?? 0) + (heights.at(-1) ?? 0));
  const laid: Stripe[] = [];
  for (const [i, height] of heights.entries()) {
    const beside = [laid.at(-1)?.yarn, i === heights.length - 1 ? laid[0]?.yarn : undefined];
    laid.push({ yarn: pick(yarns.filter((yarn) => !beside.includes(yarn))), rows: height });
  }
  return laid;
}

/**
 * From the darkest yarn to the lightest and back, over and over where the way is long, each in a broad stripe, and a narrow one of each between neighbours, where there
 * is room for them. `rows` is even.
 */
export function gradientStripes(
  yarns: readonly { readonly yarn: string; readonly colour: string }[],
  rows: number,
): readonly Stripe[] {
  const lightness = (colour: string): number => labOf(linear(parseColour(colour)))[0];
  const upward = yarns.toSorted((a, b) => lightness(a.colour) - lightness(b.colour)).map(({ yarn }) => yarn);
  const once = [...upward, ...upward.slice(1, -1).toReversed()];
  const times = Math.ceil(rows / (once.length * mostRows));
  const round = Array.from({ length: times }, () => once).flat();
  const narrow = 2;
  const hasRoom = rows >= round.length * (2 * narrow + 4);
  const broadRows = rows - (hasRoom ? round.length * 2 * narrow : 0);
  return round.flatMap((yarn, i) => {
    const next = round[(i + 1) % round.length] ?? yarn;
    // Even parts that come to all the rows.
    const upTo = (parts: number): number => 2 * Math.floor((parts * broadRows) / (2 * round.length));
    const own = { yarn, rows: upTo(i + 1) - upTo(i) };
    return hasRoom ? [own, { yarn: next, rows: narrow }, { yarn, rows: narrow }] : [own];
  });
}
