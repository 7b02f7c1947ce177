import type { Amounts } from './amounts.ts';

export const glossary = (_: Amounts) => ({});

export type GlossaryWords = ReturnType<typeof glossary>;
