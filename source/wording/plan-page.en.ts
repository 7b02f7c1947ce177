import type { Amounts } from './amounts.ts';

export const planPage = (_: Amounts) => ({});

export type PlanPageWords = ReturnType<typeof planPage>;
