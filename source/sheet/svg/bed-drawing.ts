import { formatNeedle } from '../../bed/needles.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type BedMap, bedMapOf, type HangingOnBed } from '../geometry/bed-map.ts';
import { type Drawing, element, lineFrom, palette, textAt } from './element.ts';
import { centreWithin } from './text-width.ts';

const side = 9;
const laneMm = 11;
const scaleMm = 9;

/** The bed from above with needle numbers; a lane for each hanging: where it is hung, and where it has crawled to. */
export function bedDrawing(plan: Plan, room: { widthMm: number; lanes: number }, words: Words): Drawing {
  const map = bedMapOf(plan);
  const needleMm = (room.widthMm - 2 * side) / map.needles;
  const leftOf = (place: number): number => side + place * needleMm;
  const shown = map.hangings.slice(0, room.lanes);
  const more = map.hangings.length - shown.length;
  const lanes = shown.map((hanging, i) => lane(hanging, scaleMm + i * laneMm, leftOf, room.widthMm, words));
  const bottom = scaleMm + shown.length * laneMm;
  return {
    widthMm: room.widthMm,
    heightMm: bottom + (more > 0 ? 4.5 : 0),
    title: words.say`The bed with its ${map.needles} needles and where the work hangs`,
    body: [
      needleScale(map, needleMm, leftOf),
      ...lanes,
      more > 0
        ? textAt(
            [side, bottom + 2.8],
            words.say`and ${more} more, each hung on the same needles; the list of stripes says when`,
            {},
          )
        : '',
    ].join(''),
  };
}

function needleScale(map: BedMap, needleMm: number, leftOf: (place: number) => number): string {
  const { needles, marginNeedles, leftNeedles } = map;
  const y = 6;
  const tickEvery = needleMm >= 0.8 ? 1 : needleMm >= 0.2 ? 5 : 10;
  const numberOf = (place: number): number =>
    place < leftNeedles ? leftNeedles - place : place - leftNeedles + 1;
  const ticks = Array.from({ length: needles }, (_, place) => {
    const number = numberOf(place);
    if (number % tickEvery !== 0 && number !== 1) return '';
    const x = leftOf(place + 0.5);
    return lineFrom([x, y - (number % 10 === 0 ? 1.6 : 0.9)], [x, y], { 'stroke-width': 0.15 });
  });
  const nameEvery = [10, 20, 25, 50, 100].find((step) => step * needleMm >= 10) ?? 100;
  const named = [
    0,
    needles - 1,
    ...Array.from({ length: needles }, (_, place) => place).filter(
      (place) => numberOf(place) % nameEvery === 0,
    ),
  ];
  const written: number[] = [];
  const names = named.map((place) => {
    const x = leftOf(place + 0.5);
    if (written.some((other) => Math.abs(other - x) < 8)) return '';
    written.push(x);
    return textAt([x, y - 2.4], formatNeedle(needles, place), { anchor: 'middle', size: 2.4 });
  });
  const marginBox = (place: number): string =>
    element('rect', {
      x: leftOf(place),
      y: y + 0.2,
      width: marginNeedles * needleMm,
      height: 1,
      fill: palette.rule,
    });
  const middle = leftOf(leftNeedles);
  return [
    lineFrom([leftOf(0), y], [leftOf(needles), y], { 'stroke-width': 0.3 }),
    lineFrom([middle, y - 3], [middle, y + 1.2], { 'stroke-width': 0.4 }),
    ...ticks,
    ...names,
    marginNeedles > 0 ? marginBox(0) + marginBox(needles - marginNeedles) : '',
  ].join('');
}

/** Two bars joined by the way the work crawls: hung above, at its last row below. */
function lane(
  { fromRow, throughRow, hung, last }: HangingOnBed,
  top: number,
  leftOf: (place: number) => number,
  widthMm: number,
  words: Words,
): string {
  const bar = (from: number, through: number, y: number, fill: string): string =>
    element('rect', {
      x: leftOf(from),
      y,
      width: leftOf(through + 1) - leftOf(from),
      height: 2.6,
      fill,
      stroke: palette.ink,
      'stroke-width': 0.2,
    });
  const [hungY, endY] = [top, top + 5.4];
  const names = (
    left: number,
    right: number,
    leftName: string,
    rightName: string,
    y: number,
    row: string,
  ): string => {
    const [from, to] = [leftOf(left), leftOf(right + 1)];
    const size = 2.2;
    const x = centreWithin((from + to) / 2, row, size, widthMm);
    const middle = textAt([x, y + 1.95], row, { anchor: 'middle', size });
    return middle + outerName(from, leftName, 'left', y) + outerName(to, rightName, 'right', y);
  };
  const sweep = element('polygon', {
    points: `${leftOf(hung.left)},${hungY + 2.6} ${leftOf(hung.right + 1)},${hungY + 2.6} ${leftOf(last.right + 1)},${endY} ${leftOf(last.left)},${endY}`,
    fill: palette.pale,
  });
  return [
    sweep,
    bar(hung.left, hung.right, hungY, palette.paper),
    bar(last.left, last.right, endY, palette.paper),
    names(
      hung.left,
      hung.right,
      hung.leftName,
      hung.rightName,
      hungY,
      fromRow === 1 ? words.say`hung for row 1` : words.say`hung again after row ${fromRow - 1}`,
    ),
    names(last.left, last.right, last.leftName, last.rightName, endY, words.say`at row ${throughRow}`),
  ].join('');
}

/** Beside the bar where there is room, else inside it. */
function outerName(x: number, name: string, side: 'left' | 'right', y: number): string {
  return side === 'left'
    ? textAt([x - 1, y + 2.1], name, { anchor: 'end', size: 2.4, weight: 700 })
    : textAt([x + 1, y + 2.1], name, { size: 2.4, weight: 700 });
}
