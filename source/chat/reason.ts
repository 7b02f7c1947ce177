import type { Plan } from '../planning/plan.ts';
import type { Units } from '../shared/units.ts';
import type { Named } from './named.ts';

/** A topic of the craft: the rule in plain words, its formula, and where both come from. */
export interface Reason extends Named {
  readonly rule: () => string;
  readonly formula?: () => string;
  /** This bag's numbers; null where it has none to show. */
  readonly here?: (plan: Plan, units: Units) => string | null;
  readonly source: () => string;
}
