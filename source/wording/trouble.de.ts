import type { Amounts } from './amounts.ts';
import type { TroubleWords } from './trouble.en.ts';

export const trouble = (_: Amounts): TroubleWords => ({});
