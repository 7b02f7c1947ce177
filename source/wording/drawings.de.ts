import type { Amounts } from './amounts.ts';
import type { DrawingsWords } from './drawings.en.ts';

export const drawings = (_: Amounts): DrawingsWords => ({});
