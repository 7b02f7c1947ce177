/** The cord of the drawn bag: its strands between the eyelets, and its ends, tied in a bow or knotted to be pulled by. */
import type { Plan } from '../../planning/plan.ts';
import type { BagShape } from '../geometry/bag.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawn, reaching, within } from './drawn.ts';
import { element, pair, palette, strokePath } from './element.ts';

export type OnPaper = (point: Point) => Point;

/** The cord where it shows, the eyelets, and the bow at the graft, where both its ends come out. */
export function cord(plan: Plan, bag: BagShape, scale: number, onPaper: OnPaper): readonly Drawn[] {
  const colour = plan.brief.yarns.get(plan.cord.yarn)?.colour ?? palette.ink;
  const tieMm = plan.brief.cord.tieCm * 10 * scale;
  const tied = plan.cord.draws === 2 ? (at: Point, mm: number, of: string) => pull(at, mm, of, 1) : bow;
  const gap = ((bag.widthMm * 2 * scale) / plan.rows) * plan.brief.shapeEveryRows;
  const radius = Math.min(0.8, gap * 0.3);
  const holes = bag.eyelets.map(({ at, used }) => {
    const [cx, cy] = onPaper(at);
    return element('circle', {
      cx,
      cy,
      r: radius,
      fill: used ? palette.ink : palette.paper,
      stroke: palette.ink,
      'stroke-width': 0.15,
      class: 'eyelet',
    });
  });
  const strands = bag.cordOutside.map(([from, to]) => {
    const d = `M${pair(onPaper(from))}L${pair(onPaper(to))}`;
    return twoTone(d, colour, 0.9, 'butt');
  });
  return [
    within(holes.join('') + strands.join('')),
    ...(bag.ends ? tied(onPaper(bag.ends), tieMm, colour) : []),
    ...(bag.secondEnds?.layer === 'front' ? pull(onPaper(bag.secondEnds.at), tieMm, colour, 1) : []),
  ];
}

const twoTone = (d: string, colour: string, width: number, cap: 'butt' | 'round'): string =>
  strokePath(d, { 'stroke-width': width + 0.4, 'stroke-linecap': cap, 'stroke-linejoin': 'round' }) +
  strokePath(d, { stroke: colour, 'stroke-width': width, 'stroke-linecap': cap, 'stroke-linejoin': 'round' });

const knotAt = ([cx, cy]: Point, r: number, fill: string): string =>
  element('circle', { cx, cy, r, fill, stroke: palette.ink, 'stroke-width': 0.2 });

/** About half of each tie goes into a loop of the bow, the rest hangs (drawn for the eye; no measure is to be taken from it). */
function bow([x, y]: Point, tieMm: number, colour: string): readonly Drawn[] {
  const [loop, tail] = [Math.min(14, tieMm * 0.2), Math.min(32, tieMm * 0.42)];
  const side = (to: -1 | 1): string => {
    const p = (dx: number, dy: number): string => pair([x + to * dx, y + dy]);
    const hang = `M${p(0, 0)}C${p(tail * 0.12, tail * 0.3)} ${p(tail * 0.04, tail * 0.6)} ${p(tail * 0.22, tail * 0.95)}`;
    const round = `M${p(0, 0)}C${p(loop * 0.6, -loop * 0.4)} ${p(loop * 1.3, -loop * 0.1)} ${p(loop, loop * 0.35)}C${p(loop * 0.75, loop * 0.62)} ${p(loop * 0.25, loop * 0.35)} ${p(0, 0)}`;
    return twoTone(hang, colour, 0.9, 'round') + twoTone(round, colour, 0.9, 'round');
  };
  const knot = knotAt([x, y], 1.25, colour);
  return [
    reaching(side(-1) + side(1) + knot, [
      [x - loop * 1.05 - 0.7, y - loop * 0.25 - 0.7],
      [x + loop * 1.05 + 0.7, y + tail * 0.95 + 0.7],
    ]),
  ];
}

/** Two ends knotted together to be pulled by: they hang down, or stand up where they come from behind (drawn for the eye). */
function pull([x, y]: Point, tieMm: number, colour: string, down: -1 | 1): readonly Drawn[] {
  const long = Math.min(26, tieMm * 0.5);
  const p = (dx: number, dy: number): string => pair([x + dx, y + down * dy]);
  const end = (to: -1 | 1): string =>
    twoTone(
      `M${p(to * 1.6, 0)}C${p(to * 2.2, long * 0.3)} ${p(to * 0.5, long * 0.4)} ${p(0, long * 0.6)}L${p(to * 1.4, long)}`,
      colour,
      0.9,
      'round',
    );
  const knot = knotAt([x, y + down * long * 0.6], 1.1, colour);
  return [
    reaching(end(-1) + end(1) + knot, [
      [x - 3, y],
      [x + 3, y + down * (long + 0.7)],
    ]),
  ];
}

/** The ends of a second cord that come out on the back, seen over the mouth. */
export function pullBehind(plan: Plan, bag: BagShape, scale: number, onPaper: OnPaper): readonly Drawn[] {
  if (bag.secondEnds?.layer !== 'back') return [];
  const colour = plan.brief.yarns.get(plan.cord.yarn)?.colour ?? palette.ink;
  return pull(onPaper(bag.secondEnds.at), plan.brief.cord.tieCm * 10 * scale, colour, -1);
}
