/** Coloured text for a terminal: ECMA-48 SGR sequences, and rows of styled characters. */
import {
  type ColourDepth,
  fixedIndex,
  inkOn,
  mixColours,
  parseColour,
  sixteenIndex,
} from '../../shared/colour.ts';
import { harmless } from '../../shared/plain-text.ts';
import type { Pattern, YarnSign } from '../yarn-signs.ts';

/** A run of text in one style. Colours are `#rrggbb`; null leaves the terminal's own. */
export interface Span {
  readonly text: string;
  readonly ink?: string | null;
  readonly ground?: string | null;
  readonly bold?: boolean;
  readonly dim?: boolean;
  readonly inverse?: boolean;
}
export type Line = readonly Span[];

/** Gives a colour its SGR parameters, as ink or as ground. */
type Palette = (colour: string, place: 'ink' | 'ground') => string;

const trueColour: Palette = (colour, place) => {
  const channels = parseColour(colour).map((value) => Math.round(value * 255));
  return `${place === 'ink' ? 38 : 48};2;${channels.join(';')}`;
};

const fixedColours: Palette = (colour, place) => `${place === 'ink' ? 38 : 48};5;${fixedIndex(colour)}`;

const sixteenColours: Palette = (colour, place) => {
  const index = sixteenIndex(colour);
  return String((index < 8 ? 30 : 82) + index + (place === 'ink' ? 0 : 10));
};

const palettes: Readonly<Record<ColourDepth, Palette | null>> = {
  true: trueColour,
  '256': fixedColours,
  '16': sixteenColours,
  none: null,
};

/**
 * One string for the line, its styles closed at the end. Without colours bold and reversed text are left. Dim is used only
 * where there are many colours: some terminals that have but 16 show it as a grey that can hardly be read.
 */
export function formatLine(line: Line, depth: ColourDepth): string {
  const palette = palettes[depth];
  let text = '';
  let style = '';
  for (const span of line) {
    if (span.text === '') continue;
    const wanted = styleOf(span, depth, palette);
    if (wanted !== style) text += `\u001b[${wanted === '' ? '0' : `0;${wanted}`}m`;
    style = wanted;
    text += harmless(span.text);
  }
  return style === '' ? text.trimEnd() : `${text}\u001b[0m`;
}

const styleOf = (
  { ink, ground, bold, dim, inverse }: Span,
  depth: ColourDepth,
  palette: Palette | null,
): string =>
  [
    bold ? '1' : '',
    dim && (depth === 'true' || depth === '256') ? '2' : '',
    inverse ? '7' : '',
    ink && palette ? palette(ink, 'ink') : '',
    ground && palette ? palette(ground, 'ground') : '',
  ]
    .filter((one) => one !== '')
    .join(';');

/** Characters in a row; each stands alone, so that marks can be set on what is there already. */
export class Cells {
  readonly #cells: Span[];

  constructor(width: number, span: Span) {
    this.#cells = Array.from({ length: width }, () => span);
  }

  get width(): number {
    return this.#cells.length;
  }

  put(column: number, text: string, style: Omit<Span, 'text'> = {}): this {
    for (const [i, letter] of [...text].entries()) {
      if (column + i >= 0 && column + i < this.#cells.length)
        this.#cells[column + i] = { ...style, text: letter };
    }
    return this;
  }

  /** Neighbours of one style joined. */
  line(): Line {
    const line: Span[] = [];
    for (const cell of this.#cells) {
      const last = line.at(-1);
      if (last && alike(last, cell)) line[line.length - 1] = { ...last, text: last.text + cell.text };
      else line.push(cell);
    }
    return line;
  }
}

const alike = (a: Span, b: Span): boolean =>
  (a.ink ?? null) === (b.ink ?? null) &&
  (a.ground ?? null) === (b.ground ?? null) &&
  (a.bold ?? false) === (b.bold ?? false) &&
  (a.dim ?? false) === (b.dim ?? false) &&
  (a.inverse ?? false) === (b.inverse ?? false);

/*
 * Text and fillings in a yarn's colour. Black or white on a true colour is always readable; among 16 colours no pair is
 * in every scheme, so text keeps the terminal's own colours there and stands beside the yarn's, not on it.
 */

export const edgeInk = (depth: ColourDepth): string | null =>
  depth === 'true' || depth === '256' ? '#808080' : null;

/** Text on the yarn's colour. */
export function onYarn({ colour }: YarnSign, text: string, depth: ColourDepth): Span {
  if (depth === 'none') return { text, inverse: true };
  return depth === '16' ? { text } : { text, ink: inkOn(colour), ground: colour };
}

/** Three cells that stand for the yarn: its letter on its colour. */
export function sampleOf(sign: YarnSign, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: `[${sign.letter}]` }];
  if (depth === '16') return [filled(sign, 2, depth, ascii), { text: sign.letter }];
  return [onYarn(sign, ` ${sign.letter} `, depth)];
}

/** The yarn's name in its colour; the name alone tells it where there is none. */
export function chip(sign: YarnSign, name: string, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: name }];
  return depth === '16'
    ? [filled(sign, 2, depth, ascii), { text: ` ${name}` }]
    : [onYarn(sign, ` ${name} `, depth)];
}

const shades: Readonly<Record<Pattern, string>> = {
  plain: '█',
  rising: '▓',
  dots: '▒',
  falling: '░',
  grid: '▚',
  level: '▞',
  upright: '▌',
};
const asciiShades: Readonly<Record<Pattern, string>> = {
  plain: '#',
  rising: '=',
  dots: ':',
  falling: '%',
  grid: '+',
  level: '-',
  upright: '|',
};

/** A sign that fills a cell with the yarn's pattern. */
const shadeOf = ({ pattern }: YarnSign, ascii: boolean): string => (ascii ? asciiShades : shades)[pattern];

/** The second colour of a pattern, no further from the yarn's than must be: from afar both are one. */
export const shadeColour = (colour: string, depth: ColourDepth): string =>
  mixColours(colour, inkOn(colour), depth === '16' ? 1 : 0.35);

/** `width` cells of the yarn. */
export function filled(sign: YarnSign, width: number, depth: ColourDepth, ascii = false): Span {
  if (depth === 'none') return { text: sign.letter.repeat(width) };
  if (sign.pattern === 'plain') return { text: ' '.repeat(width), ground: sign.colour };
  const text = shadeOf(sign, ascii).repeat(width);
  return { text, ink: sign.colour, ground: shadeColour(sign.colour, depth) };
}
