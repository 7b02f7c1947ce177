import type { ActWords } from './act-words.ts';
import type { Amounts } from './amounts.ts';
import { bedSteps } from './bed-steps.de.ts';
import { handSteps } from './hand-steps.de.ts';

export const steps = (say: Amounts): ActWords => ({ ...bedSteps(say), ...handSteps(say) });
