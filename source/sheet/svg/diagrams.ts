/** Small line drawings for the work by hand: what the needle or the tool does, not to scale. */

import type { Plan } from '../../planning/plan.ts';
import { biteLoops } from '../../steps/graft.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawing, element, lineFrom, palette, round, textAt } from './element.ts';

const path = (d: string, attributes: Record<string, string | number> = {}): string =>
  element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 0.3, ...attributes });
const at = ([x, y]: Point): string => `${round(x)} ${round(y)}`;

const graftPitch = 11.5;
const [edgeA, edgeB] = [8.6, 18.4];

/** The left (-1) or right (1) leg of a loop such as `A2`; B lies half a stitch before A. */
function loopLeg(loop: string, leg: -1 | 1): Point {
  const number = Number(loop.slice(1));
  const middle = 3 + (loop.startsWith('A') ? number : number - 0.5) * graftPitch;
  return [middle + leg * 2.2, loop.startsWith('A') ? edgeA : edgeB];
}

/** The first bites of the graft: the thread runs as a knitted row would. */
export function graftDiagram(): Drawing {
  const bites = [1, 2, 3, 4, 5, 6].map((number) => {
    const { opens, finishes } = biteLoops(number);
    return { number, from: loopLeg(opens, -1), to: loopLeg(finishes, 1) };
  });
  const thread = bites.map(({ from, to }, i) => {
    const before = bites[i - 1]?.to;
    if (!before)
      return `M${at([from[0] - 7, 4])}C${at([from[0] - 4, 8])} ${at([from[0] - 1, 4])} ${at(from)}L${at(to)}`;
    const bulge = before[1] === edgeB ? 3.6 : -3.6;
    return `C${at([before[0], before[1] + bulge])} ${at([from[0], from[1] + bulge])} ${at(from)}L${at(to)}`;
  });
  const [lastX, lastY] = bites.at(-1)?.to ?? [0, 0];
  const tail = `C${at([lastX, lastY - 3.6])} ${at([lastX + 3, lastY - 3])} ${at([lastX + 6, lastY - 2])}`;
  const numbers = bites.map(({ number, from, to }) => {
    const isOdd = number % 2 === 1;
    const middle = (from[0] + to[0]) / 2 + (isOdd ? -1 : 1);
    return textAt([middle, 14.4], String(number), {
      anchor: isOdd ? 'end' : 'start',
      size: 2.5,
      weight: 700,
    });
  });
  return {
    widthMm: 52,
    heightMm: 28,
    title: 'The graft: bite 1 opens A1 and finishes B1, bite 2 opens B2 and finishes A1, and so on',
    body:
      openLoops('A', 3) +
      openLoops('B', 4) +
      path(thread.join('') + tail, { 'stroke-width': 0.6 }) +
      numbers.join(''),
  };
}

function openLoops(letter: 'A' | 'B', count: number): string {
  const [from, turn, label] = letter === 'A' ? [3, 13.6, 2.2] : [24, 13.4, 27.2];
  return Array.from({ length: count }, (_, i) => {
    const name = `${letter}${i + 1}`;
    const [left, y] = loopLeg(name, -1);
    const [right] = loopLeg(name, 1);
    const d = `M${at([left - 1.2, from])}L${at([left - 0.5, y])}C${at([left, turn])} ${at([right, turn])} ${at([right + 0.5, y])}L${at([right + 1.2, from])}`;
    return (
      path(d, { stroke: palette.rule, 'stroke-width': 1.1 }) +
      textAt([(left + right) / 2, label], name, { anchor: 'middle', size: 2.3 })
    );
  }).join('');
}

/** Bars taken from the two sides in turn: drawn up on the left, still loose on the right. */
export function seamDiagram(): Drawing {
  const step = 6.4;
  const middle = 11;
  const columns = Array.from({ length: 7 }, (_, i) => 4 + i * step);
  const open = (x: number): number => Math.max(0.15, Math.min(3.4, (x - 14) / 4.5));
  const barAt = (x: number, side: -1 | 1): number => middle + side * (open(x) + 2.2);
  const bar = (x: number, side: -1 | 1): string =>
    lineFrom([x, barAt(x, side) - 1.3], [x, barAt(x, side) + 1.3], {
      'stroke-width': 0.8,
      stroke: palette.rule,
    });
  const cloth = (side: -1 | 1): string => {
    const edge = [0, ...columns, 52].map((x) => at([x, middle + side * open(x)]));
    const far = middle + side * 10.8;
    const d = `M${edge.join('L')}L${at([52, far])}L${at([0, far])}Z`;
    return path(d, { fill: palette.pale, stroke: palette.rule, 'stroke-width': 0.2 });
  };
  const thread = columns.map((x, i) => {
    const [front, back] = [barAt(x, -1), barAt(x + step / 2, 1)];
    const start = i === 0 ? `M${at([x - 1.4, front])}` : '';
    const across = `L${at([x + 1.2, front])}C${at([x + 2, front])} ${at([x + 1.2, back])} ${at([x + 2, back])}`;
    const next = barAt(x + step, -1);
    const backAcross = `L${at([x + 4.4, back])}C${at([x + 5.2, back])} ${at([x + 4.2, next])} ${at([x + 5, next])}`;
    return start + across + (i === columns.length - 1 ? `L${at([x + 5.2, back])}` : backAcross);
  });
  return {
    widthMm: 52,
    heightMm: 22,
    title: 'The seam: one bar from the front, one from the back, in turn; then the thread is drawn up',
    body: [
      cloth(-1),
      cloth(1),
      ...columns.map((x) => bar(x, -1) + bar(x + step / 2, 1)),
      path(thread.join(''), { 'stroke-width': 0.6, 'stroke-linejoin': 'round' }),
      textAt([1.4, 3.4], 'front', { size: 2.3 }),
      textAt([1.4, 20.6], 'back', { size: 2.3 }),
    ].join(''),
  };
}

const mostHoles = 40;

/** The mouth laid out flat: which eyelets the cord goes through, in and out, and the gap at the graft. */
export function threadingDiagram({ eyelets }: Plan, widthMm: number): Drawing {
  const shown = Math.min(eyelets.made, mostHoles);
  const isCut = eyelets.made > mostHoles;
  const numberAt = (i: number): number => (isCut && i >= shown / 2 ? eyelets.made - shown + i + 1 : i + 1);
  const step = widthMm / (shown + 1);
  const used = new Map(eyelets.used.map((number, i) => [number, i + 1]));
  const y = 8;
  const places = Array.from({ length: shown }, (_, i) => ({ number: numberAt(i), x: (i + 1) * step }));
  const stops: Point[] = [
    [0, 0],
    ...places
      .filter(({ number }) => used.has(number))
      .map(({ number, x }): Point => [x, used.get(number) ?? 0]),
    [widthMm, 0],
  ];
  const strands = stops.slice(1).map(([x], i) => {
    const [from, hole] = stops[i] ?? [0, 0];
    const outside = hole % 2 === 0;
    const bend = outside ? -3.4 : 3.4;
    return path(
      `M${at([from, y])}Q${at([(from + x) / 2, y + bend])} ${at([x, y])}`,
      outside ? { 'stroke-width': 0.6 } : { 'stroke-width': 0.4, 'stroke-dasharray': '0.7 0.6' },
    );
  });
  const holes = places.map(({ number, x }) =>
    element('circle', {
      cx: x,
      cy: y,
      r: Math.min(0.9, step * 0.3),
      fill: used.has(number) ? palette.ink : palette.paper,
      stroke: palette.ink,
      'stroke-width': 0.25,
    }),
  );
  const named = places.filter(
    ({ number }) =>
      number === 1 || number === eyelets.made || (eyelets.skipped.includes(number) && eyelets.made > 4),
  );
  return {
    widthMm,
    heightMm: 14.5,
    title: `The cord runs through ${eyelets.used.length} of ${eyelets.made} eyelets, in and out`,
    body: [
      textAt([0, 3], 'full line: outside; broken line: inside', { size: 2.3, colour: palette.quiet }),
      lineFrom([0, y], [widthMm, y], { stroke: palette.rule, 'stroke-width': 0.2 }),
      ...strands,
      ...holes,
      ...named.map(({ number, x }) =>
        textAt([x, 13.8], used.has(number) ? String(number) : `${number} passed by`, {
          anchor: 'middle',
          size: 2.3,
        }),
      ),
      isCut ? textAt([widthMm / 2, 3], '…', { anchor: 'middle' }) : '',
    ].join(''),
  };
}
