import type { Amounts } from './amounts.ts';

export const finding = (_: Amounts) => ({});

export type FindingWords = ReturnType<typeof finding>;
