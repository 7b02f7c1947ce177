import type { Amounts } from './amounts.ts';
import type { RecordWords } from './record.en.ts';

export const record = (_: Amounts): RecordWords => ({});
