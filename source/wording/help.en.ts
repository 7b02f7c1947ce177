import type { Amounts } from './amounts.ts';

export const help = (_: Amounts) => ({});

export type HelpWords = ReturnType<typeof help>;
