/**
 * The finished bag lying flat, knit side out: the front layer of the folded strip, less the stitch that the bottom seam
 * takes, with the eyelets and what shows of the cord. The cord goes in at the first hole used, out at the next, and so
 * on; both its ends come out at the graft. A second cord shows where the first does not, its ends half-way round.
 */
import type { Plan } from '../../planning/plan.ts';
import { bandOf, bandPoint, foldShape, unroll } from './fold.ts';
import { type Point, type Polygon, rectangle } from './shape.ts';

interface BagPiece {
  readonly stripe: number;
  readonly yarn: string;
  readonly shape: Polygon;
}

export type Segment = readonly [Point, Point];

/** The front of the bag in mm: 0 is its lower left corner, on the seam. */
export interface BagShape {
  readonly widthMm: number;
  /** The hem included, which stands above the old edge. */
  readonly depthMm: number;
  readonly hem: Omit<BagPiece, 'stripe'> | null;
  readonly pieces: readonly BagPiece[];
  readonly graft: readonly Segment[];
  /** Height of the cord line above the seam. */
  readonly cordMm: number;
  readonly eyelets: readonly { readonly number: number; readonly used: boolean; readonly at: Point }[];
  readonly cordOutside: readonly Segment[];
  /** Where both ends of the cord come out; null when that is on the back. */
  readonly ends: Point | null;
  /** Where those of a second cord do; null where there is none. */
  readonly secondEnds: { readonly at: Point; readonly layer: 'front' | 'back' } | null;
}

export function bagOf(plan: Plan): BagShape {
  const band = unroll(plan);
  const seamMm = band.stitchDepthMm;
  const hemMm = 10 * (plan.hem?.heightCm ?? 0);
  const sewn = { bottom: seamMm, top: band.depthMm };
  const folded = (shape: Polygon) =>
    foldShape(band, shape, sewn).map((part) => ({
      layer: part.layer,
      shape: part.folded.map(([x, y]): Point => [x, y - seamMm]),
    }));
  const front = (shape: Polygon): readonly Polygon[] =>
    folded(shape).flatMap((part) => (part.layer === 'front' ? [part.shape] : []));
  const { cordStitches, eyelets, outside, secondEnds } = cordLine(plan);
  const line = (one: Point, other: Point): readonly Segment[] =>
    front([one, other]).map((shape) => {
      const fromLeft = shape.toSorted(([x1], [x2]) => x1 - x2);
      return [fromLeft[0] as Point, fromLeft.at(-1) as Point];
    });
  const onFront = (point: Point): Point | undefined => front([point, point])[0]?.[0];
  const placeOf = (point: Point): BagShape['secondEnds'] => {
    const [part] = folded([point, point]);
    const [at] = part?.shape ?? [];
    return part && at ? { at, layer: part.layer } : null;
  };
  return {
    widthMm: band.widthMm,
    depthMm: band.depthMm - seamMm + hemMm,
    hem: plan.hem && {
      yarn: plan.hem.yarn,
      shape: rectangle({
        left: 0,
        right: band.widthMm,
        bottom: band.depthMm - seamMm,
        top: band.depthMm - seamMm + hemMm,
      }),
    },
    pieces: plan.stripes.flatMap(({ number, yarn, firstRow, lastRow }) =>
      front(bandOf(band, plan.stitches, firstRow - 1, lastRow)).map((shape) => ({
        stripe: number,
        yarn,
        shape,
      })),
    ),
    graft: line(bandPoint(band, 0, 0), bandPoint(band, 0, plan.stitches)),
    cordMm: (cordStitches - 1) * band.stitchDepthMm,
    eyelets: eyelets.flatMap(({ number, used, rowLine }) => {
      const at = onFront(bandPoint(band, rowLine, cordStitches));
      return at ? [{ number, used, at }] : [];
    }),
    cordOutside: outside.flatMap(([from, to]) =>
      line(bandPoint(band, from, cordStitches), bandPoint(band, to, cordStitches)),
    ),
    ends: onFront(bandPoint(band, 0, cordStitches)) ?? null,
    secondEnds: secondEnds === null ? null : placeOf(bandPoint(band, secondEnds, cordStitches)),
  };
}

/** Where the cord runs, in stitches from the trailing edge and in row lines: the graft is line 0 and line T. */
function cordLine({ brief, stitches, rows, eyelets }: Plan) {
  const used = new Set(eyelets.used);
  /** The place of the hole before the one where a second cord begins. */
  const second = eyelets.secondFrom === null ? 0 : eyelets.used.indexOf(eyelets.secondFrom);
  const stops = [0, ...eyelets.used.map((number) => number * brief.shapeEveryRows), rows];
  return {
    cordStitches: stitches - brief.edgeStitches - 0.5,
    eyelets: Array.from({ length: eyelets.made }, (_, i) => ({
      number: i + 1,
      used: used.has(i + 1),
      rowLine: (i + 1) * brief.shapeEveryRows,
    })),
    // The two cords take turns outside.
    outside: stops.flatMap((from, i): [number, number][] => {
      const to = stops[i + 1];
      return to !== undefined && (i % 2 === 0 || eyelets.secondFrom !== null) ? [[from, to]] : [];
    }),
    secondEnds: second > 0 ? ((stops[second] ?? 0) + (stops[second + 1] ?? 0)) / 2 : null,
  };
}
