import type { Amounts } from './amounts.ts';

export const chatFaults = (_: Amounts) => ({});

export type ChatFaultsWords = ReturnType<typeof chatFaults>;
