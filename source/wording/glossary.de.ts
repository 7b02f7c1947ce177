import type { Amounts } from './amounts.ts';
import type { GlossaryWords } from './glossary.en.ts';

export const glossary = (_: Amounts): GlossaryWords => ({});
