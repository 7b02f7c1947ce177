/** What the bag looks like: its stripes, how steep they stand, the cords it is drawn shut with, and its edges. */
import { type ShapeEveryRows, shapeIntervals } from '../../planning/choose-size.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { isLength, readAmounts, toCm, unitOf } from './amounts.ts';
import type { AnswerFault, EdgesAnswer, SlantAnswer, StripesAnswer, Values } from './answers.ts';

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

const edges: ReadonlyMap<string, EdgesAnswer['stitches']> = new Map([
  ['one', 1],
  ['eine', 1],
  ['two', 2],
  ['zwei', 2],
  ['three', 3],
  ['drei', 3],
]);

/** Plain rows of each layer of a hem where none are told, and the most (common practice: 4 to 6). */
const usualHemRows = 4;
const mostHemRows = 12;
const hemSaid =
  /\b(?:(?:and|with|und|mit) )?(?:an? |ein(?:en)? )?(?:hem|saum)\b(?: (\d+)(?: (?:rows|reihen)\b)?)?/;

/** `3`, `three stitches`, `hem`, `hem 6 rows`, `3 and a hem`. */
export function readEdges(line: string): Result<EdgesAnswer, AnswerFault> {
  const said = hemSaid.exec(line.toLowerCase());
  const hemRows = said && Number(said[1] ?? usualHemRows);
  const rest = (said ? line.toLowerCase().replace(said[0], '') : line.toLowerCase()).split(/[\s,;]+/);
  const words = rest.filter((word) => word !== '' && unitOf(word) !== 'stitches');
  const stitches = words.length === 0 && said ? 2 : countOfEdges(words);
  const isHem = hemRows === null || (hemRows % 2 === 0 && hemRows >= 2 && hemRows <= mostHemRows);
  return stitches === undefined || !isHem
    ? fail({
        code: 'first-run/not-understood',
        question: 'edges',
        word: (isHem ? words[0] : said?.[1]) ?? null,
      })
    : succeed({ stitches, hemRows });
}

function countOfEdges(words: readonly string[]): EdgesAnswer['stitches'] | undefined {
  const [word = ''] = words;
  if (words.length !== 1) return undefined;
  return edges.get(word) ?? [...edges.values()].find((count) => String(count) === word);
}
