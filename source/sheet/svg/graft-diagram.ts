import { say } from '../../shared/say.ts';
import { biteLoops } from '../../steps/graft.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawing, pair, palette, strokePath, textAt } from './element.ts';

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
      return `M${pair([from[0] - 7, 4])}C${pair([from[0] - 4, 8])} ${pair([from[0] - 1, 4])} ${pair(from)}L${pair(to)}`;
    const bulge = before[1] === edgeB ? 3.6 : -3.6;
    return `C${pair([before[0], before[1] + bulge])} ${pair([from[0], from[1] + bulge])} ${pair(from)}L${pair(to)}`;
  });
  const [lastX, lastY] = bites.at(-1)?.to ?? [0, 0];
  const tail = `C${pair([lastX, lastY - 3.6])} ${pair([lastX + 3, lastY - 3])} ${pair([lastX + 6, lastY - 2])}`;
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
    title: say`The graft: bite 1 opens A1 and finishes B1, bite 2 opens B2 and finishes A1, and so on`,
    body:
      openLoops('A', 3) +
      openLoops('B', 4) +
      strokePath(thread.join('') + tail, { 'stroke-width': 0.6 }) +
      numbers.join(''),
  };
}

function openLoops(letter: 'A' | 'B', count: number): string {
  const [from, turn, label] = letter === 'A' ? [3, 13.6, 2.2] : [24, 13.4, 27.2];
  return Array.from({ length: count }, (_, i) => {
    const name = `${letter}${i + 1}`;
    const [left, y] = loopLeg(name, -1);
    const [right] = loopLeg(name, 1);
    const d = `M${pair([left - 1.2, from])}L${pair([left - 0.5, y])}C${pair([left, turn])} ${pair([right, turn])} ${pair([right + 0.5, y])}L${pair([right + 1.2, from])}`;
    return (
      strokePath(d, { stroke: palette.rule, 'stroke-width': 1.1 }) +
      textAt([(left + right) / 2, label], name, { anchor: 'middle', size: 2.3 })
    );
  }).join('');
}
