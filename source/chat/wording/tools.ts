/** What lies ready before the first step. */
import { kitOf } from '../../planning/kit.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';

export function sayTools(plan: Plan, { kit }: Words): readonly string[] {
  const needed = kitOf(plan);
  return [kit.tools(needed), kit.materials(needed)];
}
