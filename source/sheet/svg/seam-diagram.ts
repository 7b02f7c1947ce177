import type { Words } from '../../wording/words.ts';
import { type Drawing, lineFrom, pair, palette, strokePath, textAt } from './element.ts';

/** Bars taken from the two sides in turn: drawn up on the left, still loose on the right. */
export function seamDiagram(words: Words): Drawing {
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
    const edge = [0, ...columns, 52].map((x) => pair([x, middle + side * open(x)]));
    const far = middle + side * 10.8;
    const d = `M${edge.join('L')}L${pair([52, far])}L${pair([0, far])}Z`;
    return strokePath(d, { fill: palette.pale, stroke: palette.rule, 'stroke-width': 0.2 });
  };
  const thread = columns.map((x, i) => {
    const [front, back] = [barAt(x, -1), barAt(x + step / 2, 1)];
    const start = i === 0 ? `M${pair([x - 1.4, front])}` : '';
    const across = `L${pair([x + 1.2, front])}C${pair([x + 2, front])} ${pair([x + 1.2, back])} ${pair([x + 2, back])}`;
    const next = barAt(x + step, -1);
    const backAcross = `L${pair([x + 4.4, back])}C${pair([x + 5.2, back])} ${pair([x + 4.2, next])} ${pair([x + 5, next])}`;
    return start + across + (i === columns.length - 1 ? `L${pair([x + 5.2, back])}` : backAcross);
  });
  return {
    widthMm: 52,
    heightMm: 22,
    title: words.say`The seam: one bar from the front, one from the back, in turn; then the thread is drawn up`,
    body: [
      cloth(-1),
      cloth(1),
      ...columns.map((x) => bar(x, -1) + bar(x + step / 2, 1)),
      strokePath(thread.join(''), { 'stroke-width': 0.6, 'stroke-linejoin': 'round' }),
      textAt([1.4, 3.4], words.say`front`, { size: 2.3 }),
      textAt([1.4, 20.6], words.say`back`, { size: 2.3 }),
    ].join(''),
  };
}
