import type { Amounts } from './amounts.ts';
import type { ReplanningWords } from './replanning.en.ts';

export const replanning = (_: Amounts): ReplanningWords => ({});
