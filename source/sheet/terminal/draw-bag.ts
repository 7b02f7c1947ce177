import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
import { formatLength, metric } from '../../shared/units.ts';
import { type Bag, bagOf } from '../geometry/bag.ts';
import { formatAngle } from '../measure.ts';
import { markYarns, type YarnMark } from '../yarn-marks.ts';
import type { Line } from './ansi.ts';
import { formatPicture, legend, wrapWords } from './caption.ts';
import { type DrawOptions, pixelsPerCell } from './options.ts';
import { type Label, paintRaster } from './paint.ts';
import { blankRaster, fill, type Raster, type View } from './raster.ts';
import { describeBag } from './words.ts';

/** The finished bag lying flat, to scale: stripes, cord line with its eyelets, bottom seam, width and depth. */
export function drawBag(plan: Plan, options: DrawOptions): readonly string[] {
  if (options.words || options.columns < 24 || options.rows < 6)
    return wrapWords(describeBag(plan, options), options);
  const units = options.units ?? metric;
  const bag = bagOf(plan);
  const depth = formatLength(plan.size.depthCm, units);
  const width = formatLength(plan.size.widthCm, units);
  const captionLines = options.rows >= 9 ? 3 : 2;
  const view = viewOf(bag, options, options.columns - depth.length - 4, options.rows - captionLines);
  const { raster, columns, lines } = rasterise(bag, view, options);
  const marks = markYarns(plan, options.colour);
  const picture = paintRaster(
    raster,
    (mark) => ({ yarn: yarnOf(plan, bag, marks, mark), open: false }),
    cordLabels(bag, columns, view, options),
    options,
  );
  const beside = picture.map(
    (line, row): Line => [{ text: '  ' }, ...line, { text: sideOf(row, lines, depth, options) }],
  );
  const seam = { text: `  ${(options.glyphs === 'ascii' ? '=' : '═').repeat(columns)}` };
  const caption = `  ${say`${width} wide, ${formatLength(plan.size.depthBelowCordCm, units)} below the cord, stripes at ${formatAngle(plan.size.stripeAngleDeg)}`}`;
  const captions: Line[] = [[seam], [{ text: caption.slice(0, options.columns) }], legend(plan, options)];
  return formatPicture([...beside, ...captions.slice(0, captionLines)], options);
}

function viewOf(bag: Bag, options: DrawOptions, columns: number, lines: number): View {
  const perCell = pixelsPerCell(options);
  const pixelWidthMm = Math.max(bag.widthMm / columns, (bag.depthMm / (lines * perCell)) * (perCell / 2));
  return { leftMm: 0, topMm: bag.depthMm, pixelWidthMm, pixelHeightMm: (pixelWidthMm * 2) / perCell };
}

function rasterise(
  bag: Bag,
  view: View,
  options: DrawOptions,
): { raster: Raster; columns: number; lines: number } {
  const columns = Math.max(1, Math.round(bag.widthMm / view.pixelWidthMm));
  const height = Math.max(1, Math.round(bag.depthMm / view.pixelHeightMm));
  const raster = blankRaster(columns, height);
  for (const [i, piece] of bag.pieces.entries()) fill(raster, view, piece.shape, i + 1);
  return { raster, columns, lines: Math.ceil(height / pixelsPerCell(options)) };
}

function yarnOf(plan: Plan, bag: Bag, marks: ReadonlyMap<string, YarnMark>, mark: number): YarnMark {
  const found = marks.get(bag.pieces[mark - 1]?.yarn ?? plan.cord.yarn);
  if (!found) throw new Error(`no piece ${mark}`);
  return found;
}

/** A hole for each eyelet and a dash where the cord shows; a broken line where holes would run together. */
function cordLabels(bag: Bag, columns: number, view: View, options: DrawOptions): readonly Label[] {
  const row = Math.floor((view.topMm - bag.cordMm) / view.pixelHeightMm / pixelsPerCell(options));
  const columnOf = (x: number): number => Math.min(Math.floor(x / view.pixelWidthMm), columns - 1);
  const [dash, hole, broken] = options.glyphs === 'ascii' ? ['-', 'o', '- '] : ['─', '○', '─ '];
  if (bag.eyelets.length * 2 > columns) {
    return [{ row, column: 0, text: broken.repeat(columns).slice(0, columns) }];
  }
  const dashes = bag.cordOutside.map(([[from], [to]]) => ({
    row,
    column: columnOf(from),
    text: dash.repeat(columnOf(to) - columnOf(from) + 1),
  }));
  return [...dashes, ...bag.eyelets.map(({ at: [x] }) => ({ row, column: columnOf(x), text: hole }))];
}

/** A bracket down the side, the depth written half way. */
function sideOf(row: number, lines: number, depth: string, { glyphs }: DrawOptions): string {
  if (row === Math.floor(lines / 2)) return `  ${depth}`;
  const [top, bar, bottom] = glyphs === 'ascii' ? ['+', '|', '+'] : ['┐', '│', '┘'];
  return `  ${row === 0 ? top : row === lines - 1 ? bottom : bar}`;
}
