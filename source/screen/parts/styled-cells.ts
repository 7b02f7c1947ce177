/** A row of the terminal as cells, and the shortest text that turns one row into another. ECMA-48: SGR, CHA, EL. */

/** How a cell looks, by the parameters that say so; '' for the terminal's own. */
interface Style {
  readonly weight: string;
  readonly shape: string;
  readonly inverse: string;
  readonly ink: string;
  readonly ground: string;
}
interface Cell {
  readonly text: string;
  readonly style: Style;
}

const plain: Style = { weight: '', shape: '', inverse: '', ink: '', ground: '' };
const blank: Cell = { text: ' ', style: plain };
const attributes = ['weight', 'shape', 'inverse', 'ink', 'ground'] as const;
const turnedOff = { weight: '22', shape: '23;24', inverse: '27', ink: '39', ground: '49' } as const;

const esc = '\u001b';
/** A style, or a character. */
const piece = new RegExp(`${esc}\\[([0-9;]*)m|([^])`, 'gu');
/** Characters that are one cell wide wherever this program can be used: letters, arrows, boxes, blocks, circles. */
const oneCellWide =
  /[\u0020-\u007e\u00a0-\u024f\u0370-\u052f\u2010-\u2027\u2030-\u203a\u2190-\u21ff\u2500-\u25ff]/u;

/** The cells of a row; null where it holds anything but such characters and styles. */
export function cellsIn(row: string): readonly Cell[] | null {
  const cells: Cell[] = [];
  let style = plain;
  for (const [, parameters, text] of row.matchAll(piece)) {
    if (parameters !== undefined) style = styled(style, parameters);
    else if (text !== undefined && oneCellWide.test(text)) cells.push({ text, style });
    else return null;
  }
  return cells;
}

function styled(before: Style, parameters: string): Style {
  const numbers = parameters.split(';');
  let style = before;
  for (let i = 0; i < numbers.length; i++) {
    const code = Number(numbers[i]);
    if (code === 38 || code === 48) {
      const count = numbers[i + 1] === '2' ? 5 : 3;
      const whole = numbers.slice(i, i + count).join(';');
      style = { ...style, [code === 38 ? 'ink' : 'ground']: whole };
      i += count - 1;
    } else style = { ...style, ...changeOf(code, style) };
  }
  return style;
}

function changeOf(code: number, { weight }: Style): Partial<Style> {
  if (code === 0) return plain;
  // Bold and dim can stand together.
  if (code === 1) return { weight: weight.endsWith('2') ? '1;2' : '1' };
  if (code === 2) return { weight: weight.startsWith('1') ? '1;2' : '2' };
  if (code === 22) return { weight: '' };
  if (code === 3 || code === 4) return { shape: String(code) };
  if (code === 23 || code === 24) return { shape: '' };
  if (code === 7) return { inverse: '7' };
  if (code === 27) return { inverse: '' };
  if (code === 39) return { ink: '' };
  if (code === 49) return { ground: '' };
  const tens = Math.floor(code / 10);
  return tens === 3 || tens === 9 ? { ink: String(code) } : { ground: String(code) };
}

const isSameStyle = (a: Style, b: Style): boolean => attributes.every((one) => a[one] === b[one]);
const isSame = (a: Cell, b: Cell): boolean => a.text === b.text && isSameStyle(a.style, b.style);

/** From one style to the next, no longer than it must be. */
function toStyle(from: Style, to: Style): string {
  if (isSameStyle(from, to)) return '';
  if (isSameStyle(to, plain)) return `${esc}[m`;
  const changes = attributes.filter((one) => from[one] !== to[one]);
  const parameters = changes.map((one) => (to[one] === '' ? turnedOff[one] : to[one]));
  // Neither takes the other's place.
  const swaps = changes.includes('weight') && from.weight !== '' && to.weight !== '';
  return `${esc}[${(swaps ? ['22', ...parameters] : parameters).join(';')}m`;
}

/** The cells with their styles, back in the terminal's own at the end. */
function formatCells(cells: readonly Cell[]): string {
  let style = plain;
  let text = '';
  for (const cell of cells) {
    text += toStyle(style, cell.style) + cell.text;
    style = cell.style;
  }
  return text + toStyle(style, plain);
}

/** Equal cells between two changes that are written again: to step over them would take as long. */
const shortGap = 6;

/** What makes the row `before` look like `after`, the cursor being anywhere on it; '' where it does already. */
export function rowChange(before: string, after: string): string {
  if (before === after) return '';
  const [old, wanted] = [cellsIn(before), cellsIn(after)];
  if (!old || !wanted) return `\r${after}${esc}[m${esc}[K`;
  let text = '';
  let at = 0;
  while (at < Math.max(old.length, wanted.length)) {
    if (isSame(old[at] ?? blank, wanted[at] ?? blank)) {
      at++;
      continue;
    }
    const from = at;
    let end = at + 1;
    for (let near = end; near - end < shortGap && near < wanted.length; near++)
      if (!isSame(old[near] ?? blank, wanted[near] ?? blank)) end = near + 1;
    text += `${esc}[${from + 1}G${formatCells(wanted.slice(from, end))}`;
    if (end >= wanted.length) return old.length > wanted.length ? `${text}${esc}[K` : text;
    at = end;
  }
  return text;
}
