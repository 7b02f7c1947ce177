import type { Amounts } from './amounts.ts';
import type { SpokenWords } from './spoken.en.ts';

export const spoken = (_: Amounts): SpokenWords => ({});
