/** The bottom seam, knit side out: the thread goes under a bar of one side, then of the other; drawn up on the left, loose on the right. And the seam across a corner. */
import type { BoxedBottom } from '../../planning/boxed.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { arrow, drawingOf, measure, reaching, within, written } from './drawn.ts';
import { type Drawing, element, pair, palette, pointList, strokePath } from './element.ts';

const [widthMm, middle, step, bars, deepMm] = [60, 9.2, 10, 5, 9] as const;

/** How far each edge stands from the middle. */
const gapAt = (x: number): number => Math.max(0.3, Math.min(3, (x - 15) / 6));
const barAt = (x: number, side: -1 | 1): number => middle + side * (gapAt(x) + 3.6);
const columns = Array.from({ length: bars }, (_, i) => 6 + i * step);

function cloth(side: -1 | 1): string {
  const edge = [0, ...columns, widthMm].map((x) => pair([x, middle + side * gapAt(x)]));
  const far = middle + side * deepMm;
  return strokePath(`M${edge.join('L')}L${pair([widthMm, far])}L${pair([0, far])}Z`, {
    fill: palette.pale,
    stroke: palette.rule,
    'stroke-width': 0.25,
  });
}

/** A bar lies over the thread: it is drawn after it, with a pale edge. */
function bar(x: number, side: -1 | 1, number: number): string {
  const y = barAt(x, side);
  const d = `M${pair([x, y - 2.2])}L${pair([x, y + 2.2])}`;
  return (
    strokePath(d, { stroke: palette.pale, 'stroke-width': 2.2 }) +
    strokePath(d, {
      stroke: palette.rule,
      'stroke-width': 1.3,
      class: 'bar',
      'data-bar': `${side === -1 ? 'front' : 'back'}${number}`,
    })
  );
}

/** From under a bar of the front to under one of the back, and on to the next of the front. */
function threadPath(): string {
  const half = step / 2;
  const [first = 0] = columns;
  const start = `M${pair([0, barAt(first, -1)])}L${pair([first - 1.6, barAt(first, -1)])}`;
  const parts = columns.map((x, i) => {
    const [front, back, next] = [barAt(x, -1), barAt(x + half, 1), barAt(x + step, -1)];
    const under = `L${pair([x + 1.6, front])}`;
    const across = `C${pair([x + half - 1.4, front])} ${pair([x + 1.4, back])} ${pair([x + half - 1.6, back])}`;
    const underBack = `L${pair([x + half + 1.6, back])}`;
    if (i === bars - 1) return under + across + underBack;
    return `${under}${across}${underBack}C${pair([x + step - 1.4, back])} ${pair([x + half + 1.4, next])} ${pair([x + step - 1.6, next])}`;
  });
  return start + parts.join('');
}

export function seamDiagram(words: Words['sheet']): Drawing {
  const size = 2.8;
  const end = columns.at(-1) ?? 0;
  const endY = barAt(end + step / 2, 1);
  return drawingOf(
    words.shows.seam,
    [
      reaching(cloth(-1) + cloth(1), [
        [0, middle - deepMm],
        [widthMm, middle + deepMm],
      ]),
      within(
        strokePath(threadPath(), {
          stroke: palette.thread,
          'stroke-width': 1,
          'stroke-linejoin': 'round',
          class: 'thread',
        }),
      ),
      ...columns.flatMap((x, i) => [within(bar(x, -1, i + 1)), within(bar(x + step / 2, 1, i + 1))]),
      arrow([end + step / 2 + 2.2, endY], [widthMm + 4, endY], 0.5),
      written([1.6, middle - deepMm + 2.7], words.front, { size }),
      written([1.6, middle + deepMm - 0.8], words.back, { size }),
    ],
    { cloth: 'knit', text: words.knitSide },
  );
}

/** Half of the seam across, and how far the folded sides go on below it. */
const [half, below] = [16, 7] as const;

/**
 * A corner of a boxed bottom laid flat, to scale with its own sizes: the bottom seam on the side's fold, and the seam across it.
 * Both layers end in folds at 45° to the bottom seam, so that the seam lies as far from the tip as it reaches to each side.
 */
export function cornerDiagram({ cornerSeamCm, fromTipCm }: BoxedBottom, { sheet, amounts }: Words): Drawing {
  const foot = half + below;
  const cloth: readonly Point[] = [
    [0, 0],
    [foot, foot],
    [-foot, foot],
  ];
  const [left, right]: readonly [Point, Point] = [
    [-half, half],
    [half, half],
  ];
  return drawingOf(
    sheet.shows.corner,
    [
      reaching(
        element('polygon', {
          points: pointList(cloth),
          fill: palette.pale,
          stroke: palette.rule,
          'stroke-width': 0.3,
        }),
        cloth,
      ),
      within(strokePath(`M0 0L${pair([0, foot])}`, { 'stroke-dasharray': '1.6 0.8', class: 'bottom-seam' })),
      within(
        strokePath(`M${pair(left)}L${pair(right)}`, {
          stroke: palette.thread,
          'stroke-width': 1,
          class: 'across',
        }),
      ),
      written([1.2, foot - 1.4], sheet.bottomSeam, { size: 2.5 }),
      ...measure([-half, foot + 2], [half, foot + 2], amounts.length(cornerSeamCm)),
      ...measure([foot + 2, 0], [foot + 2, half], amounts.length(fromTipCm)),
    ],
    { cloth: 'purl', text: sheet.purlSide },
  );
}
