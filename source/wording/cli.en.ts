import type { Amounts } from './amounts.ts';

export const cli = (_: Amounts) => ({});

export type CliWords = ReturnType<typeof cli>;
