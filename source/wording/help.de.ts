import type { Amounts } from './amounts.ts';
import type { HelpWords } from './help.en.ts';

export const help = (_: Amounts): HelpWords => ({});
