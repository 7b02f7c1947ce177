/**
 * How the strip becomes the bag, in three views: as it hangs, purl side towards the maker; turned over and laid out with the
 * mouth up, where it is to be folded; and folded, its last edge A met with its first edge B.
 */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Fold, foldOf } from '../geometry/fold.ts';
import { between, type Point, type Polygon } from '../geometry/shape.ts';
import { stripOf } from '../geometry/strip.ts';
import { yarnSigns } from '../yarn-signs.ts';
import {
  arrow,
  type ClothSide,
  type DrawingRoom,
  type Drawn,
  disc,
  discRadiusMm,
  drawingOf,
  drawnSide,
  fitted,
  reaching,
  reachOf,
  within,
  written,
} from './drawn.ts';
import {
  type Drawing,
  element,
  lineFrom,
  palette,
  pointList,
  round,
  usualTextMm,
  wrapText,
} from './element.ts';
import { type Fills, fillsFor } from './fills.ts';
import { stripDrawn } from './strip-drawing.ts';

const [gapMm, turnMm] = [3, 24];

type PanelView = readonly Drawn[];

export function foldDrawing(plan: Plan, words: Words, room: DrawingRoom, id: string): Drawing {
  const { band } = foldOf(plan);
  const strip = stripOf(plan, plan.rows);
  const allWide = strip.box.right + band.mouthMm + Math.abs(band.leanMm) + band.widthMm;
  const high = Math.max(strip.box.top, band.depthMm);
  return fitted(room, ({ widthMm, heightMm }) =>
    drawnAt(plan, words, Math.min(widthMm / allWide, (heightMm - 24) / high), id),
  );
}

function drawnAt(plan: Plan, words: Words, scale: number, id: string): Drawing {
  const { sheet } = words;
  const fold = foldOf(plan);
  const { band } = fold;
  const strip = stripOf(plan, plan.rows);
  const high = Math.max(strip.box.top, band.depthMm);
  const fills = fillsFor(yarnSigns(plan, 'print'), id, 1 / scale);
  const knit: ClothSide = { cloth: 'knit', text: sheet.knitSide };
  const views: readonly (readonly [view: PanelView, side: ClothSide, title: string])[] = [
    [
      stripDrawn(plan, words, {
        widthMm: strip.box.right * scale + 10,
        heightMm: strip.box.top * scale + 12,
        id: `${id}-hung`,
        bare: true,
      }),
      { cloth: 'purl', text: sheet.purlSide },
      `1 ${sheet.hanging}`,
    ],
    [laidOut(fold, words, fills, scale), knit, `2 ${sheet.laidOut}`],
    [folded(fold, words, fills, scale), knit, `3 ${sheet.grafted}`],
  ];
  const links = [turnOver(sheet.turnOver), bringTogether(sheet.bring)];
  let x = 0;
  const parts = views.flatMap(([view, side, title], i): readonly Drawn[] => {
    const whole = headed(view, side, title);
    const own = reachOf(whole);
    const placed = moved(whole, [x - own.left, -own.bottom]);
    x += own.right - own.left + gapMm;
    const link = links[i];
    if (!link) return placed;
    const reach = reachOf(link);
    const linked = moved(link, [x - reach.left, 10 + (high * scale) / 2]);
    x += reach.right - reach.left + gapMm;
    return [...placed, ...linked];
  });
  return drawingOf(sheet.shows.fold, [within(fills.defs), ...parts], null);
}

/** The side of the cloth and the name of the view above it, in its upper left corner. */
function headed(view: PanelView, side: ClothSide, title: string): PanelView {
  const { left, bottom: top } = reachOf(view);
  const head = drawnSide(side, usualTextMm);
  return [
    ...view,
    written([left, top - 7.4], title, { weight: 700, size: 2.9 }),
    ...moved([head], [left, top - 5.6]),
  ];
}

const moved = (parts: readonly Drawn[], [dx, dy]: Point): readonly Drawn[] => [
  reaching(
    element(
      'g',
      { transform: `translate(${round(dx)} ${round(dy)})` },
      parts.map(({ markup }) => markup).join(''),
    ),
    parts.flatMap(({ reach }) => reach.map(([x, y]): Point => [x + dx, y + dy])),
  ),
];

/** An arrow that turns round, and what it says below. */
function turnOver(text: string): PanelView {
  const d = 'M3 8C5 -1 13 -1 15 6';
  const head = '15.6,8.6 13.4,5.4 17,4.6';
  return [
    reaching(
      element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 0.6 }) +
        element('polygon', { points: head, fill: palette.ink }),
      [
        [0, 0],
        [turnMm, 9],
      ],
    ),
    ...below(text, 12.6),
  ];
}

const bringTogether = (text: string): PanelView => [arrow([2, 6], [16, 6], 0.6), ...below(text, 11)];

const below = (text: string, y: number): PanelView =>
  wrapText(text, usualTextMm, turnMm).map((line, i) =>
    written([turnMm / 2, y + i * 3.4], line, { anchor: 'middle' }),
  );

function laidOut(fold: Fold, { sheet }: Words, fills: Fills, scale: number): PanelView {
  const at = ([x, y]: Point): Point => [x * scale, -y * scale];
  const { band } = fold;
  const topMiddle = middleAtHeight(fold, band.depthMm);
  const bottomMiddle = middleAtHeight(fold, 0);
  // On a shallow bag the letters reach past its edges, and the names stand beyond them.
  const past = Math.max(0, discRadiusMm - (band.depthMm * scale) / 2) / scale;
  return [
    pieces(fold, fills, scale, 'unrolled'),
    ...fold.folds.flatMap(([from, to]): readonly Drawn[] => [
      within(lineFrom(at(from), at(to), { stroke: palette.paper, 'stroke-width': 1 })),
      within(lineFrom(at(from), at(to), { 'stroke-dasharray': '1.4 1', 'stroke-width': 0.4, class: 'fold' })),
    ]),
    ...(['A', 'B'] as const).map((letter) => disc(at(between(...fold.edges[letter], 0.5)), letter)),
    written(at([topMiddle, band.depthMm + past + 1.4 / scale]), sheet.mouth, { anchor: 'middle' }),
    written(at([bottomMiddle, -past - 3.2 / scale]), `${sheet.bottom} · - - ${sheet.foldBack}`, {
      anchor: 'middle',
    }),
  ];
}

/** Half-way between the ends of the band at a height. */
const middleAtHeight = ({ edges }: Fold, height: number): number => {
  const ends = (['A', 'B'] as const).map(
    (letter) => edges[letter].find(([, y]) => Math.abs(y - height) < 1e-6)?.[0] ?? 0,
  );
  return ((ends[0] ?? 0) + (ends[1] ?? 0)) / 2;
};

function folded(fold: Fold, { sheet }: Words, fills: Fills, scale: number): PanelView {
  const at = ([x, y]: Point): Point => [x * scale, -y * scale];
  const { band, graft } = fold;
  const middle = band.widthMm / 2;
  return [
    pieces(fold, fills, scale, 'folded'),
    ...graft.flatMap(([from, to]): readonly Drawn[] => [
      within(lineFrom(at(from), at(to), { stroke: palette.paper, 'stroke-width': 1.2 })),
      within(
        lineFrom(at(from), at(to), { 'stroke-width': 0.5, 'stroke-dasharray': '1.4 0.7', class: 'graft' }),
      ),
    ]),
    ...metLetters(fold, at),
    written(at([middle, band.depthMm + 1.4 / scale]), sheet.mouth, { anchor: 'middle' }),
    written(at([middle, -3.2 / scale]), sheet.sewHere, { anchor: 'middle' }),
  ];
}

/** A and B on their sides of the graft, as far as the bag is wide enough for them. */
function metLetters({ graft, band }: Fold, at: (point: Point) => Point): PanelView {
  const [line] = graft;
  if (!line) return [];
  const [x, y] = at(between(line[0], line[1], 0.5));
  const r = 2.1;
  const shift = (band.mirrored ? -1 : 1) * (r + 1);
  return [disc([x - shift, y], 'A', r), disc([x + shift, y], 'B', r)];
}

function pieces(fold: Fold, fills: Fills, scale: number, which: 'unrolled' | 'folded'): Drawn {
  const shown = fold.pieces.filter((piece) => which === 'unrolled' || piece.layer === 'front');
  const polygons = shown.map((piece) =>
    element('polygon', {
      points: pointList(piece[which]),
      fill: fills.fillOf(piece.yarn),
      class: `stripe ${which}`,
      'data-stripe': piece.stripe,
      'data-panel': piece.panel,
    }),
  );
  const { widthMm, depthMm } = fold.band;
  const box: Polygon = [
    [0, 0],
    [widthMm, 0],
    [widthMm, depthMm],
    [0, depthMm],
  ];
  const outline = which === 'unrolled' ? fold.unrolledOutline : box;
  return reaching(
    element(
      'g',
      { transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} 0 0)` },
      polygons.join('') +
        element('polygon', {
          points: pointList(outline),
          fill: 'none',
          stroke: palette.ink,
          'stroke-width': 0.3 / scale,
        }),
    ),
    outline.map(([x, y]): Point => [x * scale, -y * scale]),
  );
}
