import type { Amounts } from './amounts.ts';

export const weighing = (_: Amounts) => ({});

export type WeighingWords = ReturnType<typeof weighing>;
