import type { Amounts } from './amounts.ts';
import type { SchemaWords } from './schema.en.ts';

export const schema = (_: Amounts): SchemaWords => ({});
