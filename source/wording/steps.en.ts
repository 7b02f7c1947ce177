import type { ActWords } from './act-words.ts';
import type { Amounts } from './amounts.ts';
import { bedSteps } from './bed-steps.en.ts';
import { handSteps } from './hand-steps.en.ts';

export const steps = (say: Amounts): ActWords => ({ ...bedSteps(say), ...handSteps(say) });
