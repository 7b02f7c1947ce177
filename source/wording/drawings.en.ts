import type { Amounts } from './amounts.ts';

export const drawings = (_: Amounts) => ({});

export type DrawingsWords = ReturnType<typeof drawings>;
