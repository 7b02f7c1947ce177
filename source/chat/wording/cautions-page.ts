/** All cautions of a bag on one page, each with the steps at which it comes. */
import { formatList, say } from '../../shared/say.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { currentWords } from '../../wording/current.ts';
import { cautionOf } from './cautions.ts';
import { sayRestYourHands } from './rest.ts';

/** More steps than these are counted, not listed. */
const mostListed = 4;

export function cautionLines(job: Job): readonly string[] {
  return [
    ...[...cautionsOf(job)].map(([caution, steps]) => `${whenOf(steps)}: ${caution}`),
    `${say`When you assign a foot switch`}: ${currentWords().settings.cable}`,
    `${say`After half an hour of work`}: ${sayRestYourHands()}`,
  ];
}

/** The steps of each caution, by what it says. */
function cautionsOf(job: Job): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (let number = 1; number <= job.stepCount; number++) {
    const caution = cautionOf(job.plan, stepAt(job, number));
    if (caution !== null) found.set(caution, [...(found.get(caution) ?? []), number]);
  }
  return found;
}

function whenOf(steps: readonly number[]): string {
  if (steps.length === 1) return say`At step ${steps[0] ?? 0}`;
  const shown = steps.slice(0, mostListed).map(String);
  return steps.length > mostListed
    ? say`At steps ${shown.join(', ')} …, ${steps.length} in all`
    : say`At steps ${formatList(shown)}`;
}
