/** The whole bench as rows of cells: each piece drawn where the layout has it. */

import type { Side } from '../../../bed/bed.ts';
import { formatNeedle } from '../../../bed/needles.ts';
import type { BenchView } from '../../../chat/view.ts';
import { Cells, type Line } from '../../../sheet/terminal/ansi.ts';
import { plainText } from '../../../sheet/text.ts';
import { phasesOf } from '../../../steps/job.ts';
import type { Words } from '../../../wording/words.ts';
import { bandRows } from './band.ts';
import { closeUpRows } from './close-up.ts';
import { instructionOf, rowsNeeded, wordRows } from './instruction.ts';
import { type BenchPiece, type BenchWindow, type Layout, layOutBench } from './lay-out.ts';
import { type Brush, cut, endingAt, rowOf, widthOf } from './row.ts';
import { rulerRows } from './ruler.ts';

const inset = 2;
const leastTitle = 6;

/**
 * The bag's name, the step's number, and the phases: the present one in bold capitals, the rest dim. The number is
 * there to be asked for by; how far the bag has come, the ruler shows.
 */
function phaseRow(view: BenchView, width: number, brush: Brush, { bench: say }: Words, words: Words): Line {
  const { name, phase, finished, steps } = view;
  const dot = '  ';
  const own = phasesOf(view.plan);
  const names = own.flatMap((one, i): Line => {
    const isNow = one === phase && !finished;
    const text = isNow ? words.prompt.phases[one].toUpperCase() : words.prompt.phases[one];
    const shown = isNow && brush.depth === 'none' ? `[${text}]` : text;
    return [
      { text: i === 0 ? '' : dot, dim: true },
      isNow ? { text: shown, bold: true } : { text, dim: true },
    ];
  });
  const now = [{ text: finished ? '' : words.prompt.phases[phase].toUpperCase(), bold: true }];
  const number = [{ text: say.step(steps.at, steps.of), dim: true }];
  const free = width - 2 * inset - widthOf(number) - 2;
  const spans = widthOf(names) + leastTitle <= free ? names : now;
  const room = free - widthOf(spans) - 2;
  const title = room < leastTitle - 2 ? [] : [{ text: cut(plainText(name), room, brush), bold: true }];
  const left = [...title, { text: title.length > 0 ? '  ' : '' }, ...number];
  return rowOf(width, [{ column: inset, spans: left }, endingAt(width - inset, spans)]);
}

interface BenchRows {
  readonly layout: Layout;
  /** The phases and the band, as wide as the window. */
  readonly above: readonly Line[];
  /** All below them, as wide as the strip leaves it. */
  readonly below: readonly Line[];
}

export function benchRows(view: BenchView, window: BenchWindow, brush: Brush, words: Words): BenchRows {
  const instruction = instructionOf(view, words);
  const layout = layOutBench({ words: (width) => rowsNeeded(instruction, width) }, window);
  const { band, width } = layout;
  const rows: Line[] = Array.from({ length: layout.height }, () => []);
  const put = (
    piece: BenchPiece | null,
    draw: (size: { width: number; height: number }) => readonly Line[],
  ): void => {
    if (!piece || piece.height === 0) return;
    const wide = piece.row <= band.row ? window.columns : width;
    for (const [i, line] of draw({ width: wide, height: piece.height }).entries()) rows[piece.row + i] = line;
  };
  put(layout.phases, (size) => [phaseRow(view, size.width, brush, words, words)]);
  put(band, (size) => bandRows(view, size, brush, words));
  put(layout.closeUp, (size) => closeUpRows(view, size, brush, words));
  put(layout.ruler, (size) => rulerRows(view, size, brush, words));
  if (isAtBed(view)) put(layout.bed, (size) => [bedLine(view, size.width, brush)]);
  put(layout.words, (size) => wordRows(instruction, size, brush, words));
  const split = band.row + band.height;
  return { layout, above: rows.slice(0, split), below: rows.slice(split) };
}

/** Grafting and sewing are done off the bed, and so is much of the cord. */
const isAtBed = ({ phase, bed, bedAfter }: BenchView): boolean =>
  bed.left !== null || bedAfter.left !== null || (phase !== 'graft' && phase !== 'seam' && phase !== 'cord');

const carriageMark = '[=]';

/** The bed to scale in one quiet line: its middle, the loops between their named edges, the odd needles, the carriage. */
export function bedLine({ bed, carriage }: BenchView, width: number, { ascii }: Brush): Line {
  const room = width - 2 * inset - 2 * (carriageMark.length + 1);
  const { needleCount, left, right } = bed;
  const leftCount = Math.floor(needleCount / 2);
  const rightCount = needleCount - leftCount;
  /** Each half has its own cells, so that the middle's mark stands between two of them. */
  const leftCells = Math.min(leftCount, Math.floor(((room - 1) * leftCount) / needleCount));
  const rightCells = Math.min(rightCount, Math.floor(((room - 1) * rightCount) / needleCount));
  const cellOf = (place: number): number =>
    place < leftCount
      ? Math.floor((place * leftCells) / leftCount)
      : leftCells + 1 + Math.floor(((place - leftCount) * rightCells) / rightCount);
  const cells = new Cells(leftCells + 1 + rightCells, { text: ascii ? '.' : '·', dim: true });
  cells.put(leftCells, ascii ? '|' : '│', { dim: true });
  if (left !== null && right !== null) {
    const [from, through] = [cellOf(left), cellOf(right)];
    cells.put(from, (ascii ? '=' : '━').repeat(through - from + 1));
    cells.put(leftCells, ascii ? '|' : '┿');
    for (const place of bed.empty) cells.put(cellOf(place), ascii ? '_' : '○', { bold: true });
    for (const place of bed.doubled) cells.put(cellOf(place), ascii ? '8' : '◉', { bold: true });
    nameEdges(
      cells,
      [from, through],
      [left, right].map((at) => formatNeedle(needleCount, at)),
      leftCells,
    );
  }
  const mark = (side: 'left' | 'right') =>
    carriage === side ? [{ text: carriageMark, bold: true }] : [{ text: ' '.repeat(carriageMark.length) }];
  const spans = [...mark('left'), { text: ' ' }, ...cells.line(), { text: ' ' }, ...mark('right')];
  return rowOf(width, [{ column: inset, spans }]);
}

/** A name stands outside its edge, or inside where the bed ends; the two never meet, nor do they hide the middle. */
function nameEdges(
  cells: Cells,
  [from = 0, through = 0]: readonly number[],
  names: readonly string[],
  middle: number,
): void {
  const [leftName = '', rightName = ''] = names;
  const clear = (column: number, text: string, side: Side): number => {
    if (column > middle || column + text.length <= middle) return column;
    return side === 'left' ? middle - text.length : middle + 1;
  };
  const hasLeft = from - leftName.length - 1 >= 0;
  const hasRight = through + 2 + rightName.length <= cells.width;
  let left = clear(hasLeft ? from - leftName.length - 1 : from + 2, leftName, 'left');
  let right = clear(hasRight ? through + 2 : through - rightName.length - 1, rightName, 'right');
  if (left + leftName.length >= right) {
    if (hasRight) right = clear(left + leftName.length + 1, rightName, 'right');
    else left = clear(right - leftName.length - 1, leftName, 'left');
  }
  cells.put(left, leftName).put(right, rightName);
}
