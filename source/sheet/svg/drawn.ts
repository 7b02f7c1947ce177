/** Parts of a drawing that know how far they reach, so that a drawing is as large as what is in it. In mm on paper, y down. */
import { type Box, boxAround, type Point, type Polygon } from '../geometry/shape.ts';
import {
  type Drawing,
  element,
  lineFrom,
  palette,
  round,
  strokePath,
  type TextStyle,
  textAt,
  textWidth,
  usualTextMm,
} from './element.ts';

export interface Drawn {
  readonly markup: string;
  readonly reach: Polygon;
}

/** Letters reach so far above and below their line, in parts of their size. */
const [above, below] = [0.8, 0.24];

export function written(at: Point, text: string, style: TextStyle = {}): Drawn {
  const { size = usualTextMm, anchor = 'start', weight, turn = 0 } = style;
  const width = textWidth(text, size) * (weight ? 1.06 : 1);
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const [sin, cos] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
  const corners: Polygon = [
    [left, -above * size],
    [left + width, -above * size],
    [left + width, below * size],
    [left, below * size],
  ];
  return {
    markup: textAt(at, text, style),
    reach: corners.map(([x, y]): Point => [at[0] + x * cos - y * sin, at[1] + x * sin + y * cos]),
  };
}

/** Markup of which it is known how far it reaches. */
export const reaching = (markup: string, reach: Polygon): Drawn => ({ markup, reach });

/** Markup that stays within the others. */
export const within = (markup: string): Drawn => ({ markup, reach: [] });

export const reachOf = (parts: readonly Drawn[]): Box => boxAround(parts.flatMap(({ reach }) => reach));

/** Which side of the cloth a picture shows, and the words for it. */
export interface ClothSide {
  readonly cloth: 'purl' | 'knit';
  readonly text: string;
}

/** A drawing just large enough; the side of the cloth stands in its upper left corner. */
export function drawingOf(
  title: string,
  parts: readonly Drawn[],
  side: ClothSide | null,
  size = usualTextMm,
): Drawing {
  const inside = reachOf(parts);
  const headMm = side === null ? 0 : 1.75 * size;
  const pad = 0.3;
  const head = side === null ? null : drawnSide(side, size);
  return {
    widthMm: Math.max(inside.right - inside.left, head ? reachOf([head]).right : 0) + 2 * pad,
    heightMm: inside.top - inside.bottom + headMm + 2 * pad,
    title,
    body:
      (head?.markup ?? '') +
      element(
        'g',
        { transform: `translate(${round(pad - inside.left)} ${round(pad + headMm - inside.bottom)})` },
        parts.map(({ markup }) => markup).join(''),
      ),
  };
}

/** The room that a drawing may have. */
export interface DrawingRoom {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** The drawing in less and less room until it is no wider than it may be: words stand round it, so that is seen when it is drawn. */
export function fitted(room: DrawingRoom, drawnIn: (room: DrawingRoom) => Drawing): Drawing {
  let { widthMm, heightMm } = room;
  let drawing = drawnIn(room);
  for (let tries = 0; drawing.widthMm > room.widthMm && tries < 14; tries++) {
    [widthMm, heightMm] = [widthMm * 0.94, heightMm * 0.94];
    drawing = drawnIn({ widthMm, heightMm });
  }
  return drawing;
}

/** Two knit stitches or two purl bumps, and the words; its upper left corner is at 0. */
export function drawnSide({ cloth, text }: ClothSide, size: number): Drawn {
  const [h, w] = [size * 0.78, size * 0.8];
  const one = (x: number): string =>
    cloth === 'knit'
      ? `M${round(x)} ${round(size - h)}l${round(w / 2)} ${round(h)} ${round(w / 2)} ${round(-h)}`
      : `M${round(x)} ${round(size - h * 0.25)}c0 ${round(-h * 0.8)} ${round(w)} ${round(-h * 0.8)} ${round(w)} 0`;
  const sign = strokePath(one(0.3) + one(0.3 + w), {
    stroke: palette.quiet,
    'stroke-width': 0.14 * size,
    'stroke-linejoin': 'round',
  });
  const words = written([size * 2.2, size], text, { size, colour: palette.quiet });
  return reaching(sign + words.markup, [[0, 0], ...words.reach]);
}

export const discRadiusMm = 2.4;

/** A letter on a disc. */
export function disc([x, y]: Point, letter: string, r = discRadiusMm): Drawn {
  const circle = element('circle', {
    cx: x,
    cy: y,
    r,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': r * 0.12,
  });
  const size = r * 1.25;
  return reaching(circle + textAt([x, y + size * 0.36], letter, { anchor: 'middle', weight: 700, size }), [
    [x - r, y - r],
    [x + r, y + r],
  ]);
}

/** A straight arrow from one point to another. */
export function arrow([x1, y1]: Point, [x2, y2]: Point, width = 0.4): Drawn {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const head = Math.min(length * 0.6, 5.5 * width);
  const [bx, by] = [x2 - ux * head, y2 - uy * head];
  const wing = head * 0.5;
  const tip = `${round(x2)},${round(y2)} ${round(bx - uy * wing)},${round(by + ux * wing)} ${round(bx + uy * wing)},${round(by - ux * wing)}`;
  return reaching(
    strokePath(`M${round(x1)} ${round(y1)}L${round(bx)} ${round(by)}`, { 'stroke-width': width }) +
      element('polygon', { points: tip, fill: palette.ink }),
    [
      [x1, y1 - wing],
      [x2, y2 + wing],
    ],
  );
}

/** Of dimension lines as on a working drawing: a thin line between two ticks, its figure beside it. */
const thin = { stroke: palette.quiet, 'stroke-width': 0.15 };
const tick = 0.9;

/** Across with its figure below, or down with its figure to the right or the left, turned to read from below. */
export function measure(
  from: Point,
  to: Point,
  text: string,
  side: 'left' | 'right' = 'right',
): readonly Drawn[] {
  const [[x1, y1], [x2, y2]] = [from, to];
  const across = y1 === y2;
  const [dx, dy] = across ? [0, tick] : [tick, 0];
  const lines = [
    lineFrom(from, to, thin),
    lineFrom([x1 - dx, y1 - dy], [x1 + dx, y1 + dy], thin),
    lineFrom([x2 - dx, y2 - dy], [x2 + dx, y2 + dy], thin),
  ].join('');
  const middle: Point = [(x1 + x2) / 2, (y1 + y2) / 2];
  const off = side === 'left' ? -1.2 : 0.9 + usualTextMm * 0.8;
  return [
    reaching(lines, [
      [x1 - dx, y1 - dy],
      [x2 + dx, y2 + dy],
    ]),
    across
      ? written([middle[0], middle[1] + 3.6], text, { anchor: 'middle' })
      : written([middle[0] + off, middle[1]], text, { anchor: 'middle', turn: -90 }),
  ];
}
