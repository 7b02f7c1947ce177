/** Shapes turned into pixels, and pixels into cells: two a cell as half blocks, one as a letter or a coloured blank. */
import { inkOn } from '../../shared/colour.ts';
import type { Polygon } from '../geometry/shape.ts';
import type { Pattern, YarnSign } from '../yarn-signs.ts';
import { edgeInk, type Line, type Span, shadeColour } from './ansi.ts';
import { type DrawOptions, pixelsPerCell } from './picture.ts';

/** Where a picture of so many mm lies on the pixels; mm run up, pixels run down. */
export interface View {
  readonly leftMm: number;
  readonly topMm: number;
  readonly pixelWidthMm: number;
  readonly pixelHeightMm: number;
}

/** `ids[y · width + x]`: 0 for nothing, else what `fill` was given. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly ids: Uint32Array;
}

export const blankRaster = (width: number, height: number): Raster => ({
  width,
  height,
  ids: new Uint32Array(width * height),
});

const idAt = ({ width, height, ids }: Raster, x: number, y: number): number =>
  x < 0 || y < 0 || x >= width || y >= height ? 0 : (ids[y * width + x] ?? 0);

/** Fills a convex shape. */
export function fill(raster: Raster, view: View, shape: Polygon, id: number): void {
  const heights = shape.map(([, y]) => y);
  const [lowest, highest] = [Math.min(...heights), Math.max(...heights)];
  const ys = heights.map((y) => (view.topMm - y) / view.pixelHeightMm);
  const first = Math.max(0, Math.ceil(Math.min(...ys) - 0.5 - 1e-9));
  const last = Math.min(raster.height - 1, Math.ceil(Math.max(...ys) - 0.5 - 1e-9) - 1);
  for (let y = first; y <= last; y++) {
    // A centre on the very edge may come out a hair outside.
    const centre = view.topMm - (y + 0.5) * view.pixelHeightMm;
    const [from, to] = crossing(shape, Math.min(highest, Math.max(lowest, centre)));
    const left = Math.max(0, Math.ceil((from - view.leftMm) / view.pixelWidthMm - 0.5 - 1e-9));
    const end = Math.min(raster.width, Math.ceil((to - view.leftMm) / view.pixelWidthMm - 0.5 - 1e-9));
    if (end > left) raster.ids.fill(id, y * raster.width + left, y * raster.width + end);
  }
}

/** Where the height `y` enters and leaves the shape. */
function crossing(shape: Polygon, y: number): readonly [number, number] {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [i, [x2, y2]] of shape.entries()) {
    const [x1, y1] = shape.at(i - 1) ?? [x2, y2];
    if ((y1 < y && y2 < y) || (y1 > y && y2 > y)) continue;
    const at = y1 === y2 ? x2 : x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
    from = Math.min(from, at);
    to = Math.max(to, at);
  }
  return [from, to];
}

/**
 * Empties the open pixels, save those on a border: `isBorder` says whether two neighbouring ids have one between them.
 * Where the picture is cut off above and below, that is no border.
 */
export function hollow(
  raster: Raster,
  isCut: boolean,
  isOpen: (id: number) => boolean,
  isBorder: (id: number, other: number) => boolean,
): void {
  const before: Raster = { ...raster, ids: raster.ids.slice() };
  for (let y = 0; y < raster.height; y++) {
    for (let x = 0; x < raster.width; x++) {
      const id = idAt(before, x, y);
      if (id === 0 || !isOpen(id)) continue;
      const around = [
        idAt(before, x - 1, y),
        idAt(before, x + 1, y),
        isCut && y === 0 ? id : idAt(before, x, y - 1),
        isCut && y === raster.height - 1 ? id : idAt(before, x, y + 1),
      ];
      if (!around.some((other) => isBorder(id, other))) raster.ids[y * raster.width + x] = 0;
    }
  }
}

/** What a pixel shows: a yarn, `open` where only its outline is drawn. */
export interface Pixel {
  readonly yarn: YarnSign;
  readonly open: boolean;
  /** Drawn at every second place alone. */
  readonly isSparse?: boolean;
}

/** Text laid over a picture at a cell; one cell a character. It keeps the colour that lies under it. */
export interface Label {
  readonly column: number;
  readonly row: number;
  readonly text: string;
}

export function paintRaster(
  raster: Raster,
  pixelOf: (id: number) => Pixel,
  labels: readonly Label[],
  options: DrawOptions,
): readonly Line[] {
  const perCell = pixelsPerCell(options);
  const lines: Span[][] = [];
  for (let row = 0; row * perCell < raster.height; row++) {
    const cells: Span[] = [];
    for (let column = 0; column < raster.width; column++) {
      const at = (y: number): Shown | null => {
        const id = idAt(raster, column, y);
        if (id === 0) return null;
        const pixel = pixelOf(id);
        if (pixel.isSparse && (column + y) % 2 === 1) return null;
        const edge = pixel.yarn.edged && isAtEdge(raster, column, y) ? edgeInk(options.colour) : null;
        return edge === null ? shown(pixel, column, y, options) : { ...pixel, colour: edge };
      };
      cells.push(perCell === 2 ? halves(at(2 * row), at(2 * row + 1)) : single(at(row), options));
    }
    lines.push(cells);
  }
  for (const label of labels) write(lines, label, options);
  return lines;
}

/** A yarn that may be the terminal's own ground is seen by the line round it. */
const isAtEdge = (raster: Raster, x: number, y: number): boolean =>
  [idAt(raster, x - 1, y), idAt(raster, x + 1, y), idAt(raster, x, y - 1), idAt(raster, x, y + 1)].includes(
    0,
  );

interface Shown extends Pixel {
  readonly colour: string;
}

const shown = (pixel: Pixel, x: number, y: number, { colour: depth }: DrawOptions): Shown => {
  const { colour, pattern } = pixel.yarn;
  return {
    ...pixel,
    colour: isShaded(pattern, x, y) ? shadeColour(colour, depth) : colour,
  };
};

/** Which pixels of a pattern are shaded. Stripes may be one pixel high, so all but one change along a row. */
function isShaded(pattern: Pattern, x: number, y: number): boolean {
  switch (pattern) {
    case 'plain':
      return false;
    case 'rising':
      return (x + y) % 4 === 0;
    case 'falling':
      return (x + 3 * y) % 4 === 0;
    case 'dots':
      return x % 3 === 0;
    case 'grid':
      return x % 4 < 2;
    case 'level':
      return y % 2 === 0;
    case 'upright':
      return x % 2 === 0;
  }
}

function halves(top: Shown | null, bottom: Shown | null): Span {
  if (top && bottom) {
    return top.colour === bottom.colour
      ? { text: '█', ink: top.colour }
      : { text: '▀', ink: top.colour, ground: bottom.colour };
  }
  if (top) return { text: '▀', ink: top.colour };
  return bottom ? { text: '▄', ink: bottom.colour } : { text: ' ' };
}

function single(pixel: Shown | null, { colour }: DrawOptions): Span {
  if (!pixel) return { text: ' ' };
  if (colour !== 'none') return { text: ' ', ground: pixel.colour };
  return { text: pixel.open ? pixel.yarn.letter.toLowerCase() : pixel.yarn.letter };
}

function write(lines: Span[][], { column, row, text }: Label, { colour: depth }: DrawOptions): void {
  const cells = lines[row];
  if (!cells) return;
  for (const [i, letter] of [...text].entries()) {
    const under = cells[column + i];
    if (!under) continue;
    const ground = under.ground ?? under.ink;
    cells[column + i] =
      ground && depth !== '16' ? { text: letter, ink: inkOn(ground), ground } : { text: letter };
  }
}
