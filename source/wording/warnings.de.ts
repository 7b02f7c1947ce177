import type { Amounts } from './amounts.ts';
import type { WarningsWords } from './warnings.en.ts';

export const warnings = (_: Amounts): WarningsWords => ({});
