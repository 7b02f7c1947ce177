import type { Amounts } from './amounts.ts';
import type { CautionsWords } from './cautions.en.ts';

export const cautions = (_: Amounts): CautionsWords => ({});
