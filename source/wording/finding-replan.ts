/** What finishing would give, at each whole number of stripe repeats, and why a change of plan cannot be. */

import type { ReplanFault } from '../planning/plan-from.ts';
import type { ReplanChoice, ReplanChoices } from '../session/replan/replan-choices.ts';
import { exhaustive } from '../shared/exhaustive.ts';
import type { Words } from './words.ts';

/** What finishing as planned gives, then each choice under its number from short to long, then the nearest. */
export function formatReplanChoices(
  { aimCm, asPlanned, choices, best }: ReplanChoices,
  words: Words,
): readonly string[] {
  const planned =
    asPlanned === null
      ? words.finding.planImpossible
      : words.finding.planChoice(formatReplanChoice(asPlanned, words));
  if (choices.length === 0) return [planned, words.finding.noOtherLength];
  return [
    planned,
    ...choices.map((choice, i) => `  ${i + 1}  ${formatReplanChoice(choice, words)}`),
    nearest(aimCm, choices, best, words),
    choices.length === 1 ? words.finding.chooseIt : words.finding.chooseOne,
  ];
}

function nearest(
  aimCm: number,
  choices: readonly ReplanChoice[],
  best: ReplanChoice | null,
  words: Words,
): string {
  if (best === null) return words.finding.yarnLastsForNone;
  const number = choices.findIndex(({ rows }) => rows === best.rows) + 1;
  const named =
    number === 0 ? words.finding.replanRows(best.rows) : words.finding.rowsNumber(best.rows, number);
  return words.finding.nearestWidth(aimCm, named);
}

/** `60 rows, 1 repeat fewer: 12.9 cm wide, 17.6 cm deep, 31 rows to go` and any yarn that does not last. */
export function formatReplanChoice(choice: ReplanChoice, words: Words): string {
  const { rows, repeatsMore, widthCm, depthCm, rowsLeft, yarn } = choice;
  const short = yarn
    .filter(({ enough }) => enough === false)
    .map(({ yarn: name, withReserveGrams, haveGrams }) => {
      return words.finding.yarnShort(name, withReserveGrams - (haveGrams ?? 0));
    });
  const round = [words.finding.rows(rows), ...repeats(repeatsMore, words)].join(', ');
  const size = words.finding.sizeAndRowsLeft(widthCm, depthCm, rowsLeft);
  return `${round}: ${size}${short.length === 0 ? '' : words.finding.but(short)}`;
}

function repeats(more: number, words: Words): readonly string[] {
  if (more === 0) return [];
  const howMany = words.counted.repeat(Math.abs(more));
  return [more > 0 ? words.finding.moreRepeats(howMany) : words.finding.fewerRepeats(howMany)];
}

export function formatReplanFault(fault: ReplanFault, words: Words): string {
  switch (fault.code) {
    case 'replan/rows-not-whole-repeats':
      return words.finding.rowsNotWholeRepeats(fault.rows, fault.stepRows, fault.least);
    case 'replan/rows-too-few':
      return words.finding.rowsTooFew(fault.rows, fault.least);
    case 'replan/rows-too-many':
      return words.finding.rowsTooMany(fault.rows, fault.most);
    case 'replan/unknown-yarn':
      return words.finding.unknownNewYarn(fault.yarn, fault.known);
    case 'replan/yarn-not-to-come':
      return words.finding.yarnNotToCome(fault.yarn);
    case 'replan/colours-meet':
      return words.finding.coloursMeet(fault.first, fault.second, fault.yarn);
    case 'replan/measure-impossible':
      return words.finding.measureImpossible(fault.sizeMm);
    case 'replan/boxed-too-deep':
      return words.finding.boxedTooDeep(fault.boxedCm, fault.belowCm);
    case 'replan/too-late':
      return words.finding.tooLate;
    default:
      return exhaustive(fault);
  }
}
