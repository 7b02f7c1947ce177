/** What a bag costs: its yarn by weight, and the hours on the bench. Only where the maker has set a price or an hour's worth. */
import type { Brief } from './brief.ts';

export interface Cost {
  /** Of each yarn that has a price and is used. */
  readonly yarn: readonly { readonly yarn: string; readonly cost: number }[];
  /** Yarns that are used and have no price. */
  readonly unpriced: readonly string[];
  readonly hours: number;
  /** Null where an hour has no worth. */
  readonly work: number | null;
  readonly total: number;
  /** As the maker writes it; null where it was not said. */
  readonly currency: string | null;
}

/** Null where nothing has a price. Yarn at what it weighs, without a reserve: what is left over is not used up. */
export function costOf(
  { yarns, cost }: Brief,
  grams: ReadonlyMap<string, number>,
  hours: number,
): Cost | null {
  const used = [...yarns].map(([yarn, { pricePer100g }]) => ({
    yarn,
    grams: grams.get(yarn) ?? 0,
    pricePer100g,
  }));
  const taken = used.filter((one) => one.grams > 0);
  const priced = taken.flatMap(({ yarn, grams: own, pricePer100g }) =>
    pricePer100g === null ? [] : [{ yarn, cost: (own * pricePer100g) / 100 }],
  );
  if (priced.length === 0 && cost.perHour === null) return null;
  const work = cost.perHour === null ? null : hours * cost.perHour;
  return {
    yarn: priced,
    unpriced: taken.filter(({ pricePer100g }) => pricePer100g === null).map(({ yarn }) => yarn),
    hours,
    work,
    total: priced.reduce((sum, one) => sum + one.cost, work ?? 0),
    currency: cost.currency,
  };
}
