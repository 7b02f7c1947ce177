import type { Amounts } from './amounts.ts';

export const sheet = (_: Amounts) => ({});

export type SheetWords = ReturnType<typeof sheet>;
