import type { Plan } from '../../planning/plan.ts';
import { carriageAfter } from '../../steps/bed-after.ts';
import { outlineSteps } from '../../steps/outline.ts';
import type { Point, Polygon } from './shape.ts';
import {
  bandOf,
  bandPoint,
  drawnUnrolled,
  type FoldedPart,
  foldShape,
  panelCount,
  type Unrolled,
  unroll,
} from './unrolled.ts';

export interface FoldPiece extends FoldedPart {
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
