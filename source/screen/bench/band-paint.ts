/** What the band is drawn with: the yarn's colour and letters on it, in every depth of colour. */
import { inkOn } from '../../shared/colour.ts';
import type { Line, Span } from '../../sheet/terminal/ansi.ts';
import { edgeInk, filled, onYarn } from '../../sheet/terminal/on-yarn.ts';
import type { BandText } from './band-text.ts';
import type { Brush } from './row.ts';

/** One yarn's part of the band. */
export interface Block {
  readonly yarn: string | null;
  readonly width: number;
  readonly text: BandText;
}

export interface BandPaint {
  readonly fill: (cells: number) => Span;
  readonly text: (text: string) => Span;
  /** A full square of a big letter. */
  readonly square: (cells: number) => Span;
  /** Cells of which the upper, the lower, or both halves belong to a letter. */
  readonly halves: (text: string) => Span;
  readonly rim: (where: 'top' | 'bottom') => Line;
  /** Cells between the band's end and its text. */
  readonly inset: number;
}

/** Without a yarn of the bag in the hands there is no colour: two lines hold the text between them. */
export function paintOf({ yarn, width }: Block, { marks, depth, ascii }: Brush): BandPaint {
  const mark = yarn === null ? undefined : marks.get(yarn);
  if (!mark) {
    const line = [{ text: (ascii ? '=' : '━').repeat(width) }];
    return {
      fill: (cells) => ({ text: ' '.repeat(cells) }),
      text: (text) => ({ text, bold: true }),
      square: (cells) => ({ text: (ascii ? '#' : '█').repeat(cells) }),
      halves: (text) => ({ text }),
      rim: () => line,
      inset: 2,
    };
  }
  const fill = (cells: number): Span =>
    depth === 'none' ? { text: ' '.repeat(cells), inverse: true } : filled(mark, cells, depth, ascii);
  const text = (wanted: string): Span => ({
    ...onYarn(mark, depth === '16' ? ` ${wanted} ` : wanted, depth),
    bold: true,
  });
  const [top, bottom] = ascii ? ['-', '_'] : ['▔', '▁'];
  return {
    fill,
    text,
    square: (cells) => {
      const text = ' '.repeat(cells);
      return depth === 'none' ? { text } : { text, ground: inkOn(mark.colour) };
    },
    halves: (text) =>
      depth === 'none' ? { text, inverse: true } : { text, ink: inkOn(mark.colour), ground: mark.colour },
    rim: (where) =>
      mark.edged && depth !== 'none'
        ? [{ text: (where === 'top' ? top : bottom).repeat(width), ink: edgeInk(depth), ground: mark.colour }]
        : [fill(width)],
    inset: 2,
  };
}
