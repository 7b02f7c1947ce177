import type { Amounts } from './amounts.ts';

export const names = (_: Amounts) => ({});

export type NamesWords = ReturnType<typeof names>;
