import type { Amounts } from './amounts.ts';

export const warnings = (_: Amounts) => ({});

export type WarningsWords = ReturnType<typeof warnings>;
