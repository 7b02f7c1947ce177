/** Parts of a page of known width and height, and how they are put side by side and below each other. In mm. */
import type { Point } from '../geometry/shape.ts';
import { css, type Drawing, element, palette, placed, textAt } from '../svg/element.ts';
import { wrapText } from '../svg/text-width.ts';

export interface Block {
  readonly heightMm: number;
  /** Markup with the upper left corner at a point. */
  readonly draw: (at: Point) => string;
}

export const textSize = 2.85;
const lineMm = 3.85;
const serifFamily = css`'Palatino Linotype', Palatino, P052, Georgia, 'DejaVu Serif', serif`;

interface ParagraphStyle {
  readonly size?: number;
  readonly colour?: string;
  readonly weight?: number;
  readonly serif?: boolean;
}

export function paragraph(text: string, widthMm: number, style: ParagraphStyle = {}): Block {
  const { size = textSize, colour = palette.ink, weight, serif } = style;
  const leading = (lineMm * size) / textSize;
  const lines = wrapText(text, size * (serif ? 0.95 : weight ? 1.05 : 1), widthMm);
  return {
    heightMm: lines.length * leading,
    draw: ([x, y]) => {
      const written = lines
        .map((line, i) =>
          textAt([x, y + i * leading + size], line, { size, colour, ...(weight ? { weight } : {}) }),
        )
        .join('');
      return serif ? element('g', { 'font-family': serifFamily }, written) : written;
    },
  };
}

export const heading = (text: string, widthMm: number, size = 4.3): Block => {
  const block = paragraph(text, widthMm, { size, serif: true });
  return { ...block, heightMm: block.heightMm + 0.8 };
};

export const picture = (drawing: Drawing): Block => ({
  heightMm: drawing.heightMm,
  draw: (at) => placed(drawing, at),
});

export function stack(blocks: readonly Block[], gapMm: number): Block {
  const heights = blocks.map((block) => block.heightMm);
  return {
    heightMm: heights.reduce((sum, height) => sum + height + gapMm, -gapMm),
    draw: ([x, y]) =>
      blocks
        .map((block, i) =>
          block.draw([x, y + heights.slice(0, i).reduce((sum, height) => sum + height + gapMm, 0)]),
        )
        .join(''),
  };
}

/** Blocks side by side, their tops level; each comes with its distance from the left. */
export const sideBySide = (blocks: readonly (readonly [leftMm: number, Block])[]): Block => ({
  heightMm: Math.max(...blocks.map(([, block]) => block.heightMm)),
  draw: ([x, y]) => blocks.map(([left, block]) => block.draw([x + left, y])).join(''),
});

/** `1.` and a sentence, its further lines set in. */
export const numbered = (number: number, text: string, widthMm: number): Block => {
  const body = paragraph(text, widthMm - 4.4);
  return {
    heightMm: body.heightMm,
    draw: ([x, y]) =>
      textAt([x + 3.3, y + textSize], `${number}.`, { size: textSize, anchor: 'end' }) +
      body.draw([x + 4.4, y]),
  };
};

/** A paragraph beside a thick rule. */
export const ruled = (text: string, widthMm: number): Block => {
  const body = paragraph(text, widthMm - 3.4);
  return {
    heightMm: body.heightMm + 1,
    draw: ([x, y]) =>
      element('rect', { x, y: y + 0.5, width: 0.9, height: body.heightMm, fill: palette.ink }) +
      body.draw([x + 3, y + 0.5]),
  };
};

/** Pages filled from the top, a block never split; a block taller than a page gets one of its own. */
export function paginate(
  blocks: readonly Block[],
  pageMm: number,
  gapMm: number,
): readonly (readonly Block[])[] {
  const pages: Block[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    if (used > 0 && used + block.heightMm > pageMm) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(block);
    used += block.heightMm + gapMm;
  }
  return pages;
}
