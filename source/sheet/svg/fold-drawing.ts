import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Fold, foldOf } from '../geometry/fold.ts';
import { between, type Point, type Polygon } from '../geometry/shape.ts';
import { markYarns } from '../yarn-marks.ts';
import {
  type Drawing,
  element,
  lineFrom,
  palette,
  pointList,
  round,
  textAt,
  usualTextMm,
} from './element.ts';
import { type Fills, fillsFor } from './fills.ts';
import { textWidth } from './text-width.ts';

const margin = { side: 4, top: 5, bottom: 5 };
const gapMm = 16;

/** How the strip becomes the bag: unrolled with its folds and lettered edges, an arrow, folded with the edges met. */
export function foldDrawing(
  plan: Plan,
  room: { widthMm: number; heightMm: number },
  id: string,
  words: Words,
): Drawing {
  const fold = foldOf(plan);
  const { band } = fold;
  const unrolledMm = band.mouthMm + band.leanMm;
  const scale = Math.min(
    (room.widthMm - 2 * margin.side - gapMm) / (unrolledMm + band.widthMm),
    (room.heightMm - margin.top - margin.bottom) / band.depthMm,
  );
  const height = band.depthMm * scale;
  const bottom = margin.top + height;
  const at =
    (leftMm: number) =>
    ([x, y]: Point): Point => [leftMm + x * scale, bottom - y * scale];
  const bagLeft = margin.side + unrolledMm * scale + gapMm;
  const leanHalf = ((band.mirrored ? -1 : 1) * band.leanMm * scale) / 2;
  const [onStrip, onBag] = [at(margin.side), at(bagLeft)];
  const fills = fillsFor(markYarns(plan, 'print'), id, 1 / scale);
  const bagHalf = (band.widthMm * scale) / 2;
  return {
    // The name of its edge may be wider than a small bag.
    widthMm:
      bagLeft + bagHalf + Math.max(bagHalf + margin.side, textWidth(words.say`mouth`, usualTextMm) / 2),
    heightMm: height + margin.top + margin.bottom,
    title: words.say`How the strip folds into the bag: its last edge A meets its first edge B`,
    body: [
      fills.defs,
      pieces(fold, fills, scale, [margin.side, bottom], 'unrolled'),
      pieces(fold, fills, scale, [bagLeft, bottom], 'folded'),
      ...fold.folds.map(
        ([from, to]) =>
          lineFrom(onStrip(from), onStrip(to), { stroke: palette.paper, 'stroke-width': 0.7 }) +
          lineFrom(onStrip(from), onStrip(to), { 'stroke-dasharray': '1.2 0.9', 'stroke-width': 0.3 }),
      ),
      ...fold.graft.map(([from, to]) => lineFrom(onBag(from), onBag(to), { 'stroke-width': 0.6 })),
      edgeLetters(fold, plan.stitches, onStrip),
      metLetters(fold, onBag),
      arrow(margin.side + unrolledMm * scale + gapMm / 2 + (band.mirrored ? 0 : 2), margin.top + height / 2),
      textAt([margin.side + (unrolledMm * scale) / 2 + leanHalf, margin.top - 1.3], words.say`mouth`, {
        anchor: 'middle',
      }),
      textAt([margin.side + (unrolledMm * scale) / 2 - leanHalf, bottom + 3.4], words.say`bottom`, {
        anchor: 'middle',
      }),
      textAt([bagLeft + bagHalf, margin.top - 1.3], words.say`mouth`, { anchor: 'middle' }),
      textAt([bagLeft + bagHalf, bottom + 3.4], words.say`seam`, { anchor: 'middle' }),
    ].join(''),
  };
}

function pieces(
  fold: Fold,
  fills: Fills,
  scale: number,
  [left, bottom]: Point,
  which: 'unrolled' | 'folded',
): string {
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
  const outline: Polygon =
    which === 'unrolled'
      ? fold.unrolledOutline
      : [
          [0, 0],
          [widthMm, 0],
          [widthMm, depthMm],
          [0, depthMm],
        ];
  return element(
    'g',
    {
      transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} ${round(left)} ${round(bottom)})`,
    },
    polygons.join('') +
      element('polygon', {
        points: pointList(outline),
        fill: 'none',
        stroke: palette.ink,
        'stroke-width': 0.3 / scale,
      }),
  );
}

/** A letter on each edge that is grafted, and its loop numbers at the corners. */
function edgeLetters(fold: Fold, stitches: number, onStrip: (point: Point) => Point): string {
  return (['A', 'B'] as const)
    .map((letter) => {
      const [one, last] = fold.edges[letter];
      const corner = (point: Point, loop: number): string => {
        const [x, y] = onStrip(point);
        const baseline = point[1] > 0 ? y - 1.3 : y + 3.2;
        return textAt([x, baseline], `${letter}${loop}`, { anchor: 'middle', size: 2.3 });
      };
      return badge(onStrip(between(one, last, 0.5)), letter) + corner(one, 1) + corner(last, stitches);
    })
    .join('');
}

function metLetters({ graft, band }: Fold, onBag: (point: Point) => Point): string {
  const [line] = graft;
  if (!line) return '';
  const [x, y] = onBag(between(line[0], line[1], 0.5));
  const shift = band.mirrored ? -3.1 : 3.1;
  return badge([x - shift, y], 'A') + badge([x + shift, y], 'B');
}

const badge = ([x, y]: Point, letter: string): string =>
  element('circle', {
    cx: x,
    cy: y,
    r: 2.2,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': 0.25,
  }) + textAt([x, y + 0.95], letter, { anchor: 'middle', weight: 700 });

const arrow = (x: number, y: number): string =>
  lineFrom([x - 4, y], [x + 3, y], { 'stroke-width': 0.35 }) +
  element('path', { d: `M${round(x + 4.6)} ${round(y)}l-2.2 -1.2v2.4z`, fill: palette.ink });
