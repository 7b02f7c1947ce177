import type { Amounts } from './amounts.ts';
import type { BenchWords } from './bench.en.ts';

export const bench = (_: Amounts): BenchWords => ({});
