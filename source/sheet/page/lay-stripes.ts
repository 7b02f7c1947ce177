/** The list of stripes as it is drawn: a box to tick, the yarn's chip, rows and edges, in two or three columns. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { element, palette, placed, textAt, textWidth } from '../svg/element.ts';
import { chipDrawing } from '../svg/fills.ts';
import { type Across, columnMm, type Type } from './block.ts';
import { type Laid, paragraph, sideBySide, stack } from './laid.ts';
import { hairline, type Room } from './lay-tables.ts';
import { listStripes, type StripeLines } from './stripe-lines.ts';

/** Of the list of stripes: a line with its box, a further line, a line of a note, and what stands between its columns. */
export const stripeMm = { first: 6.3, next: 5.3, note: 5.3, gap: 3 } as const;
/** In a stripe: where its yarn's chip begins, its number ends, and its rows begin; the edges end with the line. */
export const stripeAt = {
  2: { chip: 6.8, number: 24.2, rows: 26.2 },
  3: { chip: 6.4, number: 19.1, rows: 20.2 },
} as const;

/** Width of one of two or three columns of stripes. */
const stripeColumnMm = (across: Across): number => (columnMm - (across - 1) * stripeMm.gap) / across;

/** The list in the columns, three or two, in which it is the shortest, its rows and needles side by side in the widest of fonts. */
export function stripeListFor(
  plan: Plan,
  words: Words,
  type: Type,
): { readonly stripes: readonly StripeLines[]; readonly across: Across } {
  const widest = (texts: readonly string[]): number =>
    Math.max(...texts.map((text) => textWidth(text, type.size)));
  const edgesMm = widest(listStripes(plan, words, 0).flatMap(({ lines }) => lines.map(({ edges }) => edges)));
  const [narrow, broad] = ([3, 2] as const).map((across) => {
    const roomMm = stripeColumnMm(across) - stripeAt[across].rows - edgesMm - 1;
    const stripes = listStripes(plan, words, roomMm / type.size);
    const isFitting = widest(stripes.flatMap(({ lines }) => lines.map(({ rows }) => rows))) <= roomMm;
    const highMm = stripes.reduce((sum, stripe) => sum + heightOfStripe(stripe, across, type), 0) / across;
    return { stripes, across, isFitting, highMm };
  }) as [ListIn, ListIn];
  return narrow.isFitting && narrow.highMm <= broad.highMm ? narrow : broad;
}

interface ListIn {
  readonly stripes: readonly StripeLines[];
  readonly across: Across;
  readonly isFitting: boolean;
  readonly highMm: number;
}

export const stripeList = (columns: readonly (readonly StripeLines[])[], across: Across, room: Room): Laid =>
  sideBySide(
    columns.map((column, i) => [
      i * (stripeColumnMm(across) + stripeMm.gap),
      stack(
        column.map((stripe) => stripeItem(stripe, across, room)),
        0,
      ),
    ]),
  );

export const heightOfStripe = (stripe: StripeLines, across: Across, type: Type): number =>
  stripeMm.first + (stripe.lines.length - 1) * stripeMm.next + notesOf(stripe, across, type).heightMm;

const notesOf = ({ notes }: StripeLines, across: Across, { size }: Type): Laid =>
  stack(
    notes.map((note) =>
      paragraph(note, stripeColumnMm(across) - stripeAt[across].chip, {
        size,
        leading: stripeMm.note,
        weight: 700,
      }),
    ),
    0,
  );

function stripeItem(stripe: StripeLines, across: Across, { type }: Room): Laid {
  const { number, sign, lines } = stripe;
  const { size } = type;
  const heightMm = heightOfStripe(stripe, across, type);
  const widthMm = stripeColumnMm(across);
  const at = stripeAt[across];
  return {
    heightMm,
    draw: ([x, y]) => {
      const base = y + 5;
      const box = element('rect', {
        x: x + 0.2,
        y: y + 0.2,
        width: 6,
        height: 6,
        fill: palette.paper,
        stroke: palette.ink,
        'stroke-width': 0.35,
        class: 'box',
      });
      const written = lines.map(
        ({ rows, edges }, i) =>
          textAt([x + at.rows, base + i * stripeMm.next], rows, { size }) +
          textAt([x + widthMm, base + i * stripeMm.next], edges, { size, anchor: 'end' }),
      );
      return [
        box,
        placed(chipDrawing(sign), [x + at.chip, y + 0.5]),
        textAt([x + at.number, base], String(number), { size, weight: 700, anchor: 'end' }),
        ...written,
        notesOf(stripe, across, type).draw([
          x + at.chip,
          y + heightMm - notesOf(stripe, across, type).heightMm - 0.6,
        ]),
        hairline(x, y + heightMm - 0.1, widthMm),
      ].join('');
    },
  };
}
