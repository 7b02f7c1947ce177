import type { Amounts } from './amounts.ts';

export const schema = (_: Amounts) => ({});

export type SchemaWords = ReturnType<typeof schema>;
