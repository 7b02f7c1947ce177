import { cautionOf } from '../chat/wording/cautions.ts';
import { sayStep } from '../chat/wording/steps.ts';
import { harmlessJson } from '../shared/plain-text.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import type { Words } from '../wording/words.ts';

/** One step as other programs read it: a line of JSON Lines. */
export function stepJson(job: Job, number: number, words: Words): string {
  const step = stepAt(job, number);
  const { phase, row, stripe, moves, after } = step;
  const say = sayStep(step, words);
  const caution = cautionOf(job.plan, step, words);
  return harmlessJson({
    step: step.step,
    phase,
    say,
    ...(caution === null ? {} : { caution }),
    row,
    stripe,
    moves,
    after: afterJson(after),
  });
}

const afterJson = (after: Step['after']): Record<string, unknown> => ({
  ...after,
  parked: Object.fromEntries(after.parked),
});
