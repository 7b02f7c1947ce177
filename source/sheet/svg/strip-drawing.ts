import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { type Strip, stripOf } from '../geometry/strip.ts';
import { markYarns } from '../yarn-marks.ts';
import { acrossDimension, downDimension } from './dimension.ts';
import { type Drawing, element, lineFrom, palette, pointList, round, textAt } from './element.ts';
import { type Fills, fillsFor } from './fills.ts';
import { centreWithin, textWidth } from './text-width.ts';

const margin = { left: 9, right: 4, top: 5, bottom: 10.5 };

const captionSize = 2.5;

export interface StripDrawingOptions {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly id: string;
  /** Rows knitted, 0 to T; the rest is outlined. Left out: all of them. */
  readonly rowsDone?: number;
}

/** The strip as it hangs from the bed, to scale, stripe by stripe, with its counts and dimensions. */
export function stripDrawing(plan: Plan, options: StripDrawingOptions, words: Words): Drawing {
  const { id } = options;
  const strip = stripOf(plan, options.rowsDone ?? plan.rows);
  const scale = Math.min(
    (options.widthMm - margin.left - margin.right) / strip.box.right,
    (options.heightMm - margin.top - margin.bottom) / strip.box.top,
  );
  const [width, height] = [strip.box.right * scale, strip.box.top * scale];
  const [left, top] = [margin.left, margin.top];
  const bottom = top + height;
  const onPaper = ([x, y]: Point): Point => [left + x * scale, bottom - y * scale];
  const [startLeft, startRight] = ends(strip.outline, 0).map((point) => onPaper(point)[0]) as [
    number,
    number,
  ];
  const [endLeft, endRight] = ends(strip.outline, 2).map((point) => onPaper(point)[0]) as [number, number];
  const startCaption = words.say`first row: open on waste yarn`;
  const endCaption = words.say`last row: grafted to the first`;
  const widthMm = Math.max(
    width + margin.left + margin.right,
    ...[startCaption, endCaption].map((text) => textWidth(text, captionSize)),
  );
  const rowsText = `${words.count(plan.rows, 'row')}, ${words.amounts.length((plan.rows * plan.gauge.rowMm) / 10)}`;
  const heightMm = Math.max(height + margin.top + margin.bottom, textWidth(rowsText, 2.6));
  const caption = (x: number, y: number, text: string): string =>
    textAt([centreWithin(x, text, captionSize, widthMm), y], text, { anchor: 'middle', size: captionSize });
  const acrossCm = (plan.stitches * plan.gauge.stitchMm) / 10;
  const fills = fillsFor(markYarns(plan, 'print'), id, 1 / scale);
  return {
    widthMm,
    heightMm,
    title: words.say`The strip: ${words.count(plan.stitches, 'stitch', 'stitches')} across, ${words.count(plan.rows, 'row')}`,
    body: [
      fills.defs,
      element(
        'g',
        {
          transform: `matrix(${scale.toPrecision(8)} 0 0 ${(-scale).toPrecision(8)} ${round(left)} ${round(bottom)})`,
          class: 'strip',
        },
        shapes(strip, fills, scale),
      ),
      caption((endLeft + endRight) / 2, top - 1.6, endCaption),
      acrossDimension(
        startLeft,
        startRight,
        bottom + 2.8,
        `${words.count(plan.stitches, 'stitch', 'stitches')}, ${words.amounts.length(acrossCm)}`,
        widthMm,
      ),
      caption((startLeft + startRight) / 2, bottom + 9.4, startCaption),
      downDimension(left - 3.4, top, bottom, rowsText, 'left', heightMm),
      crawlArrow(plan, onPaper, strip, words),
    ].join(''),
  };
}

/** Left and right end of the first row (corner 0) or the last (corner 2). */
const ends = (outline: readonly Point[], corner: 0 | 2): readonly Point[] =>
  outline.slice(corner, corner + 2).toSorted(([x1], [x2]) => x1 - x2);

function shapes(strip: Strip, fills: Fills, scale: number): string {
  const pieces = strip.pieces.map(({ stripe, yarn, knitted, shape }) =>
    element('polygon', {
      points: pointList(shape),
      class: `stripe ${knitted ? 'knitted' : 'open'}`,
      'data-stripe': stripe,
      fill: knitted ? fills.fillOf(yarn) : palette.paper,
      stroke: knitted ? null : palette.rule,
      'stroke-width': knitted ? null : 0.12 / scale,
    }),
  );
  const outline = element('polygon', {
    points: pointList(strip.outline),
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.3 / scale,
    class: 'outline',
  });
  return pieces.join('') + outline;
}

/** An arrow in the corner that the leaning strip leaves free: which way the work crawls. */
function crawlArrow(
  { brief }: Plan,
  onPaper: (point: Point) => Point,
  { box, outline }: Strip,
  words: Words,
): string {
  const [trailingX] = outline[3] ?? [0];
  const free = brief.crawl === 'right' ? trailingX : box.right - trailingX;
  const [from] = onPaper([brief.crawl === 'right' ? 0 : box.right - free, 0]);
  const [to] = onPaper([brief.crawl === 'right' ? free : box.right, 0]);
  if (to - from < 22) return '';
  const [, top] = onPaper([0, box.top]);
  const [middle, y] = [(from + to) / 2, top + 5];
  const reach = brief.crawl === 'right' ? 6 : -6;
  return (
    lineFrom([middle - reach, y], [middle + reach, y], { 'stroke-width': 0.3 }) +
    element('path', {
      d: `M${round(middle + reach)} ${round(y)}l${-reach / 4} -0.9v1.8z`,
      fill: palette.ink,
    }) +
    textAt([middle, y - 1.6], words.say`crawls ${brief.crawl}`, { anchor: 'middle' })
  );
}
