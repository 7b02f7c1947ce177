import { greatestCommonDivisor } from '../../planning/choose-size.ts';
import type { Plan } from '../../planning/plan.ts';
import type { KnittedStripe } from '../../planning/stripe-sequence.ts';
import { cellsOf } from '../../shared/plain-text.ts';
import type { Words } from '../../wording/words.ts';
import { heightOfRow, leanOfRow, type RowWindow, type Strip, stripOf } from '../geometry/strip.ts';
import { cutToCells, plainText } from '../text.ts';
import { asDyed, type YarnSign, yarnSigns } from '../yarn-signs.ts';
import type { Line } from './ansi.ts';
import { type DrawOptions, formatPicture, legend, pixelsPerCell, wrapWords } from './picture.ts';
import { blankRaster, fill, hollow, type Pixel, paintRaster, type Raster, type View } from './raster.ts';

/**
 * The strip as it hangs from the bed, to scale: knitted stripes filled, the rest outlined. Where it is too long for the
 * window the rows around the place are shown, and the caption says which.
 */
export function drawStrip(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  const rowsDone = Math.min(Math.max(0, options.rowsDone ?? 0), plan.rows);
  const captionLines = options.rows >= 6 ? 1 : 0;
  if (options.words || options.columns < 12 || options.rows < 4) {
    return wrapWords(describeStrip(plan, rowsDone, words), options);
  }
  const height = (options.rows - captionLines) * pixelsPerCell(options);
  const scale = scaleFor(plan, options.columns, height, pixelsPerCell(options));
  const window = windowAround(plan, rowsDone, scale.rowsShown);
  // Its colours can be told by colour alone: a letter stands for a yarn.
  const shown = options.colour === 'none' ? plan : asDyed(plan);
  const strip = stripOf(shown, rowsDone, window);
  const picture = paintRaster(
    rasterise(plan, strip, scale),
    pixelOf(yarnSigns(shown, options.colour), strip, options),
    [],
    options,
  );
  return formatPicture(
    [...picture, ...(captionLines > 0 ? [caption(plan, window, scale, options, words)] : [])],
    options,
  );
}

/** Which yarn is which, and what of the strip is not shown. */
function caption(
  plan: Plan,
  { fromRow, throughRow }: RowWindow,
  { unitPixels }: Scale,
  options: DrawOptions,
  { pictures: say }: Words,
): Line {
  const isCut = throughRow - fromRow + 1 < plan.rows;
  const note = [
    ...(isCut ? [say.stripPart(fromRow, throughRow, plan.rows)] : []),
    ...(unitPixels === 0 ? [say.tooFine] : []),
  ].join(', ');
  if (note === '') return legend(plan, options);
  const yarns = legend(plan, { ...options, columns: Math.max(0, options.columns - cellsOf(note) - 4) });
  const gap = yarns.length > 0 ? '   ' : '';
  return [...yarns, { text: gap }, { text: cutToCells(note, options.columns, '') }];
}

interface Scale {
  readonly pixelWidthMm: number;
  readonly pixelHeightMm: number;
  readonly rowsShown: number;
  readonly unitPixels: number;
}

/** Stripes are whole pixels high where they can be, so that equal stripes look equal. */
function scaleFor(plan: Plan, columns: number, height: number, perCell: 1 | 2): Scale {
  const rowMm = heightOfRow(plan);
  const unitRows = plan.stripes.map((stripe) => stripe.rows).reduce(greatestCommonDivisor);
  const wideMm = (rows: number): number =>
    plan.stitches * plan.gauge.stitchMm + rows * Math.abs(leanOfRow(plan));
  const at = (unitPixels: number, rows: number): Scale => {
    const pixelHeightMm = (unitRows * rowMm) / unitPixels;
    return { pixelHeightMm, pixelWidthMm: (pixelHeightMm * perCell) / 2, rowsShown: rows, unitPixels };
  };
  const fits = ({ pixelHeightMm, pixelWidthMm, rowsShown }: Scale): boolean =>
    (rowsShown * rowMm) / pixelHeightMm <= height + 1e-9 &&
    wideMm(rowsShown) / pixelWidthMm <= columns + 1e-9;
  for (let unitPixels = Math.floor((height * unitRows) / plan.rows); unitPixels >= 1; unitPixels--) {
    if (fits(at(unitPixels, plan.rows))) return at(unitPixels, plan.rows);
  }
  for (let rows = Math.floor(height) * unitRows; rows >= 8 * unitRows; rows -= unitRows) {
    if (rows < plan.rows && fits(at(1, rows))) return at(1, rows);
  }
  const pixelWidthMm = Math.max(wideMm(plan.rows) / columns, ((plan.rows * rowMm) / height) * (perCell / 2));
  return { pixelWidthMm, pixelHeightMm: (pixelWidthMm * 2) / perCell, rowsShown: plan.rows, unitPixels: 0 };
}

/** Three quarters of what is shown is done, one quarter is to come. */
function windowAround({ rows }: Plan, rowsDone: number, rowsShown: number): RowWindow {
  if (rowsShown >= rows) return { fromRow: 1, throughRow: rows };
  const even = Math.round((rowsDone + rowsShown / 4) / 2) * 2;
  const throughRow = Math.min(rows, Math.max(rowsShown, even));
  return { fromRow: throughRow - rowsShown + 1, throughRow };
}

function rasterise(plan: Plan, strip: Strip, scale: Scale): Raster {
  const { box } = strip;
  const view: View = { leftMm: 0, topMm: box.top, ...scale };
  const raster = blankRaster(
    Math.ceil(box.right / view.pixelWidthMm - 1e-6),
    Math.ceil(box.top / view.pixelHeightMm - 1e-6),
  );
  for (const [i, piece] of strip.pieces.entries()) fill(raster, view, piece.shape, i + 1);
  const lowest = Math.min(...plan.stripes.map((stripe) => stripe.rows)) * heightOfRow(plan);
  const eachOutlined = lowest / view.pixelHeightMm >= 3.9;
  hollow(
    raster,
    scale.rowsShown < plan.rows,
    (id) => strip.pieces[id - 1]?.knitted === false,
    (id, other) => isBorder(strip, id, other, eachOutlined),
  );
  return raster;
}

/** Round the open part as a whole, and where there is room round each of its stripes; not against what is knitted. */
function isBorder({ pieces }: Strip, id: number, other: number, eachOutlined: boolean): boolean {
  const beside = pieces[other - 1];
  if (!beside) return true;
  return eachOutlined && !beside.knitted && beside.stripe !== pieces[id - 1]?.stripe;
}

/** The outline of what is to come is neutral where a grey can be counted on: a line in two colours is but a dotted one. */
const outlineColour = '#808080';

function pixelOf(
  signs: ReadonlyMap<string, YarnSign>,
  { pieces }: Strip,
  { colour: depth }: DrawOptions,
): (id: number) => Pixel {
  const isGrey = depth === 'true' || depth === '256';
  return (id) => {
    const piece = pieces[id - 1];
    const yarn = signs.get(piece?.yarn ?? '');
    if (!piece || !yarn) throw new Error(`no piece ${id}`);
    if (piece.knitted || !isGrey) return { yarn, open: !piece.knitted };
    return { yarn: { ...yarn, colour: outlineColour, pattern: 'plain', edged: false }, open: true };
  };
}

/** In sentences, for screen readers and for windows too small for a picture. */
function describeStrip(plan: Plan, rowsDone: number, words: Words): readonly string[] {
  const { stripes, rows, brief } = plan;
  const next = stripes.find((stripe) => stripe.lastRow > rowsDone);
  const done = stripes.filter((stripe) => stripe.lastRow <= rowsDone).length;
  return [
    words.pictures.leaningStrip(brief.crawl, stripes.length, rows),
    words.pictures.rowsKnitted(rowsDone, rows, done, stripes.length),
    next ? describeStripe(next, rowsDone, words) : words.pictures.stripWhole,
  ];
}

function describeStripe(
  { number, yarn, firstRow, lastRow }: KnittedStripe,
  rowsDone: number,
  words: Words,
): string {
  return rowsDone >= firstRow
    ? words.pictures.stripeNow(number, plainText(yarn), firstRow, lastRow)
    : words.pictures.stripeNext(number, plainText(yarn), firstRow, lastRow);
}
