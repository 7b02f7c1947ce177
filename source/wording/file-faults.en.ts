import type { Amounts } from './amounts.ts';

export const fileFaults = (_: Amounts) => ({});

export type FileFaultsWords = ReturnType<typeof fileFaults>;
