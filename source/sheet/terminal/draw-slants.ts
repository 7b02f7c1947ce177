/** The slants to choose from, side by side: the bag's own stripes at the angle that each interval between moves gives. */

import type { Slant } from '../../planning/choose-size.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { yarnSigns } from '../yarn-signs.ts';
import type { Line } from './ansi.ts';
import { type DrawOptions, formatPicture, pixelsPerCell } from './picture.ts';
import { blankRaster, paintRaster, type Raster } from './raster.ts';

/** Widest patch, the room between two, and how many pixels high two rows of a stripe are: enough for a slant to be seen. */
const [widest, apart, stripePixels] = [16, 3, 3] as const;
/** As many stripes as repeat in a patch. */
const mostStripes = 6;

export function drawSlants(
  plan: Plan,
  slants: readonly Slant[],
  options: DrawOptions,
  { pictures: say }: Words,
): readonly string[] {
  const perCell = pixelsPerCell(options);
  const width = Math.min(widest, Math.floor((options.columns - 2) / slants.length) - apart);
  const lines = options.rows - 1;
  if (width < 6 || lines < 2) return [];
  const raster = blankRaster((width + apart) * slants.length, lines * perCell);
  const stripes = plan.stripes.slice(0, mostStripes);
  for (const [i, { angleDeg }] of slants.entries())
    fillPatch(raster, { left: i * (width + apart), width, cellHigh: 2 / perCell }, angleDeg, plan, stripes);
  const signs = yarnSigns(plan, options.colour);
  const picture = paintRaster(
    raster,
    (id) => {
      const yarn = signs.get(stripes[id - 1]?.yarn ?? '');
      if (!yarn) throw new Error(`no stripe ${id}`);
      return { yarn, open: false };
    },
    [],
    options,
  );
  const names: Line = [
    { text: '  ' },
    ...slants.map(({ angleDeg, shapeEveryRows }) => ({
      text: say
        .slant(Math.round(angleDeg), shapeEveryRows)
        .slice(0, width + apart - 1)
        .padEnd(width + apart),
      ...(shapeEveryRows === plan.brief.shapeEveryRows ? { bold: true } : {}),
    })),
  ];
  return formatPicture([...picture.map((line): Line => [{ text: '  ' }, ...line]), names], options);
}

interface Patch {
  readonly left: number;
  readonly width: number;
  /** Height of a pixel in widths of one. */
  readonly cellHigh: number;
}

/** Each pixel takes the stripe that lies under its middle, counted across the stripes from the lower left corner. */
function fillPatch(
  raster: Raster,
  { left, width, cellHigh }: Patch,
  angleDeg: number,
  { brief }: Plan,
  stripes: Plan['stripes'],
): void {
  const turn = (angleDeg * Math.PI) / 180;
  const lean = brief.crawl === 'left' ? 1 : -1;
  const heights = stripes.map(({ rows }) => (rows / 2) * stripePixels);
  const repeat = heights.reduce((sum, height) => sum + height, 0);
  for (let y = 0; y < raster.height; y++)
    for (let x = 0; x < width; x++) {
      const up = (raster.height - y - 0.5) * cellHigh;
      const across = lean * (x + 0.5) * Math.sin(turn) + up * Math.cos(turn);
      let rest = ((across % repeat) + repeat) % repeat;
      let stripe = 0;
      while (stripe < heights.length - 1 && rest >= (heights[stripe] ?? 0)) rest -= heights[stripe++] ?? 0;
      raster.ids[y * raster.width + left + x] = stripe + 1;
    }
}
