import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Bag, bagOf, type Segment } from '../geometry/bag.ts';
import type { Point } from '../geometry/shape.ts';
import { formatAngle } from '../measure.ts';
import { markYarns } from '../yarn-marks.ts';
import { acrossDimension, downDimension } from './dimension.ts';
import { type Drawing, element, lineFrom, palette, pointList, round, textAt } from './element.ts';
import { type Fills, fillsFor } from './fills.ts';
import { textWidth } from './text-width.ts';

const margin = { left: 9, right: 9, top: 7, bottom: 7 };

/** The finished bag lying flat, to scale, with its dimensions; as large as fits the room (in mm on paper). */
export function bagDrawing(
  plan: Plan,
  room: { widthMm: number; heightMm: number },
  words: Words,
  id: string,
): Drawing {
  const bag = bagOf(plan);
  const scale = Math.min(
    (room.widthMm - margin.left - margin.right) / bag.widthMm,
    (room.heightMm - margin.top - margin.bottom) / bag.depthMm,
  );
  const [width, depth] = [bag.widthMm * scale, bag.depthMm * scale];
  const [left, top] = [margin.left, margin.top];
  const onPaper = ([x, y]: Point): Point => [left + x * scale, top + depth - y * scale];
  const fills = fillsFor(markYarns(plan, 'print'), id, 1 / scale);
  const { size } = plan;
  const widthMm = width + margin.left + margin.right;
  const cordText = words.say`${words.amounts.length(size.depthBelowCordCm)} below the cord`;
  const heightMm = Math.max(depth + margin.top + margin.bottom, textWidth(cordText, 2.6));
  return {
    widthMm,
    heightMm,
    title: words.say`The finished bag, ${words.amounts.length(size.widthCm)} wide and ${words.amounts.length(size.depthCm)} deep`,
    body: [
      fills.defs,
      element(
        'g',
        {
          transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} ${round(left)} ${round(top + depth)})`,
          class: 'bag',
        },
        stripes(bag, fills) + outline(bag, scale),
      ),
      ...bag.graft.map((line) => graftLine(line, onPaper)),
      cord(plan, bag, scale, onPaper),
      seam(left, left + width, top + depth),
      width >= 14 && depth >= 14 ? angleMark(plan, bag, onPaper) : '',
      acrossDimension(left, left + width, top + depth + 2.8, words.amounts.length(size.widthCm), widthMm),
      downDimension(left - 3.4, top, top + depth, words.amounts.length(size.depthCm), 'left', heightMm),
      downDimension(
        left + width + 3.4,
        top + depth - bag.cordMm * scale,
        top + depth,
        cordText,
        'right',
        heightMm,
      ),
    ].join(''),
  };
}

const stripes = (bag: Bag, fills: Fills): string =>
  bag.pieces
    .map(({ stripe, yarn, shape }) =>
      element('polygon', {
        points: pointList(shape),
        fill: fills.fillOf(yarn),
        class: 'stripe',
        'data-stripe': stripe,
      }),
    )
    .join('');

const outline = ({ widthMm, depthMm }: Bag, scale: number): string =>
  element('rect', {
    width: widthMm,
    height: depthMm,
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.3 / scale,
  });

/** Dashes on a pale ground, to be seen on dark and on light stripes. */
function graftLine([one, other]: Segment, onPaper: (point: Point) => Point): string {
  const [from, to] = [onPaper(one), onPaper(other)];
  return (
    lineFrom(from, to, { stroke: palette.paper, 'stroke-width': 0.45 }) +
    lineFrom(from, to, { 'stroke-width': 0.3, 'stroke-dasharray': '0.9 0.7' })
  );
}

/** Eyelets as holes, the cord where it shows, and its two ends at the graft. */
function cord(plan: Plan, bag: Bag, scale: number, onPaper: (point: Point) => Point): string {
  const colour = plan.brief.yarns.get(plan.cord.yarn)?.colour ?? palette.ink;
  const gap = ((bag.widthMm * 2 * scale) / plan.rows) * plan.brief.shapeEveryRows;
  const radius = Math.min(0.7, gap * 0.3);
  const strand = (from: Point, to: Point): string =>
    lineFrom(from, to, { stroke: palette.ink, 'stroke-width': 1.3, 'stroke-linecap': 'round' }) +
    lineFrom(from, to, { stroke: colour, 'stroke-width': 0.9, 'stroke-linecap': 'round' });
  const holes = bag.eyelets.map(({ at, used }) => {
    const [cx, cy] = onPaper(at);
    return element('circle', {
      cx,
      cy,
      r: radius,
      fill: used ? palette.ink : palette.paper,
      stroke: palette.ink,
      'stroke-width': 0.15,
    });
  });
  return (
    holes.join('') +
    bag.cordOutside.map(([from, to]) => strand(onPaper(from), onPaper(to))).join('') +
    ties(bag, colour, onPaper)
  );
}

function ties(bag: Bag, colour: string, onPaper: (point: Point) => Point): string {
  if (!bag.ends) return '';
  const [x, y] = onPaper(bag.ends);
  const tail = (dx: number): string => {
    const d = `M${round(x)} ${round(y)}c${round(dx * 0.2)} -3 ${round(dx * 1.4)} -4 ${round(dx)} -6.6`;
    const path = (stroke: string, width: number): string =>
      element('path', { d, fill: 'none', stroke, 'stroke-width': width, 'stroke-linecap': 'round' });
    return path(palette.ink, 1.3) + path(colour, 0.9);
  };
  const knot = element('circle', {
    cx: x,
    cy: y,
    r: 1.1,
    fill: colour,
    stroke: palette.ink,
    'stroke-width': 0.2,
  });
  return tail(-2) + tail(2.4) + knot;
}

/** Small stitches along the bottom. */
function seam(left: number, right: number, y: number): string {
  const count = Math.max(1, Math.floor((right - left) / 1.8));
  const step = (right - left) / count;
  return element('path', {
    d: Array.from(
      { length: count },
      (_, i) => `M${round(left + (i + 0.3) * step)} ${round(y - 0.5)}l${round(step * 0.4)} 1`,
    ).join(''),
    stroke: palette.ink,
    'stroke-width': 0.25,
    fill: 'none',
  });
}

/** The angle between the stripes and the bottom, in the corner that the graft starts from. */
function angleMark(plan: Plan, bag: Bag, onPaper: (point: Point) => Point): string {
  const mirrored = plan.brief.crawl === 'left';
  const [x, y] = onPaper([mirrored ? bag.widthMm : 0, 0]);
  const turn = (plan.size.stripeAngleDeg * Math.PI) / 180;
  const towards = mirrored ? -1 : 1;
  const r = 9;
  const end: Point = [x + towards * r * Math.cos(turn), y - r * Math.sin(turn)];
  const wedge = element('path', {
    d: `M${round(x)} ${round(y)}L${round(x + towards * r)} ${round(y)}A${r} ${r} 0 0 ${mirrored ? 1 : 0} ${round(end[0])} ${round(end[1])}Z`,
    fill: palette.paper,
    'fill-opacity': 0.92,
    stroke: palette.ink,
    'stroke-width': 0.2,
  });
  const label: Point = [x + towards * 5.2 * Math.cos(turn / 2), y - 5.2 * Math.sin(turn / 2) + 0.9];
  return wedge + textAt(label, formatAngle(plan.size.stripeAngleDeg), { anchor: 'middle' });
}
