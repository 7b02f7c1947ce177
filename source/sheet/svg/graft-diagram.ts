import type { Words } from '../../wording/words.ts';
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

/** Where the thread goes up and where it goes down again: A1 and B1, B2 and A1, A2 and B2 … as a knitted row does. */
function entriesOf(number: number): { readonly up: string; readonly down: string } {
  const loop = Math.ceil(number / 2);
  return number % 2 === 1 ? { up: `A${loop}`, down: `B${loop}` } : { up: `B${loop + 1}`, down: `A${loop}` };
}

/** The first stitches of the graft: the thread runs as a knitted row would. */
export function graftDiagram(words: Words): Drawing {
  const stitches = [1, 2, 3, 4, 5, 6].map((number) => {
    const { up, down } = entriesOf(number);
    return { number, from: loopLeg(up, -1), to: loopLeg(down, 1) };
  });
  const thread = stitches.map(({ from, to }, i) => {
    const before = stitches[i - 1]?.to;
    if (!before)
      return `M${pair([from[0] - 7, 4])}C${pair([from[0] - 4, 8])} ${pair([from[0] - 1, 4])} ${pair(from)}L${pair(to)}`;
    const bulge = before[1] === edgeB ? 3.6 : -3.6;
    return `C${pair([before[0], before[1] + bulge])} ${pair([from[0], from[1] + bulge])} ${pair(from)}L${pair(to)}`;
  });
  const [lastX, lastY] = stitches.at(-1)?.to ?? [0, 0];
  const tail = `C${pair([lastX, lastY - 3.6])} ${pair([lastX + 3, lastY - 3])} ${pair([lastX + 6, lastY - 2])}`;
  const numbers = stitches.map(({ number, from, to }) => {
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
    title: words.say`The graft: up through A1, down through B1, up through B2, down through A1, and so on`,
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
