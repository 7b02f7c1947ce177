import type { Amounts } from './amounts.ts';

export const player = (_: Amounts) => ({});

export type PlayerWords = ReturnType<typeof player>;
