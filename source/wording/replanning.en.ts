import type { Amounts } from './amounts.ts';

export const replanning = (_: Amounts) => ({});

export type ReplanningWords = ReturnType<typeof replanning>;
