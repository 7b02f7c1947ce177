import type { Amounts } from './amounts.ts';

export const steps = (_: Amounts) => ({});

export type StepsWords = ReturnType<typeof steps>;
