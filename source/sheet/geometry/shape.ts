/** Plane shapes in mm: x to the right, y up. */
export type Point = readonly [x: number, y: number];
export type Polygon = readonly Point[];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function boxAround(points: readonly Point[]): Box {
  const box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  for (const [x, y] of points) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.bottom = Math.min(box.bottom, y);
    box.top = Math.max(box.top, y);
  }
  return box;
}

export const rectangle = ({ left, right, bottom, top }: Box): Polygon => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

export const mapPolygon = (polygon: Polygon, move: (point: Point) => Point): Polygon => polygon.map(move);

/** The part of a convex polygon inside `box`; empty where they do not meet (I. E. Sutherland and G. W. Hodgman 1974). */
export function clip(polygon: Polygon, { left, right, bottom, top }: Box): Polygon {
  const a = clipHalf(polygon, 0, (x) => x - left);
  const b = clipHalf(a, 0, (x) => right - x);
  const c = clipHalf(b, 1, (y) => y - bottom);
  return clipHalf(c, 1, (y) => top - y);
}

/** Keeps the side on which `inside` of the coordinate is not negative. */
function clipHalf(polygon: Polygon, axis: 0 | 1, inside: (value: number) => number): Polygon {
  return polygon.flatMap((point, i): Point[] => {
    const before = polygon.at(i - 1) as Point;
    const [from, to] = [inside(before[axis]), inside(point[axis])];
    const crossing: Point[] = from * to < 0 ? [between(before, point, from / (from - to))] : [];
    return to >= 0 ? [...crossing, point] : crossing;
  });
}

export const between = ([x1, y1]: Point, [x2, y2]: Point, part: number): Point => [
  x1 + (x2 - x1) * part,
  y1 + (y2 - y1) * part,
];
