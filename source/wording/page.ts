/** Plain text set as a page: labels in a column of their own, text wrapped beside them. */

import { cellsOf } from '../shared/plain-text.ts';

/** As wide as a page that a terminal and a printer both take. */
export const pageWidth = 78;
const labelWidth = 10;

/** Spaces at which a line may break: not the one between a number and its unit. */
const breaks = / (?!(?:cm|mm|in|g|m|oz|yd|%)(?![\p{L}\p{N}]))/u;

/** `text` in lines of at most `columns` terminal cells, and of one where there is room for none; broken at spaces. */
export function wrap(text: string, columns: number): readonly string[] {
  const width = Math.max(1, columns);
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(breaks).flatMap((one) => cutWord(one, width))) {
    if (line !== '' && cellsOf(line) + 1 + cellsOf(word) > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}

/** A word that is wider than the page goes on in the next line. */
function cutWord(word: string, width: number): readonly string[] {
  if (cellsOf(word) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  let used = 0;
  for (const letter of word) {
    const cells = cellsOf(letter);
    if (part !== '' && used + cells > width) {
      parts.push(part);
      [part, used] = ['', 0];
    }
    part += letter;
    used += cells;
  }
  return [...parts, part];
}

/** A label and its text, the text hanging beside it. */
export function labelled(label: string, text: string): readonly string[] {
  const width = Math.max(labelWidth, cellsOf(label) + 1);
  return wrap(text, pageWidth - width - 2).map(
    (line, i) => `  ${i === 0 ? label + blanks(label, width) : ' '.repeat(width)}${line}`,
  );
}

const blanks = (text: string, width: number): string => ' '.repeat(Math.max(0, width - cellsOf(text)));

/** Rows of cells in columns as wide as they need; all but the first are set to the right. */
export function table(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => cellsOf(row[column] ?? ''))),
  );
  return rows.map((row) =>
    row
      .map((cell, column) => {
        const rest = blanks(cell, widths[column] ?? 0);
        return column === 0 ? cell + rest : rest + cell;
      })
      .join('   ')
      .trimEnd(),
  );
}
