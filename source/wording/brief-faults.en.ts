import type { Amounts } from './amounts.ts';

export const briefFaults = (_: Amounts) => ({});

export type BriefFaultsWords = ReturnType<typeof briefFaults>;
