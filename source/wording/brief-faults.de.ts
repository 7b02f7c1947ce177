import type { Amounts } from './amounts.ts';
import type { BriefFaultsWords } from './brief-faults.en.ts';

export const briefFaults = (_: Amounts): BriefFaultsWords => ({});
