import type { Amounts } from './amounts.ts';
import type { NamesWords } from './names.en.ts';

export const names = (_: Amounts): NamesWords => ({});
