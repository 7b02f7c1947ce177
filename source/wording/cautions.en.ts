import type { Amounts } from './amounts.ts';

export const cautions = (_: Amounts) => ({});

export type CautionsWords = ReturnType<typeof cautions>;
