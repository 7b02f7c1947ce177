/** All cautions of a bag on one page, each with the steps at which it comes. */

import { type Job, stepAt } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import { cautionOf } from './cautions.ts';
import { sayRestYourHands } from './rest.ts';

/** More steps than these are counted, not listed. */
const mostListed = 4;

export function cautionLines(job: Job, words: Words): readonly string[] {
  return [
    ...[...cautionsOf(job, words)].map(([caution, steps]) => `${whenOf(steps, words)}: ${caution}`),
    `${words.prompt.cautions.forSwitch}: ${words.settings.cable}`,
    `${words.prompt.cautions.afterHalfHour}: ${sayRestYourHands(words)}`,
  ];
}

/** The steps of each caution, by what it says. */
function cautionsOf(job: Job, words: Words): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (let number = 1; number <= job.stepCount; number++) {
    const caution = cautionOf(job.plan, stepAt(job, number), words);
    if (caution !== null) found.set(caution, [...(found.get(caution) ?? []), number]);
  }
  return found;
}

function whenOf(steps: readonly number[], words: Words): string {
  if (steps.length === 1) return words.prompt.cautions.atStep(steps[0] ?? 0);
  const shown = steps.slice(0, mostListed).map(String);
  return steps.length > mostListed
    ? words.prompt.cautions.atStepsOf(shown.join(', '), steps.length)
    : words.prompt.cautions.atSteps(shown);
}
