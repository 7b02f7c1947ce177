import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Fold, foldOf } from '../geometry/fold.ts';
import { mapPolygon, type Point } from '../geometry/shape.ts';
import { type YarnSign, yarnSigns } from '../yarn-signs.ts';
import type { Line } from './ansi.ts';
import { type DrawOptions, formatPicture, pixelsPerCell, wrapWords } from './picture.ts';
import { blankRaster, fill, type Label, paintRaster, type Raster, type View } from './raster.ts';

/**
 * How the strip becomes a bag: on the left it lies with its growing edge up and its folds marked, on the right it is
 * folded. The letters A and B run along the two edges that the graft joins, and in the bag they meet. Where there is colour
 * the first and the last stripe are filled: they are the ones that meet.
 */
export function drawFold(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  if (options.words || options.columns < 40 || options.rows < 8)
    return wrapWords(describeFold(plan, words), options);
  const scene = layOut(foldOf(plan), options);
  const raster = rasterise(scene, options.colour === 'none' ? [] : [1, plan.stripes.length]);
  const yarns = yarnSigns(plan, options.colour);
  const picture = paintRaster(
    raster,
    (id) => ({ yarn: yarnOf(plan, yarns, id), open: false }),
    labelsOf(scene, raster, options, words),
    options,
  );
  const captions = words.pictures.howToRead.map((text): Line => [{ text: text.slice(0, options.columns) }]);
  return formatPicture([...picture, ...captions], options);
}

const gapColumns = 9;

interface Folding {
  readonly fold: Fold;
  readonly view: View;
  readonly perCell: 1 | 2;
  readonly columns: number;
  readonly arrowColumn: number;
  /** Shifts a point of the folded bag to its place on the right. */
  readonly toBag: (point: Point) => Point;
}

/** The unrolled band, an arrow, the folded bag, side by side at one scale. */
function layOut(fold: Fold, options: DrawOptions): Folding {
  const { band } = fold;
  const perCell = pixelsPerCell(options);
  const unrolledMm = band.mouthMm + band.leanMm;
  const columnMm = Math.max(
    (unrolledMm + band.widthMm) / (options.columns - gapColumns),
    band.depthMm / (options.rows - 2) / 2,
  );
  const view = {
    leftMm: 0,
    topMm: band.depthMm,
    pixelWidthMm: columnMm,
    pixelHeightMm: (columnMm * 2) / perCell,
  };
  const unrolledColumns = Math.round(unrolledMm / columnMm);
  const bagLeftMm = (unrolledColumns + gapColumns) * columnMm;
  return {
    fold,
    view,
    perCell,
    columns: Math.min(options.columns, Math.round((bagLeftMm + band.widthMm) / columnMm)),
    arrowColumn: unrolledColumns + 3,
    toBag: ([x, y]) => [x + bagLeftMm, y],
  };
}

function rasterise({ fold, view, columns, toBag }: Folding, filled: readonly number[]): Raster {
  const raster = blankRaster(columns, Math.max(1, Math.round(fold.band.depthMm / view.pixelHeightMm)));
  for (const piece of fold.pieces) {
    if (!filled.includes(piece.stripe)) continue;
    fill(raster, view, piece.unrolled, piece.stripe);
    if (piece.layer === 'front') fill(raster, view, mapPolygon(piece.folded, toBag), piece.stripe);
  }
  return raster;
}

function yarnOf(plan: Plan, yarns: ReadonlyMap<string, YarnSign>, stripe: number): YarnSign {
  const found = yarns.get(plan.stripes[stripe - 1]?.yarn ?? '');
  if (!found) throw new Error(`no stripe ${stripe}`);
  return found;
}

/** Thin lines round both pictures: the mouth above, the bottom below, the sides of the bag. */
function framesOf(
  { fold, view, perCell, toBag }: Folding,
  raster: Raster,
  { glyphs }: DrawOptions,
  { pictures: say }: Words,
): { readonly lines: readonly Label[]; readonly names: readonly Label[] } {
  const last = Math.ceil(raster.height / perCell) - 1;
  const [line, side] = glyphs === 'ascii' ? ['-', '|'] : ['─', '│'];
  const column = (x: number): number => Math.round(x / view.pixelWidthMm);
  const corners = fold.unrolledOutline.toSorted(([, a], [, b]) => b - a).map(([x]) => column(x));
  const bag = [toBag([0, 0]), toBag([fold.band.widthMm, 0])].map(([x]) => column(x));
  const edges = [
    { row: 0, columns: corners.slice(0, 2), name: say.mouth },
    { row: last, columns: corners.slice(2), name: say.bottom },
    { row: 0, columns: bag, name: say.mouth },
    { row: last, columns: bag, name: say.bottom },
  ].map(({ row, columns, name }) => ({ row, from: Math.min(...columns), end: Math.max(...columns), name }));
  const sides = Array.from({ length: last + 1 }, (_, row) =>
    [bag[0] ?? 0, (bag[1] ?? 0) - 1].map((at) => ({ row, column: at, text: side })),
  ).flat();
  return {
    lines: [
      ...sides,
      ...edges.map(({ row, from, end }) => ({
        row,
        column: from,
        text: line.repeat(Math.max(0, end - from)),
      })),
    ],
    names: edges
      .filter(({ from, end, name }) => end - from > name.length + 6)
      .map(({ row, from, end, name }) => ({
        row,
        column: Math.floor((from + end - name.length) / 2) - 1,
        text: ` ${name} `,
      })),
  };
}

/** Fold lines, the letters along the grafted edges, and the arrow between the two pictures. */
function labelsOf(scene: Folding, raster: Raster, options: DrawOptions, words: Words): readonly Label[] {
  const { glyphs } = options;
  const frame = framesOf(scene, raster, options, words);
  const { fold, view, toBag } = scene;
  const rows = Math.ceil(raster.height / scene.perCell);
  const before = fold.band.mirrored ? 0 : -1;
  const after = fold.band.mirrored ? -1 : 0;
  const along = ([one, other]: readonly [Point, Point], text: string, shift: number): readonly Label[] =>
    downRows(one, other, view, rows).map(({ row, x }) => ({
      row,
      column: Math.round(x / view.pixelWidthMm) + shift,
      text,
    }));
  return [
    ...frame.lines,
    ...fold.folds.flatMap((line) => along(line, glyphs === 'ascii' ? ':' : '┊', 0)),
    ...along(fold.edges.A, 'A', before),
    ...along(fold.edges.B, 'B', after),
    ...fold.graft.flatMap(([one, other]) => {
      const line = [toBag(one), toBag(other)] as const;
      return [...along(line, 'A', before), ...along(line, 'B', after)];
    }),
    { row: Math.floor(rows / 2), column: scene.arrowColumn, text: glyphs === 'ascii' ? '-->' : '──▶' },
    ...frame.names,
  ];
}

/** Where a line crosses the middle of each row of cells. */
function downRows(
  [x1, y1]: Point,
  [x2, y2]: Point,
  { topMm, pixelWidthMm }: View,
  rows: number,
): readonly { readonly row: number; readonly x: number }[] {
  const rowMm = pixelWidthMm * 2;
  return Array.from({ length: rows }, (_, row) => ({
    row,
    part: (topMm - (row + 0.5) * rowMm - y1) / (y2 - y1),
  }))
    .filter(({ part }) => part >= 0 && part <= 1)
    .map(({ row, part }) => ({ row, x: x1 + (x2 - x1) * part }));
}

/** In sentences, for screen readers and for windows too small for a picture. */
function describeFold(plan: Plan, words: Words): readonly string[] {
  const { startsAtMouth } = foldOf(plan);
  const [start, end] = startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return [
    words.pictures.turnStrip,
    words.pictures.foldStrip(plan.size.widthCm),
    words.pictures.joinEdges(start, plan.stitches, end),
  ];
}
