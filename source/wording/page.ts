/** Plain text set as a page: labels in a column of their own, text wrapped beside them. */

/** As wide as a page that a terminal and a printer both take. */
export const pageWidth = 78;
const labelWidth = 10;

/** Spaces at which a line may break: not the one between a number and its unit. */
const breaks = / (?!(?:cm|mm|in|g|m|oz|yd|%)(?![\p{L}\p{N}]))/u;

/** `text` in lines of at most `columns` columns, and of one where there is room for none; broken at spaces. */
export function wrap(text: string, columns: number): readonly string[] {
  const width = Math.max(1, columns);
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(breaks).flatMap((one) => cutWord(one, width))) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}

/** A word that is wider than the page goes on in the next line. */
const cutWord = (word: string, width: number): readonly string[] => {
  const letters = [...word];
  const parts: string[] = [letters.slice(0, width).join('')];
  for (let from = width; from < letters.length; from += width) {
    parts.push(letters.slice(from, from + width).join(''));
  }
  return parts;
};

/** A label and its text, the text hanging beside it. */
export function labelled(label: string, text: string): readonly string[] {
  const width = Math.max(labelWidth, label.length + 1);
  return wrap(text, pageWidth - width - 2).map(
    (line, i) => `  ${(i === 0 ? label : '').padEnd(width)}${line}`,
  );
}

/** Rows of cells in columns as wide as they need; all but the first are set to the right. */
export function table(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows.map((row) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('   ')
      .trimEnd(),
  );
}
