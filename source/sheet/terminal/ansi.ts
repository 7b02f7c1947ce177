/** Coloured text for a terminal: ECMA-48 SGR sequences, and rows of styled characters. */
import { type ColourDepth, fixedIndex, parseColour, sixteenIndex } from '../../shared/colour.ts';
import { harmless } from '../../shared/plain-text.ts';

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
