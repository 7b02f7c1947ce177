/** What the bag looks like: its stripes, how steep they stand, the cords it is drawn shut with, and its edges. */
import { type ShapeEveryRows, shapeIntervals } from '../../planning/choose-size.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { isLength, readAmounts, toCm, unitOf } from './amounts.ts';
import type { AnswerFault, SlantAnswer, StripesAnswer, Values } from './answers.ts';

const beside = ['and', 'then', 'each', 'und', 'dann', 'je'];
const random = ['random', 'mixed', 'zufällig', 'gemischt'];
const gradient = ['gradient', 'shaded', 'verlauf', 'farbverlauf'];

/** Rows of a stripe, `2`, or of each yarn's: `4 and 2`; widths: `1 cm and 2 cm`; or `random`, or `gradient`. */
export function readStripes(line: string): Result<StripesAnswer, AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const [word] = others;
  if (amounts.length === 0 && others.length === 1 && word !== undefined) {
    if (random.includes(word)) return succeed('random');
    if (gradient.includes(word)) return succeed('gradient');
  }
  const stranger = others.find((other) => !beside.includes(other));
  const typed = amounts.find(({ unit }) => isLength(unit))?.unit ?? null;
  if (stranger !== undefined || amounts.length === 0) return notUnderstood(stranger ?? null);
  if (isLength(typed)) {
    const widthsCm = amounts.map(({ value, unit }) => toCm(value, isLength(unit) ? unit : typed));
    return amounts.every(({ unit }) => unit === null || isLength(unit)) && widthsCm.every((cm) => cm > 0)
      ? succeed({ widthsCm })
      : notUnderstood(null);
  }
  return amounts.every(({ unit }) => unit === null || unit === 'rows')
    ? succeed(forEach(amounts.map(({ value }) => value)))
    : notUnderstood(null);
}

/** One number is that of every stripe. */
const forEach = (rows: readonly number[]): readonly number[] =>
  rows.length === 1 ? [...rows, ...rows] : rows;

const notUnderstood = (word: string | null): Result<never, AnswerFault> =>
  fail({ code: 'first-run/not-understood', question: 'stripes', word });

const degrees = ['°', 'degree', 'degrees', 'deg', 'grad'];
const besideAngles = [...degrees, 'every', 'alle', 'angle', 'winkel'];

/** An angle, `60` or `60 degrees`; or the rows from one shaping move to the next, `4` or `every 4 rows`, which no angle is as small as. */
export function readSlant(line: string): Result<SlantAnswer, AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const [one, more] = amounts;
  const stranger = others.find((word) => !besideAngles.includes(word));
  if (stranger !== undefined || !one || more || (one.unit !== null && one.unit !== 'rows'))
    return fail({ code: 'first-run/not-understood', question: 'slant', word: stranger ?? null });
  const everyRows = shapeIntervals.find((interval): interval is ShapeEveryRows => interval === one.value);
  const isAngle = others.some((word) => degrees.includes(word));
  if (everyRows !== undefined && !isAngle) return succeed({ everyRows });
  return one.unit === null && one.value >= 10 && one.value <= 90
    ? succeed({ angleDeg: one.value })
    : fail({ code: 'first-run/not-understood', question: 'slant', word: null });
}

const cords: ReadonlyMap<string, Values['cord']> = new Map([
  ['one', 1],
  ['eine', 1],
  ['two', 2],
  ['both', 2],
  ['zwei', 2],
]);
const besideCords = ['cord', 'cords', 'draws', 'kordel', 'kordeln', 'sides', 'seiten'];

export function readCords(line: string): Result<Values['cord'], AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const words = others.filter((word) => !besideCords.includes(word));
  const number = amounts[0]?.value;
  const said = words.length === 1 && amounts.length === 0 ? cords.get(words[0] ?? '') : undefined;
  const counted =
    words.length === 0 && amounts.length === 1 && (number === 1 || number === 2) ? number : undefined;
  const cord = said ?? counted;
  return cord === undefined
    ? fail({ code: 'first-run/not-understood', question: 'cord', word: words[0] ?? null })
    : succeed(cord);
}

const edges: ReadonlyMap<string, Values['edges']> = new Map([
  ['one', 1],
  ['eine', 1],
  ['two', 2],
  ['zwei', 2],
  ['three', 3],
  ['drei', 3],
]);

/** `3`, `three`, `3 stitches`. */
export function readEdges(line: string): Result<Values['edges'], AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const [one, more] = amounts;
  const words = others.filter((word) => unitOf(word) !== 'stitches');
  const said = words.length === 1 && !one ? edges.get(words[0] ?? '') : undefined;
  const isCount = words.length === 0 && one && !more && (one.unit === null || one.unit === 'stitches');
  const counted = isCount ? [...edges.values()].find((count) => count === one.value) : undefined;
  const count = said ?? counted;
  return count === undefined
    ? fail({ code: 'first-run/not-understood', question: 'edges', word: words[0] ?? null })
    : succeed(count);
}
