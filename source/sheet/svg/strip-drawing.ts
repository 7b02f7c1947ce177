/** The strip as it hangs from the bed, purl side towards the maker, to scale, with its edges named and its ends lettered. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { between, type Point } from '../geometry/shape.ts';
import { type Strip, stripOf } from '../geometry/strip.ts';
import { asDyed, yarnSigns } from '../yarn-signs.ts';
import {
  arrow,
  type Drawn,
  disc,
  drawingOf,
  fitted,
  measure,
  reaching,
  reachOf,
  within,
  written,
} from './drawn.ts';
import { type Drawing, element, lineFrom, palette, pointList, textWidth, usualTextMm } from './element.ts';
import { type Fills, fillsFor } from './fills.ts';

interface StripDrawingOptions {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly id: string;
  /** Rows knitted, 0 to T; the rest is outlined. Left out: all of them. */
  readonly rowsDone?: number;
  /** Without counts and sizes. */
  readonly bare?: boolean;
}

/** What stands round the strip, in mm. */
const around = { width: 26, height: 22, bareWidth: 10, bareHeight: 12 };

export const stripDrawing = (plan: Plan, words: Words, options: StripDrawingOptions): Drawing =>
  fitted(options, (room) =>
    drawingOf(
      words.sheet.shows.strip(plan.stitches, plan.rows, plan.brief.crawl),
      stripDrawn(plan, words, { ...options, ...room }),
      { cloth: 'purl', text: words.sheet.purlSide },
    ),
  );

/** The strip with its lower left corner at 0. */
export function stripDrawn(own: Plan, { sheet }: Words, options: StripDrawingOptions): readonly Drawn[] {
  const plan = asDyed(own);
  const { id, bare } = options;
  const strip = stripOf(plan, options.rowsDone ?? plan.rows);
  const scale = Math.min(
    (options.widthMm - (bare ? around.bareWidth : around.width)) / strip.box.right,
    (options.heightMm - (bare ? around.bareHeight : around.height)) / strip.box.top,
  );
  const onPaper = ([x, y]: Point): Point => [x * scale, -y * scale];
  const corners = strip.outline.map(onPaper) as [Point, Point, Point, Point];
  const [trailingStart, leadingStart, leadingEnd, trailingEnd] = corners;
  const fills = fillsFor(yarnSigns(plan, 'print'), id, 1 / scale);
  const letterR = Math.max(2, Math.min(2.4, (strip.box.top * scale) / 5));
  // A letter is wider than a strip of few stitches: names keep clear of it.
  const aside = Math.max(0, letterR + 1 - Math.abs(leadingStart[0] - trailingStart[0]) / 2);
  const out = plan.brief.crawl === 'left' ? -aside : aside;
  const by = ([x, y]: Point, dx: number): Point => [x + dx, y];
  const [mouth, bottom] = [
    alongEdge(by(leadingStart, out), by(leadingEnd, out), sheet.mouth, plan.brief.crawl),
    alongEdge(
      by(trailingStart, -out),
      by(trailingEnd, -out),
      sheet.bottom,
      plan.brief.crawl === 'left' ? 'right' : 'left',
    ),
  ];
  const [bedLeft, bedRight] = [
    Math.min(leadingEnd[0], trailingEnd[0]) - 2,
    Math.max(leadingEnd[0], trailingEnd[0]) + 2,
  ];
  const bedY = leadingEnd[1] - 1.4;
  const inwards = letterR + 0.4;
  return [
    within(fills.defs),
    reaching(
      element(
        'g',
        { transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} 0 0)`, class: 'strip' },
        shapes(strip, fills, scale),
      ),
      corners,
    ),
    reaching(lineFrom([bedLeft, bedY], [bedRight, bedY], { 'stroke-width': 0.9, stroke: palette.ink }), [
      [bedLeft, bedY - 0.5],
      [bedRight, bedY],
    ]),
    written([(bedLeft + bedRight) / 2, bedY - 1.6], sheet.needleBed, {
      anchor: 'middle',
      colour: palette.quiet,
    }),
    disc(middleOf(leadingEnd, trailingEnd, inwards), 'A', letterR),
    disc(middleOf(leadingStart, trailingStart, -inwards), 'B', letterR),
    mouth,
    bottom,
    ...(bare ? [] : sizes(plan, sheet, corners, bedY, reachOf([mouth, bottom]).right)),
  ];
}

const middleOf = (one: Point, other: Point, down: number): Point => {
  const [x, y] = between(one, other, 0.5);
  return [x, y + down];
};

/** A name along a slanting edge, on its outer side; level beside an edge that is shorter than the name. */
function alongEdge(from: Point, to: Point, text: string, side: 'left' | 'right'): Drawn {
  const [x, y] = between(from, to, 0.5);
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) < textWidth(text, usualTextMm)) {
    const off = 1.2 + Math.abs((to[0] - from[0]) / (to[1] - from[1]));
    const [at, anchor] = side === 'left' ? [x - off, 'end' as const] : [x + off, 'start' as const];
    return written([at, y + 0.9], text, { anchor });
  }
  const turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const upright = turn < -90 ? turn + 180 : turn;
  const rad = (upright * Math.PI) / 180;
  const out = side === 'left' ? -1 : 1;
  // Perpendicular to the edge: away from the strip, letters above or below the line they are written on.
  const [nx, ny] = [-Math.sin(rad), Math.cos(rad)];
  const towards = Math.sign(nx) === out || (nx === 0 && out > 0) ? 1 : -1;
  const off = towards * (towards * ny > 0 ? 3.6 : 1.9);
  return written([x + nx * off, y + ny * off], text, { anchor: 'middle', turn: upright });
}

function sizes(
  plan: Plan,
  sheet: Words['sheet'],
  [trailingStart, leadingStart, leadingEnd]: readonly [Point, Point, Point, Point],
  bedY: number,
  namesRight: number,
): readonly Drawn[] {
  const { stitches, rows, gauge } = plan;
  const [left, right] = [
    Math.min(trailingStart[0], leadingStart[0]),
    Math.max(trailingStart[0], leadingStart[0]),
  ];
  const y = trailingStart[1];
  const reach = Math.max(right, leadingEnd[0], namesRight - 2, 0);
  const way = crawl(plan, sheet, [leadingEnd[0], bedY]);
  // Clear of the strip's lowest row, and of the words on the way it crawls.
  const onRight = Math.max(reach, leadingEnd[0] + Math.abs(right - left), reachOf(way).right) + 4;
  return [
    ...measure([left, y + 3], [right, y + 3], sheet.stitchesSize(stitches, (stitches * gauge.stitchMm) / 10)),
    written([(left + right) / 2, y + 11], sheet.firstRow, { anchor: 'middle', colour: palette.quiet }),
    ...measure([onRight, leadingEnd[1]], [onRight, y], sheet.rowsSize(rows, (rows * gauge.rowMm) / 10)),
    ...way,
  ];
}

/** Which way the work goes along the bed. */
function crawl({ brief }: Plan, sheet: Words['sheet'], [x, y]: Point): readonly Drawn[] {
  const out = brief.crawl === 'left' ? -1 : 1;
  return [
    arrow([x + out * 4, y], [x + out * 10, y], 0.4),
    written([x + out * 11, y + 0.9], sheet.crawlsTo(brief.crawl), { anchor: out < 0 ? 'end' : 'start' }),
  ];
}

function shapes(strip: Strip, fills: Fills, scale: number): string {
  const pieces = strip.pieces.map(({ stripe, yarn, knitted, shape }) => {
    const fill = knitted ? fills.fillOf(yarn) : palette.paper;
    return element('polygon', {
      points: pointList(shape),
      class: `stripe ${knitted ? 'knitted' : 'open'}`,
      'data-stripe': stripe,
      fill,
      // Its own colour closes the hair between neighbours.
      stroke: knitted ? fill : palette.rule,
      'stroke-width': 0.1 / scale,
    });
  });
  const outline = element('polygon', {
    points: pointList(strip.outline),
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.3 / scale,
    class: 'outline',
  });
  return pieces.join('') + outline;
}
