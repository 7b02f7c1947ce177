/** What a bag costs, where prices were given. */
import type { Cost } from '../../planning/cost.ts';
import type { Words } from '../../wording/words.ts';
import { labelled } from './page.ts';

export const costLines = (cost: Cost | null, { plan }: Words): readonly string[] =>
  cost ? labelled(plan.cost, plan.costs(cost)) : [];
