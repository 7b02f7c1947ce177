import type { Amounts } from './amounts.ts';

export const bench = (_: Amounts) => ({});

export type BenchWords = ReturnType<typeof bench>;
