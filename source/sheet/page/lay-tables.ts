import { lineFrom, palette, placed, textAt, textWidth } from '../svg/element.ts';
import { type Fills, patchDrawing } from '../svg/fills.ts';
import { type Blank, besideGapMm, type Detail, type Type, type YarnRow } from './block.ts';
import { type Laid, type Lettering, padded, paragraph, sideBySide, stack } from './laid.ts';

export interface Room {
  readonly widthMm: number;
  readonly type: Type;
  readonly fills: Fills;
}

/** Columns of the yarn table: letter, name, use, length, weight, what is there. */
export const yarnColumns = [8, 16, 46, 100, 118, 146] as const;
const factLabelMm = 33;
export const hairline = (x: number, y: number, widthMm: number): string =>
  lineFrom([x, y], [x + widthMm, y], { stroke: '#cfc9bf', 'stroke-width': 0.2 });

const underlined = (part: Laid, widthMm: number): Laid => ({
  heightMm: part.heightMm + 1.2,
  draw: ([x, y]) => part.draw([x, y + 0.5]) + hairline(x, y + part.heightMm + 1.1, widthMm),
});

export const detailTable = (facts: readonly Detail[], { widthMm, type }: Room): Laid => {
  const plain: Lettering = { size: type.size, leading: type.leading };
  return stack(
    facts.map(({ label, value }) =>
      underlined(
        sideBySide([
          [0, paragraph(label, factLabelMm - 1, { ...plain, colour: palette.quiet })],
          [factLabelMm, paragraph(value, widthMm - factLabelMm, plain)],
        ]),
        widthMm,
      ),
    ),
    0,
  );
};

/** Widths of the four large numbers, in parts of the page: the second is a span of needles. */
export const numberShares = [0.15, 0.38, 0.22, 0.25] as const;

export function numbers(
  list: readonly { readonly value: string; readonly of: string }[],
  { widthMm, type }: Room,
): Laid {
  let left = 0;
  return padded(
    sideBySide(
      list.map(({ value, of }, i) => {
        const own = (numberShares[i] ?? 0.25) * widthMm;
        const at = left;
        left += own;
        return [
          at,
          stack(
            [
              paragraph(value, own - 2, { size: numberSize, leading: numberSize * 1.15, weight: 700 }),
              paragraph(of, own - 4, { size: type.size, leading: type.leading, colour: palette.quiet }),
            ],
            0.4,
          ),
        ];
      }),
    ),
    0.6,
    0.6,
  );
}
export const numberSize = 8.2;

export function yarnTable(
  titles: readonly string[],
  yarns: readonly YarnRow[],
  { widthMm, type, fills }: Room,
): Laid {
  const ends = [...yarnColumns.slice(1), widthMm + 2];
  const row = (cells: readonly string[], style: Partial<Lettering>, patch: string): Laid => {
    const body = sideBySide(
      cells.map((cell, i) => {
        const left = yarnColumns[i] ?? 0;
        return [
          left,
          paragraph(cell, (ends[i] ?? widthMm) - left - 2, {
            size: type.size,
            leading: type.leading,
            ...style,
          }),
        ];
      }),
    );
    return underlined(
      {
        heightMm: body.heightMm,
        draw: ([x, y]) => (patch ? placed({ body: patch }, [x, y + 0.5]) : '') + body.draw([x, y]),
      },
      widthMm,
    );
  };
  const [, ...named] = titles;
  const rows = yarns.map(({ name, sign, use, length, weight, have }) =>
    row(
      [sign?.letter ?? '', name, use, length, weight, have],
      {},
      sign ? patchDrawing(fills, sign.yarn).body : '',
    ),
  );
  return stack([row(['', ...named], { colour: palette.quiet }, ''), ...rows], 0);
}

/** Two columns of labels, each with a line to write on; what is measured has two, a sum one behind it. */
export function blankTable(blanks: readonly Blank[], { widthMm, type }: Room): Laid {
  const columnMm = (widthMm - besideGapMm) / 2;
  const { size } = type;
  const item = ({ label, value, isSum }: Blank): Laid => ({
    heightMm: 6.4,
    draw: ([x, y]) => {
      const rule = (from: number, to: number): string =>
        lineFrom([x + from, y + 5], [x + to, y + 5], { 'stroke-width': 0.25 });
      const written = textAt([x, y + 4.6], label, { size, colour: palette.quiet });
      if (value === '') return written + rule(32, columnMm);
      const valueAt = isSum ? 32 : 46;
      const from = Math.max(isSum ? 66 : 78, valueAt + textWidth(value, size) + 1.5);
      return `${written}${isSum ? '' : rule(32, 45)}${textAt([x + valueAt, y + 4.6], value, { size })}${rule(from, columnMm)}`;
    },
  });
  const half = Math.ceil(blanks.length / 2);
  return sideBySide([
    [0, stack(blanks.slice(0, half).map(item), 0)],
    [columnMm + besideGapMm, stack(blanks.slice(half).map(item), 0)],
  ]);
}

/** Where the columns of a list to write in begin, in parts of the page: the first is for a name. */
export const registerShares = [0, 0.4, 0.65, 0.9] as const;

export function register(titles: readonly string[], count: number, room: Room): Laid {
  const { widthMm, type } = room;
  const plain: Lettering = { size: type.size, leading: type.leading, colour: palette.quiet };
  const head = titles.map(
    (title, i) => [(registerShares[i] ?? 0) * widthMm, paragraph(title, widthMm / 4, plain)] as const,
  );
  return stack([sideBySide(head), linesToWriteOn(count, room)], 0);
}

export const linesToWriteOn = (count: number, { widthMm }: Room): Laid => ({
  heightMm: count * 7,
  draw: ([x, y]) =>
    Array.from({ length: count }, (_, i) => hairline(x, y + (i + 1) * 7 - 0.4, widthMm)).join(''),
});
