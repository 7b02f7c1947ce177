/**
 * The mouth laid out flat, seen from outside: which eyelets the cord goes through, in and out, from the graft round to the
 * graft again. As many holes stand in a line as fit; every fifth has its number, so that no line has to be counted through.
 */

import { threadingOrder } from '../../planning/eyelets.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Drawn, drawingOf, reaching, within, written } from './drawn.ts';
import { type Drawing, element, lineFrom, pair, palette, strokePath, textWidth } from './element.ts';

const [leastStepMm, mostStepMm] = [5.6, 9];
const lineMm = 10.5;
const size = 2.7;

interface Hole {
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** Which of the holes in use it is, from 1; null where the cord passes by. */
  readonly hole: number | null;
  /** Its place on the way of a second cord. */
  readonly second: number | null;
}

export function threadingDiagram({ eyelets }: Plan, words: Words['sheet'], widthMm: number): Drawing {
  const { made, used } = eyelets;
  const labelMm = textWidth(words.graftLine, size) + 2;
  const perLine = Math.floor((widthMm - 2 * labelMm) / leastStepMm) - 1;
  const lines = Math.max(1, Math.ceil(made / perLine));
  const inLine = Math.ceil(made / lines);
  const step = Math.min(mostStepMm, (widthMm - 2 * labelMm) / (inLine + 1));
  const placeIn = (order: readonly number[]) => new Map(order.map((number, i) => [number, i + 1]));
  const holeOf = placeIn(used);
  const secondOf = placeIn(eyelets.secondFrom === null ? [] : threadingOrder(eyelets, 'second'));
  const rows = Array.from({ length: lines }, (_, line): readonly Hole[] =>
    Array.from({ length: Math.min(inLine, made - line * inLine) }, (_, i) => {
      const number = line * inLine + i + 1;
      const [hole = null, second = null] = [holeOf.get(number), secondOf.get(number)];
      return { number, x: (i + 1) * step, y: line * lineMm, hole, second };
    }),
  );
  let before = 0;
  const parts = rows.flatMap((places, line): readonly Drawn[] => {
    const y = line * lineMm;
    const end = (places.length + 1) * step;
    const [isFirst, isLast] = [line === 0, line === lines - 1];
    const from = before;
    before = places.findLast(({ hole }) => hole !== null)?.hole ?? before;
    return [
      within(lineFrom([0, y], [end, y], { stroke: palette.rule, 'stroke-width': 0.25 })),
      reaching('', [
        [0, y - 3],
        [end, y + 3],
      ]),
      ...strands(places, from, end).map(within),
      ...(eyelets.secondFrom === null ? [] : secondStrands(places, eyelets, from, end).map(within)),
      ...places.map((place) => within(holeAt(place))),
      ...places
        .filter(({ number }) => number % 5 === 0 || number === 1 || number === made)
        .map(({ number, x }) => written([x, y + 5.6], String(number), { anchor: 'middle', size })),
      written([-1.5, y + 0.9], isFirst ? words.graftLine : '…', { anchor: 'end', size }),
      written([end + 1.5, y + 0.9], isLast ? words.graftLine : '…', { size }),
    ];
  });
  return drawingOf(
    (eyelets.secondFrom === null ? words.shows.threading : words.shows.threadingOfTwo)(used.length, made),
    [
      ...parts,
      written([0, lines * lineMm - 1], words.cordOutside, { size, colour: palette.quiet }),
      ...(eyelets.secondFrom === null
        ? []
        : [
            written([0, lines * lineMm + 2.8], words.secondCord(eyelets.secondFrom), {
              size,
              colour: palette.thread,
            }),
          ]),
    ],
    { cloth: 'knit', text: words.knitSide },
  );
}

function holeAt({ number, x, y, hole, second }: Hole): string {
  return element('circle', {
    cx: x,
    cy: y,
    r: 1.15,
    fill: hole === null ? palette.paper : palette.ink,
    stroke: palette.ink,
    'stroke-width': 0.3,
    class: 'eyelet',
    'data-eyelet': number,
    'data-hole': hole,
    'data-second': second,
  });
}

/** The cord between the holes of a line, the first of them after `before` holes: outside after an even count, else inside. */
function strands(places: readonly Hole[], before: number, end: number): readonly string[] {
  const y = places[0]?.y ?? 0;
  const stops = [0, ...places.filter(({ hole }) => hole !== null).map(({ x }) => x), end];
  return stops.slice(1).map((x, i) => {
    const from = stops[i] ?? 0;
    const outside = (before + i) % 2 === 0;
    const bend = outside ? -5 : 5;
    return strokePath(`M${pair([from, y])}Q${pair([(from + x) / 2, y + bend])} ${pair([x, y])}`, {
      ...(outside ? { 'stroke-width': 0.8 } : { 'stroke-width': 0.5, 'stroke-dasharray': '0.9 0.8' }),
      class: `cord ${outside ? 'outside' : 'inside'}`,
    });
  });
}

/** The second cord, outside where the first is inside; its ends hang in the gap before the hole where it begins. */
function secondStrands(
  places: readonly Hole[],
  { used, secondFrom }: Plan['eyelets'],
  before: number,
  end: number,
): readonly string[] {
  const y = places[0]?.y ?? 0;
  const endsAt = used.indexOf(secondFrom ?? 0);
  const stops = [0, ...places.filter(({ hole }) => hole !== null).map(({ x }) => x), end];
  return stops.slice(1).flatMap((x, i) => {
    const from = stops[i] ?? 0;
    const outside = (before + i) % 2 === 1;
    const style = {
      stroke: palette.thread,
      ...(outside ? { 'stroke-width': 0.8 } : { 'stroke-width': 0.5, 'stroke-dasharray': '0.9 0.8' }),
      class: `second ${outside ? 'outside' : 'inside'}`,
    };
    if (before + i !== endsAt) {
      const bend = outside ? -5 : 5;
      return [strokePath(`M${pair([from, y])}Q${pair([(from + x) / 2, y + bend])} ${pair([x, y])}`, style)];
    }
    const middle = (from + x) / 2;
    return [
      [from, middle - 0.5],
      [x, middle + 0.5],
    ].map(([hole = 0, hangs = 0]) =>
      strokePath(`M${pair([hole, y])}Q${pair([hangs, y - 1])} ${pair([hangs, y - 5])}`, {
        ...style,
        class: 'second-end',
      }),
    );
  });
}
