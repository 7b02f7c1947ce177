/** The tables of the SVG sheet: facts, yarn, stripes to tick, blanks to fill in. */
import type { Words } from '../../wording/words.ts';
import { patchDrawing } from '../svg/band-drawing.ts';
import { element, lineFrom, palette, placed, textAt } from '../svg/element.ts';
import type { Fills } from '../svg/fills.ts';
import { wrapText } from '../svg/text-width.ts';
import type { Fact } from './content.ts';
import type { StripeRow } from './stripe-rows.ts';
import { type Block, paragraph, sideBySide, stack, textSize } from './svg-blocks.ts';
import type { YarnRow } from './yarn-rows.ts';

const hairline = (x: number, y: number, widthMm: number): string =>
  lineFrom([x, y], [x + widthMm, y], { stroke: '#cfc9bf', 'stroke-width': 0.2 });

/** A block with a thin rule under it. */
const underlined = (block: Block, widthMm: number): Block => ({
  heightMm: block.heightMm + 1.3,
  draw: ([x, y]) => block.draw([x, y + 0.4]) + hairline(x, y + block.heightMm + 1.2, widthMm),
});

export const factTable = (facts: readonly Fact[], widthMm: number): Block =>
  stack(
    facts.map(({ label, value }) =>
      underlined(
        sideBySide([
          [0, paragraph(label, 30, { colour: palette.quiet })],
          [31, paragraph(value, widthMm - 31, { weight: 600 })],
        ]),
        widthMm,
      ),
    ),
    0,
  );

export function yarnTable(fills: Fills, yarns: readonly YarnRow[], widthMm: number, words: Words): Block {
  const row = (cells: readonly string[], style: { colour?: string }, patch: string): Block => {
    const lefts = [8, 12, 68, 108, 126, 152] as const;
    const widths = [5, 54, 38, 17, 25, widthMm - 152] as const;
    const blocks = cells.map((cell, i) => [lefts[i] ?? 0, paragraph(cell, widths[i] ?? 0, style)] as const);
    const body = sideBySide(blocks);
    return underlined(
      {
        heightMm: body.heightMm,
        draw: ([x, y]) => (patch ? placed({ body: patch }, [x, y + 0.3]) : '') + body.draw([x, y]),
      },
      widthMm,
    );
  };
  const titles = [
    '',
    words.say`Yarn`,
    words.say`For`,
    words.say`Needs`,
    words.say`with 10 % more`,
    words.say`You have`,
  ];
  const head = row(titles, { colour: palette.quiet }, '');
  const rows = yarns.map(({ name, mark, use, length, weight, have }) => {
    return row(
      [mark?.letter ?? '', name, use, length, weight, have],
      {},
      mark ? patchDrawing(fills, mark.yarn).body : '',
    );
  });
  return stack([head, ...rows], 0);
}

const stripeMm = 4.7;

/** Stripes down three columns, in blocks of at most `mostRows` lines. */
export function stripeTables(
  fills: Fills,
  stripes: readonly StripeRow[],
  widthMm: number,
  mostRows: number,
): readonly Block[] {
  const gap = 6;
  const columnMm = (widthMm - 2 * gap) / 3;
  const items = stripes.map((stripe) =>
    stripeItem(stripe, columnMm, patchDrawing(fills, stripe.mark.yarn).body),
  );
  const perTable = mostRows * 3;
  return Array.from({ length: Math.ceil(items.length / perTable) }, (_, table) => {
    const part = items.slice(table * perTable, (table + 1) * perTable);
    const perColumn = Math.ceil(part.length / 3);
    return sideBySide(
      [0, 1, 2]
        .map(
          (column) =>
            [
              column * (columnMm + gap),
              stack(part.slice(column * perColumn, (column + 1) * perColumn), 0),
            ] as const,
        )
        .filter(([, block]) => block.heightMm > 0),
    );
  });
}

function stripeItem({ number, mark, rows, edges, rehang }: StripeRow, widthMm: number, patch: string): Block {
  const again = rehang === null ? [] : wrapText(rehang, 2.6, widthMm - 5);
  const heightMm = stripeMm + again.length * 3.4;
  return {
    heightMm,
    draw: ([x, y]) =>
      [
        element('rect', {
          x: x + 0.15,
          y: y + 0.6,
          width: 3.2,
          height: 3.2,
          fill: palette.paper,
          stroke: palette.ink,
          'stroke-width': 0.3,
        }),
        placed({ body: patch }, [x + 4.6, y + 0.7]),
        textAt([x + 11.6, y + 3.2], mark.letter, { size: textSize }),
        textAt([x + 20, y + 3.2], String(number), { size: textSize, weight: 700, anchor: 'end' }),
        textAt([x + 22, y + 3.2], rows, { size: textSize }),
        textAt([x + widthMm, y + 3.2], edges, { size: textSize, anchor: 'end' }),
        ...again.map((line, i) =>
          textAt([x + 5, y + stripeMm + 2 + i * 3.4], line, { size: 2.6, weight: 700 }),
        ),
        hairline(x, y + heightMm - 0.1, widthMm),
      ].join(''),
  };
}

/** Two columns of labels, each with a line to write on. */
export function blankTable(blanks: readonly Fact[], widthMm: number): Block {
  const columnMm = (widthMm - 7) / 2;
  const item = ({ label, value }: Fact): Block => ({
    heightMm: 6.4,
    draw: ([x, y]) => {
      const rule = (from: number, to: number): string =>
        lineFrom([x + from, y + 5], [x + to, y + 5], { 'stroke-width': 0.25 });
      const written = textAt([x, y + 4.6], label, { size: textSize, colour: palette.quiet });
      if (value === '') return written + rule(28, columnMm);
      return (
        written + rule(28, 44) + textAt([x + 45, y + 4.6], value, { size: textSize }) + rule(73, columnMm)
      );
    },
  });
  const half = Math.ceil(blanks.length / 2);
  return sideBySide([
    [0, stack(blanks.slice(0, half).map(item), 0)],
    [columnMm + 7, stack(blanks.slice(half).map(item), 0)],
  ]);
}
