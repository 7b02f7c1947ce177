import type { Line, Span } from './ansi.ts';

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
