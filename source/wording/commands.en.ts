import type { Amounts } from './amounts.ts';

export const commands = (_: Amounts) => ({});

export type CommandsWords = ReturnType<typeof commands>;
