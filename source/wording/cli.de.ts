import type { Amounts } from './amounts.ts';
import type { CliWords } from './cli.en.ts';

export const cli = (_: Amounts): CliWords => ({});
