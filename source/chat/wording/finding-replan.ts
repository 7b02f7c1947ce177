/** What finishing would give, at each whole number of stripe repeats, and why a change of plan cannot be. */
import type { ReplanFault } from '../../planning/plan-from.ts';
import type { ReplanChoice, ReplanChoices } from '../../session/replan/replan-choices.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatLength, formatMassNeeded, metric, type Units } from '../../shared/units.ts';

/** What finishing as planned gives, then each choice under its number from short to long, then the nearest. */
export function formatReplanChoices(
  { aimCm, asPlanned, choices, best }: ReplanChoices,
  units: Units = metric,
): readonly string[] {
  const planned =
    asPlanned === null
      ? say`As planned it cannot be finished.`
      : say`As planned, ${formatReplanChoice(asPlanned, units)}.`;
  if (choices.length === 0) return [planned, say`There is no other length to choose.`];
  return [
    planned,
    ...choices.map((choice, i) => `  ${i + 1}  ${formatReplanChoice(choice, units)}`),
    nearest(aimCm, choices, best, units),
    choices.length === 1
      ? say`To go on like that type choose.`
      : say`To go on like one of them type choose and its number.`,
  ];
}

function nearest(
  aimCm: number,
  choices: readonly ReplanChoice[],
  best: ReplanChoice | null,
  units: Units,
): string {
  if (best === null)
    return say`The weighed yarn lasts for none: bring in another with replan colour, or rip back.`;
  const number = choices.findIndex(({ rows }) => rows === best.rows) + 1;
  const named = number === 0 ? say`replan rows ${best.rows}` : say`${best.rows} rows, number ${number}`;
  return say`Nearest to ${formatLength(aimCm, units)} wide with the yarn there is: ${named}.`;
}

/** `60 rows, 1 repeat fewer: 12.9 cm wide, 17.6 cm deep, 31 rows to go` and any yarn that does not last. */
export function formatReplanChoice(choice: ReplanChoice, units: Units = metric): string {
  const { rows, repeatsMore, widthCm, depthCm, rowsLeft, yarn } = choice;
  const short = yarn
    .filter(({ enough }) => enough === false)
    .map(({ yarn: name, withReserveGrams, haveGrams }) => {
      return say`${name} is ${formatMassNeeded(withReserveGrams - (haveGrams ?? 0), units)} short`;
    });
  const round = [say`${rows} rows`, ...repeats(repeatsMore)].join(', ');
  const size = say`${formatLength(widthCm, units)} wide, ${formatLength(depthCm, units)} deep, ${count(rowsLeft, 'row')} to go`;
  return `${round}: ${size}${short.length === 0 ? '' : say`, but ${formatList(short)}`}`;
}

function repeats(more: number): readonly string[] {
  if (more === 0) return [];
  const howMany = count(Math.abs(more), 'repeat');
  return [more > 0 ? say`${howMany} more` : say`${howMany} fewer`];
}

export function formatReplanFault(fault: ReplanFault): string {
  switch (fault.code) {
    case 'replan/rows-not-whole-repeats':
      return say`${fault.rows} rows are not whole stripe repeats: choose a multiple of ${fault.stepRows}, from ${fault.least} up.`;
    case 'replan/rows-too-few':
      return say`${fault.rows} rows are fewer than the work needs from here: choose ${fault.least} or more.`;
    case 'replan/rows-too-many':
      return say`${fault.rows} rows are more than a bag may have: choose ${fault.most} at the most.`;
    case 'replan/unknown-yarn':
      return say`${fault.yarn} is not a yarn of this bag (${formatList(fault.known)}): give its colour and metres per 100 g too.`;
    case 'replan/yarn-not-to-come':
      return say`${fault.yarn} knits no stripe from here on: name a yarn that is still to come.`;
    case 'replan/colours-meet':
      return say`Stripes ${fault.first} and ${fault.second} would meet in ${fault.yarn} and read as one: choose another yarn.`;
    case 'replan/measure-impossible':
      return say`A stitch or row of ${fault.sizeMm} mm cannot be: measure the piece again.`;
    case 'replan/too-late':
      return say`The closing row is begun, so the size is settled: rip back to before it to change the plan.`;
    default:
      return exhaustive(fault);
  }
}
