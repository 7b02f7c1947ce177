import type { Plan } from '../../planning/plan.ts';
import { mixColours } from '../../shared/colour.ts';
import type { Words } from '../../wording/words.ts';
import { type BagShape, bagOf } from '../geometry/bag.ts';
import { cutToCells, formatAngle, plainText } from '../text.ts';
import { asDyed, type YarnSign, yarnSigns } from '../yarn-signs.ts';
import type { Line } from './ansi.ts';
import { type DrawOptions, formatPicture, legend, pixelsPerCell, wrapWords } from './picture.ts';
import { blankRaster, fill, type Label, type Pixel, paintRaster, type Raster, type View } from './raster.ts';

/** The finished bag lying flat, to scale: stripes, cord line with its eyelets, bottom seam, width and depth. */
export function drawBag(own: Plan, options: DrawOptions, words: Words): readonly string[] {
  const plan = asDyed(own);
  if (options.words || options.columns < 24 || options.rows < 6)
    return wrapWords(describeBag(plan, words), options);
  const bag = bagOf(plan);
  const depth = words.amounts.length(plan.size.depthCm);
  const width = words.amounts.length(plan.size.widthCm);
  const captionLines = options.rows >= 9 ? 3 : 2;
  const view = viewOf(plan, bag, options, options.columns - depth.length - 4, options.rows - captionLines);
  const { raster, columns, lines } = rasterise(bag, view, options);
  const isWhole = view.shownMm === null;
  const signs = yarnSigns(plan, options.colour);
  const picture = paintRaster(
    raster,
    (id) => pixelOf(plan, bag, signs, id, options.rowsDone ?? plan.rows, options.colour),
    [...cordLabels(bag, columns, view, options), ...cornerLabels(plan, columns, view, options)],
    options,
  );
  const beside = picture.map(
    (line, row): Line => [
      { text: '  ' },
      ...line,
      { text: isWhole ? sideOf(row, lines, depth, options) : '' },
    ],
  );
  const seam = { text: `  ${(options.glyphs === 'ascii' ? '=' : '═').repeat(columns)}` };
  const caption = `  ${words.pictures.sizeBelowCord(width, plan.size.depthBelowCordCm, formatAngle(plan.size.stripeAngleDeg))}`;
  const part = words.pictures.bagPart(plan.size.depthCm, toCome(plan, options));
  const captions: Line[] = [
    isWhole ? [seam] : [{ text: cutToCells(`  ${part}`, options.columns, '') }],
    [{ text: caption.slice(0, options.columns) }],
    legend(plan, options),
  ];
  return formatPicture([...beside, ...captions.slice(0, captionLines)], options);
}

/** How stripes that are not knitted yet are shown; null when none is left. */
const toCome = (
  { rows, knittedRows }: Plan,
  { rowsDone = rows, colour }: DrawOptions,
): 'pale' | 'small' | null => {
  if (rowsDone >= knittedRows) return null;
  return colour === 'none' ? 'small' : 'pale';
};

interface BagScale extends View {
  /** What is shown of a bag whose stripes would be too fine as a whole, from its upper left corner; null for all. */
  readonly shownMm: { readonly width: number; readonly depth: number } | null;
}

/** Pixels across a stripe below which its slant cannot be seen (rule of thumb). */
const leastStripePixels = 2.5;

/** To scale; where the stripes would be a chequerboard, a part of the bag so large that they are stripes. */
function viewOf(plan: Plan, bag: BagShape, options: DrawOptions, columns: number, lines: number): BagScale {
  const perCell = pixelsPerCell(options);
  const whole = Math.max(bag.widthMm / columns, (bag.depthMm / (lines * perCell)) * (perCell / 2));
  const stripeMm = Math.min(...plan.stripes.map(({ rows }) => rows)) * plan.gauge.rowMm;
  const pixelWidthMm = Math.min(whole, stripeMm / leastStripePixels);
  const pixelHeightMm = (pixelWidthMm * 2) / perCell;
  const shownMm = {
    width: Math.min(bag.widthMm, columns * pixelWidthMm),
    depth: Math.min(bag.depthMm, lines * perCell * pixelHeightMm),
  };
  return {
    leftMm: 0,
    topMm: bag.depthMm,
    pixelWidthMm,
    pixelHeightMm,
    shownMm: pixelWidthMm < whole ? shownMm : null,
  };
}

function rasterise(
  bag: BagShape,
  view: BagScale,
  options: DrawOptions,
): { raster: Raster; columns: number; lines: number } {
  const { width, depth } = view.shownMm ?? { width: bag.widthMm, depth: bag.depthMm };
  const columns = Math.max(1, Math.round(width / view.pixelWidthMm));
  const height = Math.max(1, Math.round(depth / view.pixelHeightMm));
  const raster = blankRaster(columns, height);
  for (const [i, piece] of bag.pieces.entries()) fill(raster, view, piece.shape, i + 1);
  if (bag.hem) fill(raster, view, bag.hem.shape, bag.pieces.length + 1);
  return { raster, columns, lines: Math.ceil(height / pixelsPerCell(options)) };
}

/** How far a stripe that is not knitted yet pales towards grey. */
const paleness = 0.6;

function pixelOf(
  plan: Plan,
  bag: BagShape,
  signs: ReadonlyMap<string, YarnSign>,
  id: number,
  rowsDone: number,
  depth: DrawOptions['colour'],
): Pixel {
  const piece = bag.pieces[id - 1];
  const yarn = signs.get(piece?.yarn ?? bag.hem?.yarn ?? plan.cord.yarn);
  if (!yarn) throw new Error(`no piece ${id}`);
  const firstRow = piece ? plan.stripes[piece.stripe - 1]?.firstRow : plan.knittedRows;
  const open = (firstRow ?? 0) > rowsDone;
  if (!open) return { yarn, open };
  // Of 16 colours none is the paler one of another, so every second pixel is left out.
  if (depth === '16') return { yarn: { ...yarn, pattern: 'plain' }, open, isSparse: true };
  return { yarn: { ...yarn, colour: mixColours(yarn.colour, '#808080', paleness) }, open };
}

/** A hole for each eyelet and a dash where the cord shows; a broken line where holes would run together. */
function cordLabels(bag: BagShape, columns: number, view: BagScale, options: DrawOptions): readonly Label[] {
  const row = Math.floor((view.topMm - bag.cordMm) / view.pixelHeightMm / pixelsPerCell(options));
  const shownMm = columns * view.pixelWidthMm;
  const columnOf = (x: number): number => Math.min(Math.floor(x / view.pixelWidthMm), columns - 1);
  const [dash, hole, broken] = options.glyphs === 'ascii' ? ['-', 'o', '- '] : ['─', '○', '─ '];
  const eyelets = bag.eyelets.filter(({ at: [x] }) => x < shownMm || view.shownMm === null);
  const outside = bag.cordOutside.filter(([[from]]) => from < shownMm || view.shownMm === null);
  if (eyelets.length * 2 > columns) {
    return [{ row, column: 0, text: broken.repeat(columns).slice(0, columns) }];
  }
  const dashes = outside.map(([[from], [to]]) => ({
    row,
    column: columnOf(from),
    text: dash.repeat(columnOf(to) - columnOf(from) + 1),
  }));
  return [...dashes, ...eyelets.map(({ at: [x] }) => ({ row, column: columnOf(x), text: hole }))];
}

/** Where the corners of a boxed bottom will be sewn across: half its depth along the seam, and up the side. */
function cornerLabels(
  { brief }: Plan,
  columns: number,
  view: BagScale,
  options: DrawOptions,
): readonly Label[] {
  const halfMm = brief.boxedCm * 5;
  if (halfMm === 0 || view.shownMm) return [];
  const across = Math.max(1, Math.min(Math.floor(columns / 2), Math.round(halfMm / view.pixelWidthMm)));
  const lines = Math.round(view.topMm / view.pixelHeightMm / pixelsPerCell(options));
  const high = Math.max(1, Math.round(halfMm / view.pixelHeightMm / pixelsPerCell(options)));
  const [bar, down] = options.glyphs === 'ascii' ? ['-', '|'] : ['╌', '╎'];
  const top = Math.max(0, lines - high);
  const rows = Array.from({ length: lines - top }, (_, i) => top + i);
  return [
    ...rows
      .slice(1)
      .flatMap((row) => [across - 1, columns - across].map((column) => ({ row, column, text: down }))),
    { row: top, column: 0, text: bar.repeat(across) },
    { row: top, column: columns - across, text: bar.repeat(across) },
  ];
}

/** A bracket down the side, the depth written half way. */
function sideOf(row: number, lines: number, depth: string, { glyphs }: DrawOptions): string {
  if (row === Math.floor(lines / 2)) return `  ${depth}`;
  const [top, bar, bottom] = glyphs === 'ascii' ? ['+', '|', '+'] : ['┐', '│', '┘'];
  return `  ${row === 0 ? top : row === lines - 1 ? bottom : bar}`;
}

/** In sentences, for screen readers and for windows too small for a picture. */
function describeBag(plan: Plan, words: Words): readonly string[] {
  const { size, eyelets, brief, boxed, hem } = plan;
  const up = brief.crawl === 'right' ? 'right' : 'left';
  const yarns = [...yarnSigns(plan, 'none').keys()].map(plainText).join(', ');
  return [
    words.pictures.finishedBag(size.widthCm, size.depthCm, size.depthBelowCordCm),
    words.pictures.climbingStripes(yarns, up, formatAngle(size.stripeAngleDeg)),
    (brief.cord.draws === 2 ? words.pictures.cordsWay : words.pictures.cordWay)(
      eyelets.used.length,
      eyelets.made,
      bagOf(plan).ends ? 'front' : 'back',
    ),
    ...(hem ? [words.pictures.mouthHemmed(hem.heightCm)] : []),
    boxed
      ? words.pictures.bottomBoxed(boxed.baseWidthCm, boxed.baseDepthCm, boxed.sideCm)
      : words.pictures.bottomSewn,
  ];
}
