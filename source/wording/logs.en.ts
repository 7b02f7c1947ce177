import type { Amounts } from './amounts.ts';

export const logs = (_: Amounts) => ({
  soundPart: (path: string) => `The sound part is saved as ${path}.`,
});

export type LogsWords = ReturnType<typeof logs>;
