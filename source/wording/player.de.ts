import type { Amounts } from './amounts.ts';
import type { PlayerWords } from './player.en.ts';

export const player = (_: Amounts): PlayerWords => ({});
