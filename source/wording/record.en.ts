import type { Amounts } from './amounts.ts';

export const record = (_: Amounts) => ({});

export type RecordWords = ReturnType<typeof record>;
