/** Parts of a drawn page of known width and height, and how they are put side by side and below each other. In mm. */
import type { Point } from '../geometry/shape.ts';
import { css, element, markupAt, palette, textAt, textWidth, wrapText } from '../svg/element.ts';
import { escapeXml } from '../text.ts';

export interface Laid {
  readonly heightMm: number;
  /** Markup with the upper left corner at a point. */
  readonly draw: (at: Point) => string;
}

const serifFamily = css`serif`;

export interface Lettering {
  readonly size: number;
  readonly leading: number;
  readonly colour?: string;
  readonly weight?: number;
  readonly serif?: boolean;
}

/** How much wider than measured letters may come out. */
const [plainShare, boldShare] = [1.005, 1.14];

export function paragraph(text: string, widthMm: number, style: Lettering): Laid {
  const { size, leading, colour = palette.ink, weight, serif } = style;
  const lines = wrapText(text, size * (weight ? boldShare : plainShare), widthMm);
  return {
    heightMm: lines.length * leading,
    draw: ([x, y]) => {
      const written = lines
        .map((line, i) =>
          textAt([x, y + i * leading + (leading + size * 0.72) / 2], line, {
            size,
            colour,
            ...(weight ? { weight } : {}),
          }),
        )
        .join('');
      return serif ? element('g', { 'font-family': serifFamily }, written) : written;
    },
  };
}

/** A word or more of a paragraph, in bold or not. */
export interface Piece {
  readonly text: string;
  readonly bold?: true;
}

/** A paragraph of which some words are bold. */
export function mixedParagraph(pieces: readonly Piece[], widthMm: number, style: Lettering): Laid {
  const { size, leading, colour = palette.ink } = style;
  const measured = (bold: true | undefined): number => size * (bold ? boldShare : plainShare);
  const words = pieces.flatMap(({ text, bold }) =>
    text
      .split(' ')
      .flatMap((word) =>
        wrapText(word, measured(bold), widthMm - size).map((part) => ({ text: part, bold })),
      ),
  );
  const lines = asManyAsFit(words, widthMm, ({ text, bold }) => textWidth(`${text} `, measured(bold)));
  return {
    heightMm: lines.length * leading,
    draw: ([x, y]) =>
      lines
        .map((line, i) => {
          const at: Point = [x, y + i * leading + (leading + size * 0.72) / 2];
          const spans = line.map(({ text, bold }) =>
            bold ? element('tspan', { 'font-weight': 700 }, escapeXml(text)) : escapeXml(text),
          );
          return markupAt(at, spans.join(' '), { size, colour });
        })
        .join(''),
  };
}

/** As many in each line, or on each page, as it has room for. */
export function asManyAsFit<T>(
  all: readonly T[],
  roomMm: number,
  sizeOf: (one: T) => number,
): readonly (readonly T[])[] {
  const lines: T[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const one of all) {
    const size = sizeOf(one);
    if (used + size > roomMm) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push(one);
    used += size;
  }
  return lines;
}

export function stack(parts: readonly Laid[], gapMm: number): Laid {
  const tops: number[] = [];
  let down = 0;
  for (const part of parts) {
    tops.push(down);
    down += part.heightMm + gapMm;
  }
  return {
    heightMm: Math.max(0, down - gapMm),
    draw: ([x, y]) => parts.map((part, i) => part.draw([x, y + (tops[i] ?? 0)])).join(''),
  };
}

/** Side by side, their tops level; each comes with its distance from the left. */
export const sideBySide = (parts: readonly (readonly [leftMm: number, part: Laid])[]): Laid => ({
  heightMm: Math.max(0, ...parts.map(([, part]) => part.heightMm)),
  draw: ([x, y]) => parts.map(([left, part]) => part.draw([x + left, y])).join(''),
});

/** More above and below. */
export const padded = (part: Laid, above: number, below: number): Laid => ({
  heightMm: part.heightMm + above + below,
  draw: ([x, y]) => part.draw([x, y + above]),
});

/** A paragraph beside a thick rule. */
export function ruled(text: string, widthMm: number, style: Lettering): Laid {
  const body = paragraph(text, widthMm - 3.4, style);
  return {
    heightMm: body.heightMm,
    draw: ([x, y]) =>
      element('rect', { x, y: y + 0.4, width: 0.9, height: body.heightMm - 0.8, fill: palette.ink }) +
      body.draw([x + 3.4, y]),
  };
}

/** The largest of the sizes in which the text takes no more than so many lines; else the smallest. */
export const sizeFor = (text: string, widthMm: number, lines: number, sizes: readonly number[]): number =>
  sizes.find((size) => textWidth(text, size) <= widthMm * (lines - 0.4)) ?? sizes.at(-1) ?? 4;
