import type { Amounts } from './amounts.ts';
import type { StepsWords } from './steps.en.ts';

export const steps = (_: Amounts): StepsWords => ({});
