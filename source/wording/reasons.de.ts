import type { Amounts } from './amounts.ts';
import type { ReasonsWords } from './reasons.en.ts';

export const reasons = (_: Amounts): ReasonsWords => ({});
