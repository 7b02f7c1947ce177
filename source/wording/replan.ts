/** What finishing would give, at each whole number of stripe repeats, and why a change of plan cannot be. */

import type { ReplanChoice, ReplanChoices, YarnLeft } from '../session/replan/replan-choices.ts';
import type { Words } from './words.ts';

/** What finishing as planned gives, then each choice under its number, the nearest first. */
export function formatReplanChoices(
  { aimCm, asPlanned, choices, best }: ReplanChoices,
  words: Words,
): readonly string[] {
  const planned =
    asPlanned === null
      ? words.replan.asPlannedItCannot
      : words.replan.asPlanned(formatReplanChoice(asPlanned, words));
  if (choices.length === 0) return [planned, words.replan.noOther];
  const isSize = choices.length > 1 || choices[0]?.rows !== asPlanned?.rows;
  return [
    planned,
    ...choices.map((choice, i) => `  ${i + 1}  ${formatReplanChoice(choice, words)}`),
    ...(isSize ? [nearest({ aimCm, asPlanned, choices, best }, words)] : []),
    choices.length === 1 ? words.replan.toTakeIt : words.replan.toTakeOne,
  ];
}

function nearest({ aimCm, asPlanned, choices, best }: ReplanChoices, words: Words): string {
  if (best === null) return words.replan.lastsForNone;
  const number = choices.indexOf(best) + 1;
  if (number > 0) return words.replan.lastsFor(aimCm, words.replan.choiceNumber(best.rows, number));
  if (best === asPlanned) return words.replan.planIsNearest(aimCm);
  return words.replan.lastsFor(aimCm, words.replan.choiceTyped(best.rows));
}

/** `60 rows, 1 repeat fewer: 12.9 cm wide, 17.6 cm deep, 31 rows to go` and any yarn that does not last. */
export function formatReplanChoice(choice: ReplanChoice, words: Words): string {
  const { rows, repeatsMore, rehangsMore, widthCm, depthCm, rowsLeft, yarn, cordIn } = choice;
  const short = yarn.filter(({ enough }) => enough === false).map((one) => shortage(one, words));
  const round = [words.replan.rows(rows), ...repeats(repeatsMore, words)].join(', ');
  const inOther = yarn.find((one) => one.yarn === cordIn);
  const facts = [
    words.replan.size(widthCm, depthCm, rowsLeft),
    ...rehangs(rehangsMore, words),
    ...(inOther ? [words.replan.cordIn(inOther.yarn, inOther.withReserveGrams)] : []),
  ];
  return `${round}: ${facts.join(', ')}${short.length === 0 ? '' : words.replan.but(short)}`;
}

/** What is short, and of what, where it is for more than the stripes. */
function shortage({ yarn, withReserveGrams, haveGrams, metres, parts }: YarnLeft, words: Words): string {
  const grams = (part: number): number => (part / metres) * withReserveGrams;
  const { replan } = words;
  const of = [
    ...(parts.stripes > 0 ? [replan.forStripes(grams(parts.stripes))] : []),
    ...(parts.tails > 0 ? [replan.forTails(grams(parts.tails))] : []),
    ...(parts.cord > 0 ? [replan.forCord(grams(parts.cord))] : []),
  ];
  return replan.isShort(yarn, withReserveGrams - (haveGrams ?? 0), of);
}

function repeats(more: number, words: Words): readonly string[] {
  if (more === 0) return [];
  const howMany = words.plurals.repeat(Math.abs(more));
  return [more > 0 ? words.replan.more(howMany) : words.replan.fewer(howMany)];
}

function rehangs(more: number, words: Words): readonly string[] {
  if (more === 0) return [];
  return [more > 0 ? words.replan.rehangsMore(more) : words.replan.rehangsFewer(-more)];
}

/** A number without its unit, which gives a stitch or row that is far from the plan's. */
export interface WhichUnit {
  readonly of: 'stitches' | 'rows';
  readonly count: number;
  readonly value: number;
  readonly sizeMm: number;
  readonly dueMm: number;
  /** Units in which it would be near the plan. */
  readonly fits: readonly ('mm' | 'cm' | 'in')[];
  readonly taken: 'mm' | 'cm' | 'in';
}

/** What was typed without its unit, as it may be typed again. */
export function sayWhichUnit(
  { of, count, value, sizeMm, dueMm, fits, taken }: WhichUnit,
  words: Words,
): string {
  const typed = (unit: string): string => `${count} ${of} ${words.amounts.decimal(value, 2)} ${unit}`;
  const again = [...fits, taken].map((unit) => `replan ${typed(unit)}`);
  return words.replan.whichUnit(typed(taken), sizeMm, dueMm, again);
}
