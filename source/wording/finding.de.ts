import type { Amounts } from './amounts.ts';
import type { FindingWords } from './finding.en.ts';

export const finding = (_: Amounts): FindingWords => ({});
