import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { stripOf } from '../geometry/strip.ts';
import { formatAngle } from '../text.ts';
import { type Drawing, element, pair, pointList, round, strokePath, textAt } from './element.ts';
import { colours, gatheredBag, stitchInk } from './gathered-bag.ts';

type Theme = 'light' | 'dark';

const themes = {
  light: { card: '#faf6ef', ink: '#3a3530', quiet: '#6b645a', bed: '#8f887c', shadow: 0.12 },
  dark: { card: '#211f1c', ink: '#ece7de', quiet: '#b9b2a6', bed: '#a39b8e', shadow: 0.45 },
} as const;

/** The strip's part and the bag's part of the card, in mm. */
const card = { width: 225, height: 112, bedY: 22, floorY: 94, stripWide: 122, bagX: 176 } as const;

export function heroDrawing(plan: Plan, words: Words, theme: Theme): Drawing {
  const { sheet, amounts } = words;
  const look = themes[theme];
  const strip = stripOf(plan, plan.rows);
  const scale = Math.min(card.stripWide / strip.box.right, (card.floorY - card.bedY - 2) / strip.box.top);
  const size = sheet.by(amounts.length(plan.size.widthCm), amounts.length(plan.size.depthCm));
  const angle = formatAngle(plan.size.stripeAngleDeg);
  return {
    widthMm: card.width,
    heightMm: card.height,
    title: sheet.shows.hero,
    body: [
      element(
        'defs',
        {},
        [...colours(plan)].map(([yarn, colour], i) => bumps(`bump-${i}`, yarn, colour, plan, scale)).join(''),
      ),
      element('rect', { x: 0, y: 0, width: card.width, height: card.height, rx: 4, fill: look.card }),
      hangingStrip(plan, scale, theme),
      strokePath('M127 50h9', { stroke: look.ink, 'stroke-width': 1 }),
      element('polygon', { points: '139.6,50 135.2,47.8 135.2,52.2', fill: look.ink }),
      gatheredBag(plan, {
        middleMm: card.bagX,
        floorMm: card.floorY,
        highMm: card.floorY - card.bedY - 6,
        ...look,
      }),
      textAt([10, 105], sheet.heroStrip(plan.stitches, plan.brief.crawl, plan.brief.shapeEveryRows), {
        size: 3.9,
        colour: look.quiet,
      }),
      textAt([card.bagX, 105], sheet.heroBag(size, angle), {
        size: 3.9,
        colour: look.quiet,
        anchor: 'middle',
      }),
    ].join(''),
  };
}

/** One purl stitch, repeated over the strip. */
function bumps(id: string, yarn: string, colour: string, { gauge }: Plan, scale: number): string {
  const [w, h] = [gauge.stitchMm * scale, gauge.rowMm * scale];
  const d = `M0 ${round(h * 0.72)}c${round(w * 0.2)} ${round(-h * 0.62)} ${round(w * 0.8)} ${round(-h * 0.62)} ${round(w)} 0`;
  return element(
    'pattern',
    { id, width: w, height: h, patternUnits: 'userSpaceOnUse', 'data-yarn': yarn },
    element('rect', { width: w, height: h, fill: colour }) +
      strokePath(d, { stroke: stitchInk(colour), 'stroke-width': round(h * 0.28) }),
  );
}

function hangingStrip(plan: Plan, scale: number, theme: Theme): string {
  const look = themes[theme];
  const strip = stripOf(plan, plan.rows);
  const yarns = [...colours(plan).keys()];
  const left = 12;
  const at = ([x, y]: Point): Point => [left + x * scale, card.bedY + 2 + (strip.box.top - y) * scale];
  const pieces = strip.pieces.map(({ stripe, yarn, shape }) =>
    element('polygon', {
      points: pointList(shape.map(at)),
      fill: `url(#bump-${yarns.indexOf(yarn)})`,
      class: 'strip-stripe',
      'data-stripe': stripe,
    }),
  );
  const [bedLeft, bedRight] = [left - 5, left + strip.box.right * scale + 5];
  const pitch = plan.gauge.stitchMm * scale;
  const needles = Array.from({ length: Math.floor((bedRight - bedLeft - 2) / pitch) }, (_, i) => {
    const x = bedLeft + 1 + (i + 0.5) * pitch;
    return `M${pair([x, card.bedY])}v2`;
  });
  const carriageX = plan.brief.homeSide === 'right' ? bedRight - 26 : bedLeft + 6;
  return [
    element('g', { transform: `translate(0 0)` }, pieces.join('')),
    strokePath(needles.join(''), { stroke: look.bed, 'stroke-width': 0.45 }),
    element('rect', {
      x: bedLeft,
      y: card.bedY - 2.2,
      width: bedRight - bedLeft,
      height: 2.4,
      rx: 1.2,
      fill: look.bed,
    }),
    element('rect', { x: carriageX, y: card.bedY - 9, width: 20, height: 6.4, rx: 1.4, fill: '#4b5a6b' }),
    element('rect', { x: carriageX + 7, y: card.bedY - 11, width: 6, height: 3, rx: 1, fill: '#38434f' }),
  ].join('');
}
