import type { Amounts } from './amounts.ts';
import type { LessonWords } from './lesson.en.ts';

export const lesson = (_: Amounts): LessonWords => ({});
