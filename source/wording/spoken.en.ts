import type { Amounts } from './amounts.ts';

export const spoken = (_: Amounts) => ({});

export type SpokenWords = ReturnType<typeof spoken>;
