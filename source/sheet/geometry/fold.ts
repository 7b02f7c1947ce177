/**
 * The strip turned so that its growing edge, the mouth, is up and level: a band one mouth long whose ends slant. Folded
 * at every flat width it lies in two layers, and its last edge (A) comes to lie along its first edge (B), where the graft
 * joins them. Seen with the knit side out, so work that crawled right rises to the right (plane geometry).
 */
import { mouthMm as mouthOf, stitchDepthCm } from '../../planning/geometry.ts';
import type { Plan } from '../../planning/plan.ts';
import { carriageAfter } from '../../steps/bed-after.ts';
import { outlineSteps } from '../../steps/outline.ts';
import { type Box, clip, mapPolygon, type Point, type Polygon } from './shape.ts';

interface Unrolled {
  /** Once round the mouth, in mm. */
  readonly mouthMm: number;
  /** Flat width of the bag, half of that. */
  readonly widthMm: number;
  /** From the trailing edge to the mouth, before the seam takes its stitch. */
  readonly depthMm: number;
  /** How far the ends lean over the whole depth; less than nothing where the columns lean back more than the edges crawl. */
  readonly leanMm: number;
  /** Where the trailing corner of the start lies, so that nothing of the band lies left of 0. */
  readonly startMm: number;
  /** What one stitch across the strip is of the depth and of the lean. */
  readonly stitchDepthMm: number;
  readonly stitchLeanMm: number;
  /** Round the mouth from one row to the next. */
  readonly rowMm: number;
  readonly mirrored: boolean;
}

export function unroll(plan: Plan): Unrolled {
  const { gauge, brief, rows, shapings } = plan;
  const counts = { rows, shapeEveryRows: brief.shapeEveryRows };
  const mouthMm = mouthOf(counts, gauge);
  const stitchDepthMm = 10 * stitchDepthCm(counts, gauge);
  // A row's part along the mouth: that of once round the tube is K stitches and the lean of T rows.
  const along = shapings * gauge.stitchMm + rows * gauge.rowMm * Math.sin(gauge.skewRad);
  const stitchLeanMm = (gauge.stitchMm * along) / mouthMm;
  return {
    mouthMm,
    widthMm: mouthMm / 2,
    depthMm: plan.stitches * stitchDepthMm,
    leanMm: plan.stitches * stitchLeanMm,
    startMm: Math.max(0, -plan.stitches * stitchLeanMm),
    stitchDepthMm,
    stitchLeanMm,
    rowMm: mouthMm / plan.rows,
    mirrored: plan.brief.crawl === 'left',
  };
}

/** A point of the band: how many row lines from the start, how many stitches from the trailing edge. Not mirrored. */
export const bandPoint = (band: Unrolled, rowLine: number, stitches: number): Point => [
  band.startMm + rowLine * band.rowMm + stitches * band.stitchLeanMm,
  stitches * band.stitchDepthMm,
];

/** The rows between two row lines, whole depth; not mirrored. */
export const bandOf = (band: Unrolled, stitches: number, from: number, to: number): Polygon => [
  bandPoint(band, from, 0),
  bandPoint(band, to, 0),
  bandPoint(band, to, stitches),
  bandPoint(band, from, stitches),
];

type Layer = 'front' | 'back';

/** A part of the band between two folds: as it lies unrolled, and where it comes to lie in the bag, both as drawn. */
interface FoldedPart {
  readonly layer: Layer;
  readonly panel: number;
  readonly unrolled: Polygon;
  readonly folded: Polygon;
}

/** How many panels the band has from the start to the far corner of its last end. */
export const panelCount = ({ mouthMm, leanMm, widthMm }: Unrolled): number =>
  Math.ceil((mouthMm + Math.abs(leanMm)) / widthMm - 1e-9);

/** Cuts a convex shape of the band at the folds and folds it. */
export function foldShape(
  band: Unrolled,
  shape: Polygon,
  cut: Pick<Box, 'bottom' | 'top'>,
): readonly FoldedPart[] {
  const xs = shape.map(([x]) => x);
  const first = Math.max(0, Math.floor(Math.min(...xs) / band.widthMm));
  const last = Math.min(panelCount(band) - 1, Math.floor(Math.max(...xs) / band.widthMm));
  const parts: FoldedPart[] = [];
  for (let panel = first; panel <= last; panel++) {
    const part = clip(shape, panelBox(band, panel, cut));
    if (part.length < 2) continue;
    parts.push({
      layer: panel % 2 === 0 ? 'front' : 'back',
      panel,
      unrolled: mapPolygon(part, (point) => drawnUnrolled(band, point)),
      folded: mapPolygon(part, (point) => drawnFolded(band, panel, point)),
    });
  }
  return parts;
}

const panelBox = ({ widthMm }: Unrolled, panel: number, cut: Pick<Box, 'bottom' | 'top'>): Box => ({
  left: panel * widthMm,
  right: (panel + 1) * widthMm,
  ...cut,
});

/** Where a point of the band is drawn: mirrored for work that crawled left. */
const drawnUnrolled = (band: Unrolled, [x, y]: Point): Point => [
  band.mirrored ? band.mouthMm + Math.abs(band.leanMm) - x : x,
  y,
];

/** Where a point of `panel` comes to lie in the flat bag, as drawn. */
export function drawnFolded({ widthMm, mirrored }: Unrolled, panel: number, [x, y]: Point): Point {
  const along = x - panel * widthMm;
  const fromLeft = panel % 2 === 0 ? along : widthMm - along;
  return [mirrored ? widthMm - fromLeft : fromLeft, y];
}

interface FoldPiece extends FoldedPart {
  readonly stripe: number;
  readonly yarn: string;
}

/** How the strip becomes the bag, all as drawn: the lower left corner of both pictures is 0. */
export interface Fold {
  readonly band: Unrolled;
  readonly pieces: readonly FoldPiece[];
  readonly unrolledOutline: Polygon;
  readonly folds: readonly (readonly [Point, Point])[];
  /** Ends of the two edges that are grafted, lettered as the graft counts its loops, from loop 1 to loop N. */
  readonly edges: Readonly<Record<'A' | 'B', readonly [one: Point, last: Point]>>;
  /** Where A and B meet on the front of the folded bag; in pieces when the bag is deeper than the edges lean. */
  readonly graft: readonly (readonly [Point, Point])[];
  /** Loop 1 lies at the mouth, else at the bottom. */
  readonly startsAtMouth: boolean;
}

export function foldOf(plan: Plan): Fold {
  const band = unroll(plan);
  const whole = { bottom: 0, top: band.depthMm };
  const outline = bandOf(band, plan.stitches, 0, plan.rows);
  const startsAtMouth = tailAtMouth(plan);
  const edge = (rowLine: number): readonly [Point, Point] => {
    const [bottom, mouth] = [0, plan.stitches].map((stitches) =>
      drawnUnrolled(band, bandPoint(band, rowLine, stitches)),
    ) as [Point, Point];
    return startsAtMouth ? [mouth, bottom] : [bottom, mouth];
  };
  return {
    band,
    pieces: plan.stripes.flatMap(({ number, yarn, firstRow, lastRow }) =>
      foldShape(band, bandOf(band, plan.stitches, firstRow - 1, lastRow), whole).map((part) => ({
        ...part,
        stripe: number,
        yarn,
      })),
    ),
    unrolledOutline: outline.map((point) => drawnUnrolled(band, point)),
    folds: foldLines(band),
    edges: { A: edge(plan.rows), B: edge(0) },
    graft: foldShape(band, [bandPoint(band, 0, 0), bandPoint(band, 0, plan.stitches)], whole)
      .filter((part) => part.layer === 'front')
      .map((part) => byHeight(part.folded)),
    startsAtMouth,
  };
}

function byHeight(line: Polygon): readonly [Point, Point] {
  const sorted = line.toSorted(([, y1], [, y2]) => y1 - y2);
  return [sorted[0] as Point, sorted.at(-1) as Point];
}

/** The folds cross the band at every flat width, as far as the band reaches there. */
function foldLines(band: Unrolled): readonly (readonly [Point, Point])[] {
  return Array.from({ length: panelCount(band) - 1 }, (_, i) => {
    const x = (i + 1) * band.widthMm;
    // Heights at which the two ends of the band pass this fold, which lies between them.
    const ends = [0, band.mouthMm].map((end) => ((x - band.startMm - end) * band.depthMm) / band.leanMm);
    const top = Math.min(band.depthMm, Math.max(...ends));
    const bottom = Math.max(0, Math.min(...ends));
    return [drawnUnrolled(band, [x, bottom]), drawnUnrolled(band, [x, top])] as const;
  });
}

/** The tail hangs on the side on which the closing row ended. */
const tailAtMouth = (plan: Plan): boolean =>
  carriageAfter(outlineSteps(plan), plan.knittedRows) === plan.brief.crawl;
