/**
 * The front of the bag as it stands filled: drawn together by its cord and tied, each knit stitch a V. It is narrower at the
 * neck and fuller below than it lies flat (drawn for the eye).
 */
import { opposite } from '../../bed/bed.ts';
import type { Plan } from '../../planning/plan.ts';
import { inkOn, mixColours } from '../../shared/colour.ts';
import { bagOf } from '../geometry/bag.ts';
import { bandPoint, drawnFolded, unroll } from '../geometry/fold.ts';
import { between, type Point, type Polygon } from '../geometry/shape.ts';
import { element, lineFrom, pair, pointList, strokePath } from './element.ts';

export const colours = ({ brief }: Plan): ReadonlyMap<string, string> =>
  new Map([...brief.yarns].map(([yarn, { colour }]) => [yarn, colour]));

/** A shade of the yarn in which its stitches are drawn: darker on a light yarn, lighter on a dark one. */
export const stitchInk = (colour: string): string => mixColours(colour, inkOn(colour), 0.24);

/** How wide the bag is at a height, in parts of its flat width: heights from the bottom, the cord at `neck`. */
function fullness(height: number, neck: number): number {
  if (height >= neck) return 0.74 + 0.09 * ((height - neck) / (1 - neck));
  const part = height / neck;
  const belly = 1.0 + 0.09 * Math.sin(Math.PI * Math.min(1, part * 1.15));
  const pull = Math.max(0, (part - 0.72) / 0.28) ** 1.6;
  return belly * (1 - pull) + 0.74 * pull;
}

/** Where it stands, how high it may be, and the ground behind it. */
interface Stand {
  readonly middleMm: number;
  readonly floorMm: number;
  readonly highMm: number;
  readonly card: string;
  readonly shadow: number;
}

export function gatheredBag(plan: Plan, { middleMm, floorMm, highMm, card, shadow }: Stand): string {
  const bag = bagOf(plan);
  const scale = Math.min(62 / bag.widthMm, highMm / bag.depthMm);
  const neck = bag.cordMm / bag.depthMm;
  const warp = ([x, y]: Point): Point => {
    const height = Math.max(0, Math.min(1, y / bag.depthMm));
    const across = x / bag.widthMm - 0.5;
    const frill = height > neck ? 0.9 * Math.sin(across * 34) * ((height - neck) / (1 - neck)) : 0;
    const round = 1.6 * (1 - 4 * across * across) * (1 - height);
    return [
      middleMm + across * bag.widthMm * scale * fullness(height, neck),
      floorMm - y * scale + frill + round - 1.6,
    ];
  };
  const hem = bag.hem ? [{ ...bag.hem, stripe: 0 }] : [];
  const pieces = [...bag.pieces, ...hem].map(({ stripe, yarn, shape }) => {
    const fill = colours(plan).get(yarn) ?? '#ffffff';
    return element('polygon', {
      points: pointList(subdivided(shape, 5).map(warp)),
      fill,
      stroke: fill,
      'stroke-width': 0.15,
      class: 'bag-stripe',
      'data-stripe': stripe,
    });
  });
  const outline: Polygon = subdivided(
    [
      [0, 0],
      [bag.widthMm, 0],
      [bag.widthMm, bag.depthMm],
      [0, bag.depthMm],
    ],
    4,
  ).map(warp);
  const folds = Array.from({ length: 9 }, (_, i) => {
    const x = ((i + 0.7) / 9.4) * bag.widthMm;
    const [top, low] = [warp([x, bag.cordMm]), warp([x, bag.cordMm * (0.8 - 0.05 * (i % 3))])];
    return `M${pair(top)}L${pair(low)}`;
  });
  const [cx] = warp([bag.widthMm / 2, 0]);
  return [
    element('ellipse', {
      cx,
      cy: floorMm + 0.6,
      rx: 33,
      ry: 2.2,
      fill: '#000000',
      'fill-opacity': shadow,
    }),
    pieces.join(''),
    ...stitches(plan, warp),
    strokePath(folds.join(''), {
      stroke: '#000000',
      'stroke-width': 0.9,
      'stroke-opacity': 0.16,
      'stroke-linecap': 'round',
    }),
    element('polygon', {
      points: pointList(outline),
      fill: 'none',
      stroke: mixColours('#3a3530', card, 0.2),
      'stroke-width': 0.5,
      'stroke-linejoin': 'round',
    }),
    cordAndBow(plan, warp),
  ].join('');
}

/** Points on the sides of a shape no further apart than so many mm, so that what is bent looks bent. */
const subdivided = (shape: Polygon, mostMm: number): Polygon =>
  shape.flatMap((from, i) => {
    const to = shape[(i + 1) % shape.length] as Point;
    const count = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / mostMm));
    return Array.from({ length: count }, (_, part) => between(from, to, part / count));
  });

/** Every stitch of the front as the V that its knit side shows, a path for each yarn. */
function stitches(plan: Plan, warp: (point: Point) => Point): readonly string[] {
  const band = unroll(plan);
  const long = Math.hypot(band.stitchLeanMm, band.stitchDepthMm);
  // Along a row, and at right angles to it towards the next row.
  const along: Point = [band.stitchLeanMm / long, band.stitchDepthMm / long];
  const up: Point = [along[1], -along[0]];
  const [half, high] = [long * 0.5, plan.gauge.rowMm];
  return [...colours(plan)].map(([yarn, colour]) => {
    const paths: string[] = [];
    for (const stripe of plan.stripes.filter((one) => one.yarn === yarn)) {
      for (let row = stripe.firstRow; row <= stripe.lastRow; row++) {
        for (let stitch = 2; stitch <= plan.stitches; stitch++) {
          const [x, y] = bandPoint(band, row - 0.5, stitch - 0.5);
          const panel = Math.floor(x / band.widthMm);
          if (panel % 2 !== 0) continue;
          const corner = (a: number, b: number): Point => {
            const inFront: Point = [
              Math.max(
                panel * band.widthMm,
                Math.min((panel + 1) * band.widthMm, x + along[0] * a + up[0] * b),
              ),
              y + along[1] * a + up[1] * b,
            ];
            const [fx, fy] = drawnFolded(band, panel, inFront);
            return warp([fx, fy - band.stitchDepthMm]);
          };
          paths.push(
            vee(corner(-half * 0.86, high * 0.42), corner(0, -high * 0.4), corner(half * 0.86, high * 0.42)),
          );
        }
      }
    }
    return strokePath(paths.join(''), {
      stroke: stitchInk(colour),
      'stroke-width': 0.36,
      class: 'stitches',
      'data-yarn': yarn,
    });
  });
}

/** Two decimals and relative lines: there are many of them. */
function vee(one: Point, foot: Point, other: Point): string {
  const cut = (value: number): string => String(Math.round(value * 100) / 100);
  const line = (from: Point, to: Point): string => `${cut(to[0] - from[0])} ${cut(to[1] - from[1])}`;
  return `M${cut(one[0])} ${cut(one[1])}l${line(one, foot)} ${line(foot, other)}`;
}

function cordAndBow(plan: Plan, warp: (point: Point) => Point): string {
  const bag = bagOf(plan);
  const colour = plan.brief.yarns.get(plan.cord.yarn)?.colour ?? '#ffffff';
  const edge = mixColours(colour, '#000000', 0.45);
  const rope = (d: string, width: number): string =>
    strokePath(d, {
      stroke: edge,
      'stroke-width': width + 0.7,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    }) +
    strokePath(d, {
      stroke: colour,
      'stroke-width': width,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    });
  const dashes = bag.cordOutside.map(([from, to]) =>
    rope(`M${pair(warp(between(from, to, 0.12)))}L${pair(warp(between(from, to, 0.88)))}`, 1.5),
  );
  const side = opposite(plan.brief.crawl) === 'right' ? -1 : 1;
  const [x, y] = warp([bag.widthMm * (0.5 + side * 0.16), bag.cordMm]);
  const bow = (to: -1 | 1): string => {
    const p = (dx: number, dy: number): string => pair([x + to * dx, y + dy]);
    const tail = `M${p(0, 0)}C${p(3, 9)} ${p(3.5, 16)} ${p(5.5 + to, 27)}`;
    const loop = `M${p(0, 0)}C${p(5, -7.5)} ${p(15, -4.5)} ${p(12.5, 1.5)}C${p(10.5, 5)} ${p(4, 3)} ${p(0, 0)}`;
    return rope(tail, 1.7) + rope(loop, 1.7);
  };
  const knot = element('ellipse', {
    cx: x,
    cy: y,
    rx: 2.5,
    ry: 2.2,
    fill: colour,
    stroke: edge,
    'stroke-width': 0.5,
  });
  return (
    dashes.join('') +
    bow(-1) +
    bow(1) +
    knot +
    lineFrom([x - 0.7, y - 1.4], [x - 0.5, y + 1.4], { stroke: edge, 'stroke-width': 0.3 })
  );
}
