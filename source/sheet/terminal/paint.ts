/** Pixels turned into cells: two pixels a cell as half blocks, one as a letter or a coloured blank. */
import { inkOn, mixColours } from '../../shared/colour.ts';
import type { Pattern, YarnMark } from '../yarn-marks.ts';
import type { Line, Span } from './ansi.ts';
import { edgeInk } from './on-yarn.ts';
import { type DrawOptions, pixelsPerCell } from './options.ts';
import { markAt, type Raster } from './raster.ts';

/** What a pixel shows: a yarn, `open` where only its outline is drawn. */
export interface Pixel {
  readonly yarn: YarnMark;
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
  pixelOf: (mark: number) => Pixel,
  labels: readonly Label[],
  options: DrawOptions,
): readonly Line[] {
  const perCell = pixelsPerCell(options);
  const lines: Span[][] = [];
  for (let row = 0; row * perCell < raster.height; row++) {
    const cells: Span[] = [];
    for (let column = 0; column < raster.width; column++) {
      const at = (y: number): Shown | null => {
        const mark = markAt(raster, column, y);
        if (mark === 0) return null;
        const pixel = pixelOf(mark);
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
  [
    markAt(raster, x - 1, y),
    markAt(raster, x + 1, y),
    markAt(raster, x, y - 1),
    markAt(raster, x, y + 1),
  ].includes(0);

interface Shown extends Pixel {
  readonly colour: string;
}

const shown = (pixel: Pixel, x: number, y: number, { colour: depth }: DrawOptions): Shown => {
  const { colour, pattern } = pixel.yarn;
  return {
    ...pixel,
    colour: isShaded(pattern, x, y) ? mixColours(colour, inkOn(colour), depth === '16' ? 1 : 0.35) : colour,
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
