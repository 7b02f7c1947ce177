/** The hem from the side, its fold up and the inside of the bag to the left; what it measures is written to scale, layers apart are not. */
import type { Hem } from '../../planning/hem.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { drawingOf, measure, reaching, within, written } from './drawn.ts';
import { type Drawing, element, lineFrom, pair, palette, strokePath } from './element.ts';

/** On paper: a layer of the hem, the gap between the two, and how far the cloth goes on below the cord. */
const [layerMm, gapMm, belowMm] = [17, 5, 6] as const;

export function hemDiagram(hem: Hem, { sheet, amounts }: Words): Drawing {
  const cordY = (layerMm * hem.foldToCordCm) / hem.heightCm;
  // Where the hem is low against what lies above the cord, the cloth between is drawn shortened.
  const cord = Math.min(cordY, layerMm + 14);
  const [inner, outer] = [-gapMm, 0] as const;
  const foot = cord + belowMm;
  const cloth = `M${pair([outer, foot])}V${gapMm / 2}A${gapMm / 2} ${gapMm / 2} 0 0 0 ${pair([inner, gapMm / 2])}V${layerMm}`;
  const reach: readonly Point[] = [
    [inner - 1, -0.8],
    [outer + 1, foot],
  ];
  // Names stand below each other, however near what they name.
  const cordName = Math.abs(cord - layerMm) < 3.4 ? layerMm + 4.3 : cord + 0.9;
  return drawingOf(
    sheet.shows.hem(hem.heightCm),
    [
      reaching(strokePath(cloth, { 'stroke-width': 1.6, stroke: palette.rule, class: 'hem' }), reach),
      within(
        lineFrom([inner - 0.8, layerMm], [outer + 0.8, layerMm], {
          stroke: palette.thread,
          'stroke-width': 0.9,
          class: 'chain',
        }),
      ),
      within(element('circle', { cx: outer, cy: cord, r: 1, fill: palette.ink })),
      written([inner - 2.2, layerMm + 0.9], sheet.hemChain, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, gapMm / 2], sheet.hemFold, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, cordName], sheet.hemCord, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, Math.max(foot, cordName + 3.4)], sheet.hemInside, { anchor: 'end', size: 2.5 }),
      ...measure([outer + 4, 0], [outer + 4, layerMm], amounts.length(hem.heightCm)),
      ...measure([outer + 16, 0], [outer + 16, cord], amounts.length(hem.foldToCordCm)),
    ],
    null,
  );
}
