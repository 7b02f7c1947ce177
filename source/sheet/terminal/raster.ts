/** Shapes turned into pixels. A pixel takes the last shape that holds its centre. */
import type { Polygon } from '../geometry/shape.ts';

/** Where a picture of so many mm lies on the pixels; mm run up, pixels run down. */
export interface View {
  readonly leftMm: number;
  readonly topMm: number;
  readonly pixelWidthMm: number;
  readonly pixelHeightMm: number;
}

/** `marks[y · width + x]`: 0 for nothing, else what `fill` was given. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly marks: Uint32Array;
}

export const blankRaster = (width: number, height: number): Raster => ({
  width,
  height,
  marks: new Uint32Array(width * height),
});

export const markAt = ({ width, height, marks }: Raster, x: number, y: number): number =>
  x < 0 || y < 0 || x >= width || y >= height ? 0 : (marks[y * width + x] ?? 0);

/** Fills a convex shape. */
export function fill(raster: Raster, view: View, shape: Polygon, mark: number): void {
  const heights = shape.map(([, y]) => y);
  const [lowest, highest] = [Math.min(...heights), Math.max(...heights)];
  const ys = heights.map((y) => (view.topMm - y) / view.pixelHeightMm);
  const first = Math.max(0, Math.ceil(Math.min(...ys) - 0.5 - 1e-9));
  const last = Math.min(raster.height - 1, Math.ceil(Math.max(...ys) - 0.5 - 1e-9) - 1);
  for (let y = first; y <= last; y++) {
    // A centre on the very edge may be reckoned a hair outside.
    const centre = view.topMm - (y + 0.5) * view.pixelHeightMm;
    const [from, to] = crossing(shape, Math.min(highest, Math.max(lowest, centre)));
    const left = Math.max(0, Math.ceil((from - view.leftMm) / view.pixelWidthMm - 0.5 - 1e-9));
    const end = Math.min(raster.width, Math.ceil((to - view.leftMm) / view.pixelWidthMm - 0.5 - 1e-9));
    if (end > left) raster.marks.fill(mark, y * raster.width + left, y * raster.width + end);
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
 * Empties the open pixels, save those on a border: `isBorder` says whether two neighbouring marks have one between them.
 * Where the picture is cut off above and below, that is no border.
 */
export function hollow(
  raster: Raster,
  isCut: boolean,
  isOpen: (mark: number) => boolean,
  isBorder: (mark: number, other: number) => boolean,
): void {
  const before: Raster = { ...raster, marks: raster.marks.slice() };
  for (let y = 0; y < raster.height; y++) {
    for (let x = 0; x < raster.width; x++) {
      const mark = markAt(before, x, y);
      if (mark === 0 || !isOpen(mark)) continue;
      const around = [
        markAt(before, x - 1, y),
        markAt(before, x + 1, y),
        isCut && y === 0 ? mark : markAt(before, x, y - 1),
        isCut && y === raster.height - 1 ? mark : markAt(before, x, y + 1),
      ];
      if (!around.some((other) => isBorder(mark, other))) raster.marks[y * raster.width + x] = 0;
    }
  }
}
