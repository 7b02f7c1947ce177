/** The finished bag lying flat, knit side out, to scale, with its dimensions; the cord through its eyelets and tied in a bow. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type BagShape, bagOf, type Segment } from '../geometry/bag.ts';
import type { Point } from '../geometry/shape.ts';
import { formatAngle } from '../text.ts';
import { asDyed, yarnSigns } from '../yarn-signs.ts';
import { cord, type OnPaper, pullBehind } from './bag-cord.ts';
import { type Drawn, drawingOf, fitted, measure, reaching, reachOf, within, written } from './drawn.ts';
import {
  type Drawing,
  element,
  lineFrom,
  pair,
  palette,
  pointList,
  strokePath,
  textWidth,
  usualTextMm,
} from './element.ts';
import { type Fills, fillsFor } from './fills.ts';

/** What stands round the bag, in mm. */
const around = { width: 18, height: 17 };

interface BagDrawingOptions {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly id: string;
  /** Without names and sizes. */
  readonly bare?: boolean;
}

export const bagDrawing = (plan: Plan, words: Words, options: BagDrawingOptions): Drawing =>
  fitted(options, (room) => drawnIn(plan, words, { ...options, ...room }));

function drawnIn(own: Plan, { sheet, amounts }: Words, options: BagDrawingOptions): Drawing {
  const plan = asDyed(own);
  const { id, bare } = options;
  const bag = bagOf(plan);
  const { size } = plan;
  const scale = Math.min(
    (options.widthMm - (bare ? 1 : around.width)) / bag.widthMm,
    (options.heightMm - (bare ? 1 : around.height)) / bag.depthMm,
  );
  const [width, depth] = [bag.widthMm * scale, bag.depthMm * scale];
  const onPaper: OnPaper = ([x, y]) => [x * scale, -y * scale];
  const fills = fillsFor(yarnSigns(plan, 'print'), id, 1 / scale);
  const middle = width / 2;
  const belowCord = sheet.belowCord(size.depthBelowCordCm);
  const tied = cord(plan, bag, scale, onPaper);
  const reach = reachOf([
    ...tied,
    reaching('', [
      [0, 0],
      [width, 0],
    ]),
  ]);
  const [outerLeft, outerRight] = [reach.left - 3, reach.right + 3];
  return drawingOf(
    sheet.shows.bag(size.widthCm, size.depthCm),
    [
      within(fills.defs),
      ...pullBehind(plan, bag, scale, onPaper),
      reaching(
        element(
          'g',
          { transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} 0 0)`, class: 'bag' },
          stripes(bag, fills, scale) + hem(bag, fills, scale) + outline(bag, scale),
        ),
        [
          [0, -depth],
          [width, 0],
        ],
      ),
      ...bag.graft.map((line) => within(graftLine(line, onPaper))),
      within(seam(width)),
      ...corners(plan.brief.boxedCm * 5 * scale, width),
      ...(bare || width < 24 || depth < 20 ? [] : angleDrawn(plan, bag, onPaper)),
      ...tied,
      ...(bare
        ? []
        : [
            written([middle, -depth - 1.6], sheet.mouth, { anchor: 'middle' }),
            written([middle, 3.2], sheet.bottom, { anchor: 'middle' }),
            ...measure([0, 5.4], [width, 5.4], amounts.length(size.widthCm)),
            ...measure([outerLeft, -depth], [outerLeft, 0], amounts.length(size.depthCm), 'left'),
            ...measure([outerRight, -bag.cordMm * scale], [outerRight, 0], belowCord),
          ]),
    ],
    bare ? null : { cloth: 'knit', text: sheet.knitSide },
  );
}

const stripes = (bag: BagShape, fills: Fills, scale: number): string =>
  bag.pieces
    .map(({ stripe, yarn, shape }) => {
      const fill = fills.fillOf(yarn);
      return element('polygon', {
        points: pointList(shape),
        fill,
        // Its own colour closes the hair between neighbours.
        stroke: fill,
        'stroke-width': 0.08 / scale,
        class: 'stripe',
        'data-stripe': stripe,
      });
    })
    .join('');

/** Above the edge that it was picked up from. */
const hem = ({ hem: part }: BagShape, fills: Fills, scale: number): string =>
  part === null
    ? ''
    : element('polygon', {
        points: pointList(part.shape),
        fill: fills.fillOf(part.yarn),
        stroke: palette.ink,
        'stroke-width': 0.25 / scale,
        class: 'hem',
      });

const outline = ({ widthMm, depthMm }: BagShape, scale: number): string =>
  element('rect', {
    width: widthMm,
    height: depthMm,
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.3 / scale,
  });

/** Dashes on a pale ground, to be seen on dark and on light stripes. */
function graftLine([one, other]: Segment, onPaper: OnPaper): string {
  const [from, to] = [onPaper(one), onPaper(other)];
  return (
    lineFrom(from, to, { stroke: palette.paper, 'stroke-width': 0.45 }) +
    lineFrom(from, to, { 'stroke-width': 0.3, 'stroke-dasharray': '0.9 0.7' })
  );
}

/** Small stitches along the bottom. */
function seam(widthMm: number): string {
  const count = Math.max(1, Math.floor(widthMm / 1.8));
  const step = widthMm / count;
  const d = Array.from(
    { length: count },
    (_, i) => `M${pair([(i + 0.3) * step, -0.5])}l${pair([step * 0.4, 1])}`,
  );
  return strokePath(d.join(''), { 'stroke-width': 0.25 });
}

/** Where the corners of a boxed bottom will be sewn across, seen on the flat bag: half its depth along the seam, and up the side. */
function corners(halfMm: number, width: number): readonly Drawn[] {
  if (halfMm === 0) return [];
  const d = [0, width].map((x) => {
    const inner = x === 0 ? halfMm : width - halfMm;
    return `M${pair([x, -halfMm])}L${pair([inner, -halfMm])}L${pair([inner, 0])}`;
  });
  return [
    within(strokePath(d.join(''), { stroke: palette.paper, 'stroke-width': 0.9 })),
    within(strokePath(d.join(''), { 'stroke-width': 0.35, 'stroke-dasharray': '1.4 0.7', class: 'corner' })),
  ];
}

/** The angle between the stripes and the bottom, at a boundary of stripes near the middle of the bottom. */
function angleDrawn(plan: Plan, bag: BagShape, onPaper: OnPaper): readonly Drawn[] {
  const towards = plan.brief.crawl === 'left' ? -1 : 1;
  const turn = (plan.size.stripeAngleDeg * Math.PI) / 180;
  const feet = bag.pieces.flatMap(({ shape }) => shape.filter(([, y]) => Math.abs(y) < 1e-6).map(([x]) => x));
  const aim = bag.widthMm * (towards < 0 ? 0.62 : 0.38);
  const foot = feet.reduce((best, x) => (Math.abs(x - aim) < Math.abs(best - aim) ? x : best), aim);
  const [x, y] = onPaper([foot, 0]);
  const r = 8;
  const ray: Point = [x + towards * 1.25 * r * Math.cos(turn), y - 1.25 * r * Math.sin(turn)];
  const end: Point = [x + towards * r * Math.cos(turn), y - r * Math.sin(turn)];
  const d = `M${pair([x + towards * r, y])}A${r} ${r} 0 0 ${towards < 0 ? 1 : 0} ${pair(end)}M${pair([x, y])}L${pair(ray)}`;
  const text = formatAngle(plan.size.stripeAngleDeg);
  const [cx, cy] = [x + towards * (r + 3.4) * Math.cos(turn / 2), y - (r + 3.4) * Math.sin(turn / 2)];
  const wide = textWidth(text, usualTextMm) + 1.2;
  return [
    within(
      strokePath(d, { stroke: palette.paper, 'stroke-width': 0.9 }) + strokePath(d, { 'stroke-width': 0.3 }),
    ),
    within(
      element('rect', {
        x: cx - wide / 2,
        y: cy - 1.9,
        width: wide,
        height: 3.8,
        rx: 1.2,
        fill: palette.paper,
      }),
    ),
    written([cx, cy + 0.95], text, { anchor: 'middle' }),
  ];
}
