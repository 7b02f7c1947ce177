/** What finishing would give, at each whole number of stripe repeats, and why a change of plan cannot be. */
import type { ReplanFault } from '../../planning/plan-from.ts';
import type { ReplanChoice, ReplanChoices } from '../../session/replan/replan-choices.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatCm, formatList } from './numbers.ts';

/** As planned first, then the choices from short to long, then the one that comes nearest. */
export function formatReplanChoices({ aimCm, asPlanned, choices, best }: ReplanChoices): readonly string[] {
  return [
    asPlanned === null
      ? 'As planned it cannot be finished.'
      : `Finished as planned: ${formatReplanChoice(asPlanned)}.`,
    ...choices.filter((choice) => choice !== asPlanned).map((choice) => `Or ${formatReplanChoice(choice)}.`),
    best === null
      ? 'The weighed yarn lasts for none of them: bring in another yarn, or rip back.'
      : `Nearest to ${formatCm(aimCm)} wide with the yarn there is: ${best.rows} rows.`,
  ];
}

/** `60 rows, 1 repeat fewer: 12.9 cm wide, 17.6 cm deep, 31 rows to go` and any yarn that does not last. */
export function formatReplanChoice(choice: ReplanChoice): string {
  const { rows, repeatsMore, widthCm, depthCm, rowsLeft, yarn } = choice;
  const than =
    repeatsMore === 0
      ? ''
      : `, ${count(Math.abs(repeatsMore), 'repeat')} ${repeatsMore > 0 ? 'more' : 'fewer'}`;
  const short = yarn
    .filter(({ enough }) => enough === false)
    .map(({ yarn: name, withReserveGrams, haveGrams }) => {
      return `${name} is ${Math.ceil(withReserveGrams - (haveGrams ?? 0))} g short`;
    });
  const size = `${formatCm(widthCm)} wide, ${formatCm(depthCm)} deep, ${count(rowsLeft, 'row')} to go`;
  return `${rows} rows${than}: ${formatList([size, ...short], 'but')}`;
}

export function formatReplanFault(fault: ReplanFault): string {
  switch (fault.code) {
    case 'replan/rows-not-whole-repeats':
      return `${fault.rows} rows are not whole stripe repeats: choose a multiple of ${fault.stepRows}, from ${fault.least} up.`;
    case 'replan/rows-too-few':
      return `${fault.rows} rows are fewer than the work needs from here: choose ${fault.least} or more.`;
    case 'replan/rows-too-many':
      return `${fault.rows} rows are more than a bag may have: choose ${fault.most} at the most.`;
    case 'replan/unknown-yarn':
      return `${fault.yarn} is not a yarn of this bag (${formatList(fault.known)}): give its colour and metres per 100 g too.`;
    case 'replan/yarn-not-to-come':
      return `${fault.yarn} knits no stripe from here on: name a yarn that is still to come.`;
    case 'replan/colours-meet':
      return `Stripes ${fault.first} and ${fault.second} would meet in ${fault.yarn} and read as one: choose another yarn.`;
    case 'replan/measure-impossible':
      return `A stitch or row of ${fault.sizeMm} mm cannot be: measure the piece again.`;
    case 'replan/too-late':
      return 'The closing row is begun, so the size is settled: rip back to before it to change the plan.';
    default:
      return exhaustive(fault);
  }
}
