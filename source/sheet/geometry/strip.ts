/**
 * The strip lying flat as it hangs from the bed: first row below, newest row above, leaning the way it crawls. Each edge
 * advances K stitches over T rows, drawn as a straight line; columns may lean towards the leading edge (plane geometry).
 */
import type { Plan } from '../../planning/plan.ts';
import { type Box, boxAround, type Point, type Polygon } from './shape.ts';

interface StripPiece {
  /** Number of the stripe, from 1. */
  readonly stripe: number;
  readonly yarn: string;
  readonly knitted: boolean;
  /** From the lower trailing corner round. */
  readonly shape: Polygon;
}

export interface Strip {
  readonly pieces: readonly StripPiece[];
  readonly outline: Polygon;
  readonly box: Box;
  readonly rowMm: number;
}

/** Rows that can be seen: from `fromRow` through `throughRow`, of 1 … T. */
export interface RowWindow {
  readonly fromRow: number;
  readonly throughRow: number;
}

/**
 * The strip in mm, the lower left corner of its box at 0, stripe by stripe. A stripe that is half done gives two pieces.
 * The grafted row is row T: it counts as knitted when `rowsDone` is T. A window cuts away the other rows.
 */
export function stripOf(plan: Plan, rowsDone: number, window?: RowWindow): Strip {
  const { fromRow, throughRow } = window ?? { fromRow: 1, throughRow: plan.rows };
  const corners = cornersOf(plan, fromRow - 1, throughRow);
  const pieces = plan.stripes.flatMap(({ number, yarn, firstRow, lastRow }) => {
    const first = Math.max(firstRow, fromRow);
    const last = Math.min(lastRow, throughRow);
    const seam = Math.min(last, Math.max(first - 1, rowsDone));
    const piece = (from: number, to: number, knitted: boolean): StripPiece[] =>
      to > from ? [{ stripe: number, yarn, knitted, shape: corners(from, to) }] : [];
    return first > last ? [] : [...piece(first - 1, seam, true), ...piece(seam, last, false)];
  });
  const outline = corners(fromRow - 1, throughRow);
  return { pieces, outline, rowMm: heightOfRow(plan), box: boxAround(outline) };
}

/** How far the edges have come towards the leading side with each row, and how high it stands, in mm. */
export const leanOfRow = ({ gauge, shapings, rows }: Plan): number =>
  (shapings * gauge.stitchMm) / rows + gauge.rowMm * Math.sin(gauge.skewRad);
export const heightOfRow = ({ gauge }: Plan): number => gauge.rowMm * Math.cos(gauge.skewRad);

/** Corners of the rows between two row lines; row line 0 is the start, T the graft. */
function cornersOf(plan: Plan, bottomLine: number, topLine: number): (from: number, to: number) => Polygon {
  const { crawl } = plan.brief;
  const width = plan.stitches * plan.gauge.stitchMm;
  const perRow = leanOfRow(plan);
  const lean = crawl === 'right' ? perRow : -perRow;
  const start = Math.max(0, -lean * (topLine - bottomLine));
  const corner = (line: number, across: number): Point => [
    start + (line - bottomLine) * lean + across,
    (line - bottomLine) * heightOfRow(plan),
  ];
  const [trailing, leading] = crawl === 'right' ? [0, width] : [width, 0];
  return (from, to) => [
    corner(from, trailing),
    corner(from, leading),
    corner(to, leading),
    corner(to, trailing),
  ];
}
