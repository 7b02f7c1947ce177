import type { Amounts } from './amounts.ts';

export const questions = (_: Amounts) => ({});

export type QuestionsWords = ReturnType<typeof questions>;
