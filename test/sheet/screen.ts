/** A terminal emulator to look at drawings with. */
import xterm from '@xterm/headless';

export interface Cell {
  readonly text: string;
  /** `#rrggbb`, `ansi N`, or null for the terminal's own. */
  readonly ink: string | null;
  readonly ground: string | null;
  readonly bold: boolean;
  readonly dim: boolean;
  readonly inverse: boolean;
}

const blankCell: Cell = { text: ' ', ink: null, ground: null, bold: false, dim: false, inverse: false };

export interface Screen {
  readonly cells: readonly (readonly Cell[])[];
  /** Rows of the screen that came about by a line running over the edge. */
  readonly wrappedRows: number;
  /** Lines that went out at the top. */
  readonly lostRows: number;
}

/** Lines as a terminal of that size shows them. */
export async function show(lines: readonly string[], columns: number, rows: number): Promise<Screen> {
  const terminal = new xterm.Terminal({
    cols: columns,
    rows,
    allowProposedApi: true,
    scrollback: 1000,
    convertEol: true,
  });
  await new Promise<void>((done) => terminal.write(lines.join('\n'), done));
  const { active } = terminal.buffer;
  const shown = Array.from({ length: rows }, (_, y) => active.getLine(active.baseY + y));
  const cells = shown.map((line) =>
    Array.from({ length: columns }, (_, x): Cell => {
      const cell = line?.getCell(x);
      if (!cell) return blankCell;
      const ink = cell.isFgRGB()
        ? hex(cell.getFgColor())
        : cell.isFgPalette()
          ? `ansi ${cell.getFgColor()}`
          : null;
      const ground = cell.isBgRGB()
        ? hex(cell.getBgColor())
        : cell.isBgPalette()
          ? `ansi ${cell.getBgColor()}`
          : null;
      const [bold, dim, inverse] = [cell.isBold(), cell.isDim(), cell.isInverse()].map((flag) => flag !== 0);
      return { text: cell.getChars() || ' ', ink, ground, bold: !!bold, dim: !!dim, inverse: !!inverse };
    }),
  );
  return { cells, wrappedRows: shown.filter((line) => line?.isWrapped).length, lostRows: active.baseY };
}

const hex = (rgb: number): string => `#${rgb.toString(16).padStart(6, '0')}`;

export const textOf = ({ cells }: Screen): readonly string[] =>
  cells.map((row) =>
    row
      .map((cell) => cell.text)
      .join('')
      .trimEnd(),
  );

/** Two pixels a cell, the upper and the lower half, as colours. */
export function pixelsOf({ cells }: Screen): readonly (readonly (string | null)[])[] {
  return cells.flatMap((row) => [
    row.map(({ text, ink, ground }) => (text === '█' || text === '▀' ? ink : ground)),
    row.map(({ text, ink, ground }) => (text === '█' || text === '▄' ? ink : ground)),
  ]);
}
