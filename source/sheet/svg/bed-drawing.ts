/** The bed as the maker has it in front, purl side of the work towards them: where it hangs at first, and where it has crawled to. */

import { formatNeedle } from '../../bed/needles.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type BedMap, bedMapOf, type Edges, type HangingOnBed } from '../geometry/bed-map.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawn, drawingOf, reaching, within, written } from './drawn.ts';
import { type Drawing, element, lineFrom, palette, textWidth } from './element.ts';

interface BedDrawingOptions {
  readonly widthMm: number;
  /** Height of the letters. */
  readonly size: number;
  /** Hangings that are drawn; what is more is said. */
  readonly lanes: number;
}

type PlaceAt = (place: number) => number;

export function bedDrawing(
  plan: Plan,
  words: Words['sheet'],
  { widthMm, size, lanes }: BedDrawingOptions,
): Drawing {
  const map = bedMapOf(plan);
  const side = textWidth('L200', size) / 2;
  const shown = map.hangings.slice(0, lanes);
  const labelMm = Math.max(
    ...shown.flatMap((hanging) => labelsOf(hanging, words).map((text) => textWidth(text, size))),
  );
  const fromMm = labelMm + 2;
  const needleMm = (widthMm - fromMm - 2 * side) / map.needles;
  const leftOf: PlaceAt = (place) => fromMm + side + place * needleMm;
  const more = map.hangings.length - shown.length;
  const laneMm = size * 3.3;
  const bottom = size * 0.5 + shown.length * laneMm;
  return drawingOf(
    words.shows.bed(map.needles),
    [
      ...needleScale(map, needleMm, leftOf, size),
      ...shown.flatMap((hanging, i) =>
        lane(hanging, words, { top: size * 0.5 + i * laneMm, leftOf, size, fromMm, widthMm }),
      ),
      reaching('', [
        [0, 0],
        [widthMm, bottom],
      ]),
      ...(more > 0
        ? [written([0, bottom + size], words.morePlaces(more), { size, colour: palette.quiet })]
        : []),
    ],
    { cloth: 'purl', text: words.purlSide },
    size,
  );
}

function needleScale(map: BedMap, needleMm: number, leftOf: PlaceAt, size: number): readonly Drawn[] {
  const { needles, marginNeedles, leftNeedles } = map;
  const numberOf = (place: number): number =>
    place < leftNeedles ? leftNeedles - place : place - leftNeedles + 1;
  const tickEvery = needleMm >= 0.8 ? 1 : needleMm >= 0.2 ? 5 : 10;
  const ticks = Array.from({ length: needles }, (_, place) => {
    const number = numberOf(place);
    if (number % tickEvery !== 0 && number !== 1) return '';
    const x = leftOf(place + 0.5);
    return lineFrom([x, number % 10 === 0 ? -1.6 : -0.9], [x, 0], { 'stroke-width': 0.15 });
  });
  const margin = (place: number): string =>
    element('rect', {
      x: leftOf(place),
      y: -1.7,
      width: marginNeedles * needleMm,
      height: 1.7,
      fill: palette.rule,
    });
  const middle = leftOf(leftNeedles);
  return [
    within(
      lineFrom([leftOf(0), 0], [leftOf(needles), 0], { 'stroke-width': 0.4 }) +
        lineFrom([middle, -2.6], [middle, 1], { 'stroke-width': 0.5 }) +
        ticks.join('') +
        (marginNeedles > 0 ? margin(0) + margin(needles - marginNeedles) : ''),
    ),
    ...needleNames(map, numberOf, leftOf, size),
  ];
}

/** Ends first, then round numbers, as far as there is room between names. */
function needleNames(
  { needles }: BedMap,
  numberOf: (place: number) => number,
  leftOf: PlaceAt,
  size: number,
): readonly Drawn[] {
  const roomMm = textWidth('L200', size) + 1;
  const round = Array.from({ length: needles }, (_, place) => place).filter(
    (place) => numberOf(place) % 10 === 0,
  );
  const inOrder = [
    0,
    needles - 1,
    ...round.toSorted((a, b) => (numberOf(b) % 50 === 0 ? 1 : 0) - (numberOf(a) % 50 === 0 ? 1 : 0)),
  ];
  const taken: number[] = [];
  return inOrder.flatMap((place) => {
    const x = leftOf(place + 0.5);
    if (taken.some((other) => Math.abs(other - x) < roomMm)) return [];
    taken.push(x);
    return [
      written([x, -2.9], formatNeedle(needles, place), { anchor: 'middle', size, colour: palette.quiet }),
    ];
  });
}

interface LaneRoom {
  readonly top: number;
  readonly leftOf: PlaceAt;
  readonly size: number;
  /** Where the bed begins, right of the rows' names, and where it ends. */
  readonly fromMm: number;
  readonly widthMm: number;
}

/** Two bars joined by the way the work crawls: as it is hung above, at its last row there below. */
function lane(hanging: HangingOnBed, words: Words['sheet'], room: LaneRoom): readonly Drawn[] {
  const { top, leftOf, size } = room;
  const { hung, last } = hanging;
  const [first, then] = labelsOf(hanging, words);
  const barMm = size * 1.3;
  const endY = top + size * 1.7;
  const corner = (place: number, y: number): Point => [leftOf(place), y];
  const sweep = element('polygon', {
    points: [
      corner(hung.left, top + barMm),
      corner(hung.right + 1, top + barMm),
      corner(last.right + 1, endY),
      corner(last.left, endY),
    ]
      .map(([x, y]) => `${x},${y}`)
      .join(' '),
    fill: palette.pale,
  });
  return [within(sweep), ...bar(hung, first, top, room), ...bar(last, then, endY, room)];
}

/** When the work hangs where the two bars show it. */
const labelsOf = (
  { fromRow, throughRow }: HangingOnBed,
  words: Words['sheet'],
): readonly [hung: string, last: string] => [
  fromRow === 1 ? words.hungForRow : words.hungAfter(fromRow - 1),
  words.atRow(throughRow),
];

/** The row stands before the bed, the edge needles at the ends of the bar, or in it where the bed is over. */
function bar(
  edges: Edges,
  text: string,
  y: number,
  { leftOf, size, fromMm, widthMm }: LaneRoom,
): readonly Drawn[] {
  const [from, to] = [leftOf(edges.left), leftOf(edges.right + 1)];
  const baseline = y + size;
  const names = {
    left: textWidth(edges.leftName, size) * 1.06 + 1,
    right: textWidth(edges.rightName, size) * 1.06 + 1,
  };
  const both = `${edges.leftName}–${edges.rightName}`;
  const isLong = to - from >= names.left + names.right + 1;
  const hasNoRoomLeft = from - names.left < fromMm;
  const leftInside = isLong && hasNoRoomLeft;
  // Before a bar that is too short for a name its row would be written over: both names then follow it.
  const namesFollow = !isLong && hasNoRoomLeft;
  const rightInside = isLong && to + names.right > widthMm;
  const box = element('rect', {
    x: from,
    y,
    width: to - from,
    height: size * 1.3,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': 0.3,
    class: 'hanging',
  });
  return [
    within(box),
    written([0, baseline], text, { size, colour: palette.quiet }),
    ...(namesFollow
      ? []
      : [
          written([leftInside ? from + 0.8 : from - 0.8, baseline], edges.leftName, {
            size,
            weight: 700,
            anchor: leftInside ? 'start' : 'end',
          }),
        ]),
    written([rightInside ? to - 0.8 : to + 0.8, baseline], namesFollow ? both : edges.rightName, {
      size,
      weight: 700,
      anchor: rightInside ? 'end' : 'start',
    }),
  ];
}
