/** A way that the hands are on, in words; they are made whenever it is shown, so that they follow language and units. */
import type { Way } from '../session/way.ts';
import type { Words } from '../wording/words.ts';
import { formatHandStep } from './wording/finding.ts';
import { sayStep } from './wording/steps.ts';

/** `Back, 3 of 12: Pull out the row of mint …` */
export const sayWayStep = ({ kind, steps, at }: Way, words: Words, offset = 0): string | null => {
  const step = steps[at + offset];
  if (!step) return null;
  const number = at + offset + 1;
  const text = step.planned ? sayStep(step.planned, words) : formatHandStep(step, words);
  return kind === 'rip'
    ? words.prompt.wayBack(number, steps.length, text)
    : words.prompt.wayMend(number, steps.length, text);
};
