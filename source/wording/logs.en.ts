import type { Amounts } from './amounts.ts';

export const logs = (_: Amounts) => ({});

export type LogsWords = ReturnType<typeof logs>;
