import type { Amounts } from './amounts.ts';
import type { RippingWords } from './ripping.en.ts';

export const ripping = (_: Amounts): RippingWords => ({});
