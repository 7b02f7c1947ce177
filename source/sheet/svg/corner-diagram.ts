/** A corner of a boxed bottom laid flat, to scale with its own sizes: the bottom seam on the side's fold, and the seam across it. */
import type { BoxedBottom } from '../../planning/boxed.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawing, element, pair, palette, pointList, strokePath } from './element.ts';
import { drawingOf, marked, measure, within, written } from './mark.ts';

/** Half of the seam across, and how far the folded sides go on below it. */
const [half, below] = [16, 7] as const;
const threadColour = '#b3204d';

/** Both layers end in folds at 45° to the bottom seam, so that the seam lies as far from the tip as it reaches to each side. */
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
      marked(
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
          stroke: threadColour,
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
