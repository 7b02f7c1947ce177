import type { Amounts } from './amounts.ts';

export const reasons = (_: Amounts) => ({});

export type ReasonsWords = ReturnType<typeof reasons>;
