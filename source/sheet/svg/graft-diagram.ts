/**
 * The graft, knit side towards the maker, A above the gap and B below: its thread takes the way of a knitted row, over the end
 * of each loop and behind its legs (common practice, as the steps have it). What lies behind is drawn first, what lies over it
 * afterwards with a pale edge, so that the eye follows the thread. The mouth stays where the work lies: work that crawled
 * left has it at the left, and loops are counted from where the tail hangs.
 */

import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { foldOf } from '../geometry/fold.ts';
import { between, type Point, type Polygon } from '../geometry/shape.ts';
import { arrow, type Drawn, disc, drawingOf, reaching, within, written } from './drawn.ts';
import { type Drawing, pair, palette, strokePath } from './element.ts';

const loopColour = '#8f887c';
const pitch = 18.4;
const [threadMm, loopMm] = [1.6, 2.1];
/** Ends of the loops of A and of B, and how far a leg stands from the middle of its loop at the gap and far from it. */
const edges = { A: { end: 18.4, far: 2.4, towards: 1 }, B: { end: 36.6, far: 52.6, towards: -1 } } as const;
const [legNear, legFar] = [4, 5];

type Edge = keyof typeof edges;

/** Middle of a loop, as if work had crawled left; B lies half a stitch before A, since B1 is half an arch at the edge. */
const middleOf = (edge: Edge, loop: number): number => (edge === 'A' ? loop : loop - 0.5) * pitch;

/** A loop from its far end round and back: leg, end, leg. */
function loopPath(edge: Edge, loop: number): string {
  const { end, far, towards } = edges[edge];
  const x = middleOf(edge, loop);
  const shoulder = end - towards * 5.6;
  const leg = (side: -1 | 1): readonly [Point, Point] => [
    [x + side * legFar, far],
    [x + side * legNear, shoulder],
  ];
  const [[a, b], [d, c]] = [leg(-1), leg(1)];
  const round = end + towards * 1.5;
  return `M${pair(a)}L${pair(b)}C${pair([x - legNear + 0.5, round])} ${pair([x + legNear - 0.5, round])} ${pair(c)}L${pair(d)}`;
}

/** Where the thread is seen inside a loop, just behind its end, towards one of its legs. */
const inside = (edge: Edge, loop: number, side: -1 | 1): Point => {
  const { end, towards } = edges[edge];
  return [middleOf(edge, loop) + side * 1.95, end - towards * 4];
};

/** One entry after another: up through A1, down through B1, up through B2, down through A1, up through A2 … */
interface GraftEntry {
  readonly edge: Edge;
  readonly loop: number;
  readonly way: 'up' | 'down';
}

/** The entries of the first `count` movements on each edge, as the steps give them. */
function entriesOf(count: number): readonly GraftEntry[] {
  const entries: GraftEntry[] = [{ edge: 'A', loop: 1, way: 'up' }];
  for (let loop = 1; loop <= count; loop++) {
    for (const edge of ['B', 'A'] as const) {
      entries.push({ edge, loop, way: 'down' }, { edge, loop: loop + 1, way: 'up' });
    }
  }
  return entries;
}

const shownLoops = 3;

export function graftDiagram(plan: Plan, words: Words['sheet']): Drawing {
  const fold = foldOf(plan);
  // Loop 1 lies where the tail hangs: at the mouth or at the bottom, and the mouth lies on the side of the crawl.
  const mouthLeft = plan.brief.crawl === 'left';
  const mirrored = mouthLeft !== fold.startsAtMouth;
  const entries = entriesOf(shownLoops).slice(0, -1);
  const flip = ([x, y]: Point): Point => [mirrored ? -x : x, y];
  const drawn = (d: string): string => (mirrored ? mirrorPath(d) : d);
  const loops = [
    ...Array.from({ length: shownLoops }, (_, i) => ['A', i + 1] as const),
    ...Array.from({ length: shownLoops + 1 }, (_, i) => ['B', i + 1] as const),
  ];
  const cloth = loops.map(([edge, loop]) =>
    within(
      strokePath(drawn(loopPath(edge, loop)), {
        stroke: loopColour,
        'stroke-width': loopMm,
        class: 'loop',
        'data-loop': `${edge}${loop}`,
      }),
    ),
  );
  const { behind, over } = threadOf(entries);
  const piece = (strand: Strand, place: 'behind' | 'over'): string =>
    (place === 'over' ? edgeOf(strand, flip) : '') +
    strokePath(drawn(strand.d), {
      stroke: palette.thread,
      'stroke-width': threadMm,
      'stroke-linecap': 'round',
      class: `thread ${place}`,
      'data-order': strand.order,
    });
  const numbers = over.map(({ from, to }, i): Drawn => {
    const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return disc(flip(at), String(i + 1), 2.4);
  });
  const labels = loops.map(([edge, loop]): Drawn => {
    const y = edge === 'A' ? edges.A.far - 1.2 : edges.B.far + 3.9;
    return written(flip([middleOf(edge, loop), y]), `${edge}${loop}`, {
      anchor: 'middle',
      size: 3.3,
      weight: 700,
    });
  });
  const reach: Polygon = [
    flip([0, edges.A.far]),
    flip([middleOf('B', shownLoops + 1) + legFar + 2, edges.B.far]),
  ];
  const tailAt = flip([2.4, edges.A.end - 6.9]);
  const outer = mirrored ? 'start' : 'end';
  const end = fold.startsAtMouth ? words.mouth : words.bottom;
  return drawingOf(
    words.shows.graft,
    [
      ...behind.map((strand) => within(piece(strand, 'behind'))),
      ...cloth,
      ...over.map((strand) => within(piece(strand, 'over'))),
      away(behind.at(-1), flip),
      ...numbers,
      ...labels,
      reaching('', reach),
      written(tailAt, words.tail, { anchor: outer, size: 2.8 }),
      written(flip([2.4, (edges.A.end + edges.B.end) / 2 + 1]), end, { anchor: outer, size: 2.8 }),
    ],
    { cloth: 'knit', text: words.knitSide },
  );
}

interface Strand {
  readonly d: string;
  readonly order: number;
  readonly from: Point;
  readonly to: Point;
}

/** A pale edge, by which a strand is seen to lie over what it crosses; its ends go on into the strands behind. */
function edgeOf({ from, to }: Strand, flip: (point: Point) => Point): string {
  const part = 1.8 / Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [start, stop] = [flip(between(from, to, part)), flip(between(to, from, part))];
  return strokePath(`M${pair(start)}L${pair(stop)}`, {
    stroke: palette.paper,
    'stroke-width': threadMm + 1,
  });
}

/** Where the thread goes on to. */
function away(strand: Strand | undefined, flip: (point: Point) => Point): Drawn {
  const [x, y] = strand?.to ?? [0, 0];
  return arrow(flip([x + 0.8, y]), flip([x + 5, y]), 0.55);
}

/** The thread in pieces: over the gap from loop to loop, and behind the legs from one loop to the next of its edge. */
function threadOf(entries: readonly GraftEntry[]): {
  readonly behind: readonly Strand[];
  readonly over: readonly Strand[];
} {
  const places = entries.map(({ edge, loop, way }) => inside(edge, loop, way === 'up' ? -1 : 1));
  const arch = (edge: Edge, from: Point, to: Point, order: number): Strand => {
    const rise = edges[edge].towards * -3.8;
    const d = `M${pair(from)}C${pair([from[0] + 2.1, from[1] + rise])} ${pair([to[0] - 2.1, to[1] + rise])} ${pair(to)}`;
    return { d, order, from, to };
  };
  const behind: Strand[] = [arch('A', [3.2, edges.A.end - 5.9], places[0] as Point, 0)];
  const over: Strand[] = [];
  for (const [i, { edge, loop, way }] of entries.entries()) {
    const [from, to] = [
      places[i] as Point,
      places[i + 1] ?? ([middleOf(edge, loop) + pitch * 0.62, edges[edge].end - 5.9] as Point),
    ];
    if (way === 'down') behind.push(arch(edge, from, to, i + 1));
    else over.push({ d: `M${pair(from)}L${pair(to)}`, order: i + 1, from, to });
  }
  return { behind, over };
}

/** The same path with x turned round; all its commands are absolute. */
const mirrorPath = (d: string): string =>
  d.replace(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) => `${-Number(x) || 0} ${y}`);
