import type { Amounts } from './amounts.ts';

export const ripping = (_: Amounts) => ({});

export type RippingWords = ReturnType<typeof ripping>;
