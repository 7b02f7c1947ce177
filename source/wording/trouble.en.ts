import type { Amounts } from './amounts.ts';

export const trouble = (_: Amounts) => ({});

export type TroubleWords = ReturnType<typeof trouble>;
