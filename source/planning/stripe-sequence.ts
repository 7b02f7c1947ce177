/**
 * The stripes as they are knitted, one after another. A stripe has an even number of rows so that both yarns wait on
 * the home side; the last row of the last stripe is the graft (common practice).
 */
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
