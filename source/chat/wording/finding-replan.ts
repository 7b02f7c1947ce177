/** What finishing would give, at each whole number of stripe repeats, and why a change of plan cannot be. */

import type { ReplanFault } from '../../planning/plan-from.ts';
import type { ReplanChoice, ReplanChoices } from '../../session/replan/replan-choices.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';

/** What finishing as planned gives, then each choice under its number from short to long, then the nearest. */
export function formatReplanChoices(
  { aimCm, asPlanned, choices, best }: ReplanChoices,
  words: Words,
): readonly string[] {
  const planned =
    asPlanned === null
      ? words.say`As planned it cannot be finished.`
      : words.say`As planned, ${formatReplanChoice(asPlanned, words)}.`;
  if (choices.length === 0) return [planned, words.say`There is no other length to choose.`];
  return [
    planned,
    ...choices.map((choice, i) => `  ${i + 1}  ${formatReplanChoice(choice, words)}`),
    nearest(aimCm, choices, best, words),
    choices.length === 1
      ? words.say`To go on like that type choose.`
      : words.say`To go on like one of them type choose and its number.`,
  ];
}

function nearest(
  aimCm: number,
  choices: readonly ReplanChoice[],
  best: ReplanChoice | null,
  words: Words,
): string {
  if (best === null)
    return words.say`The weighed yarn lasts for none: bring in another with replan colour, or rip back.`;
  const number = choices.findIndex(({ rows }) => rows === best.rows) + 1;
  const named =
    number === 0 ? words.say`replan rows ${best.rows}` : words.say`${best.rows} rows, number ${number}`;
  return words.say`Nearest to ${words.amounts.length(aimCm)} wide with the yarn there is: ${named}.`;
}

/** `60 rows, 1 repeat fewer: 12.9 cm wide, 17.6 cm deep, 31 rows to go` and any yarn that does not last. */
export function formatReplanChoice(choice: ReplanChoice, words: Words): string {
  const { rows, repeatsMore, widthCm, depthCm, rowsLeft, yarn } = choice;
  const short = yarn
    .filter(({ enough }) => enough === false)
    .map(({ yarn: name, withReserveGrams, haveGrams }) => {
      return words.say`${name} is ${words.amounts.massNeeded(withReserveGrams - (haveGrams ?? 0))} short`;
    });
  const round = [words.say`${rows} rows`, ...repeats(repeatsMore, words)].join(', ');
  const size = words.say`${words.amounts.length(widthCm)} wide, ${words.amounts.length(depthCm)} deep, ${words.count(rowsLeft, 'row')} to go`;
  return `${round}: ${size}${short.length === 0 ? '' : words.say`, but ${words.amounts.list(short)}`}`;
}

function repeats(more: number, words: Words): readonly string[] {
  if (more === 0) return [];
  const howMany = words.count(Math.abs(more), 'repeat');
  return [more > 0 ? words.say`${howMany} more` : words.say`${howMany} fewer`];
}

export function formatReplanFault(fault: ReplanFault, words: Words): string {
  switch (fault.code) {
    case 'replan/rows-not-whole-repeats':
      return words.say`${fault.rows} rows are not whole stripe repeats: choose a multiple of ${fault.stepRows}, from ${fault.least} up.`;
    case 'replan/rows-too-few':
      return words.say`${fault.rows} rows are fewer than the work needs from here: choose ${fault.least} or more.`;
    case 'replan/rows-too-many':
      return words.say`${fault.rows} rows are more than a bag may have: choose ${fault.most} at the most.`;
    case 'replan/unknown-yarn':
      return words.say`${fault.yarn} is not a yarn of this bag (${words.amounts.list(fault.known)}): give its colour and metres per 100 g too.`;
    case 'replan/yarn-not-to-come':
      return words.say`${fault.yarn} knits no stripe from here on: name a yarn that is still to come.`;
    case 'replan/colours-meet':
      return words.say`Stripes ${fault.first} and ${fault.second} would meet in ${fault.yarn} and read as one: choose another yarn.`;
    case 'replan/measure-impossible':
      return words.say`A stitch or row of ${fault.sizeMm} mm cannot be: measure the piece again.`;
    case 'replan/too-late':
      return words.say`The closing row is begun, so the size is settled: rip back to before it to change the plan.`;
    default:
      return exhaustive(fault);
  }
}
