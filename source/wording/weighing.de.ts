import type { Amounts } from './amounts.ts';
import type { WeighingWords } from './weighing.en.ts';

export const weighing = (_: Amounts): WeighingWords => ({});
