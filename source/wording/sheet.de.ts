import type { Amounts } from './amounts.ts';
import type { SheetWords } from './sheet.en.ts';

export const sheet = (_: Amounts): SheetWords => ({});
