import type { Amounts } from './amounts.ts';

export const lesson = (_: Amounts) => ({});

export type LessonWords = ReturnType<typeof lesson>;
