import type { Amounts } from './amounts.ts';
import type { PlanPageWords } from './plan-page.en.ts';

export const planPage = (_: Amounts): PlanPageWords => ({});
