/** Several bags together: a yarn that more than one of them uses is weighed once, and must do for all. */
import type { Plan } from './plan.ts';
import { reserveOf } from './yarn-needs.ts';

/** One yarn's part in all bags. Grams as in `YarnNeed`; null where they are not known. */
export interface SharedYarn {
  readonly yarn: string;
  /** Null for waste yarn. */
  readonly colour: string | null;
  readonly metres: number;
  readonly grams: number | null;
  readonly withReserveGrams: number | null;
  /** The most that any brief says there is. */
  readonly haveGrams: number | null;
  readonly enough: boolean | null;
  readonly shortGrams: number | null;
}

/** Yarns of one name and colour are one yarn; in the order in which the bags name them. */
export function sharedYarn(plans: readonly Plan[]): readonly SharedYarn[] {
  const shared = new Map<string, SharedYarn>();
  for (const plan of plans)
    for (const need of plan.yarn) {
      const colour = plan.brief.yarns.get(need.yarn)?.colour.toLowerCase() ?? null;
      const key = JSON.stringify([need.yarn, colour]);
      const { metres, grams, haveGrams } = need;
      const withReserveGrams = grams === null ? null : grams * reserveOf(plan.gauge);
      const own = { yarn: need.yarn, colour, metres, grams, withReserveGrams, haveGrams };
      const before = shared.get(key);
      shared.set(key, judge(before ? together(before, own) : own));
    }
  return [...shared.values()];
}

type Amounts = Omit<SharedYarn, 'enough' | 'shortGrams'>;

function together(one: Amounts, other: Amounts): Amounts {
  const sum = (a: number | null, b: number | null): number | null =>
    a === null || b === null ? null : a + b;
  const have = [one.haveGrams, other.haveGrams].filter((grams) => grams !== null);
  return {
    ...one,
    metres: one.metres + other.metres,
    grams: sum(one.grams, other.grams),
    withReserveGrams: sum(one.withReserveGrams, other.withReserveGrams),
    haveGrams: have.length > 0 ? Math.max(...have) : null,
  };
}

function judge(amounts: Amounts): SharedYarn {
  const { withReserveGrams, haveGrams } = amounts;
  const shortGrams =
    withReserveGrams === null || haveGrams === null ? null : Math.max(0, withReserveGrams - haveGrams);
  return { ...amounts, shortGrams, enough: shortGrams === null ? null : shortGrams === 0 };
}
