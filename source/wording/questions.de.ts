import type { Amounts } from './amounts.ts';
import type { QuestionsWords } from './questions.en.ts';

export const questions = (_: Amounts): QuestionsWords => ({});
