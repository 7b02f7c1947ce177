import type { Plan } from '../planning/plan.ts';
import type { Words } from '../wording/words.ts';
import type { Named } from './named.ts';

/** A topic of the craft: the rule in plain words, its formula, and where both come from. */
export interface Reason extends Named {
  readonly rule: (words: Words) => string;
  readonly formula?: (words: Words) => string;
  /** This bag's numbers; null where it has none to show. */
  readonly here?: (plan: Plan, words: Words) => string | null;
  readonly source: (words: Words) => string;
}
