/** The bed to scale in one quiet line: its middle, the loops between their named edges, the odd needles, the carriage. */

import type { Side } from '../../../bed/bed.ts';
import { formatNeedle } from '../../../bed/needles.ts';
import type { BenchView } from '../../../chat/view.ts';
import { Cells, type Line } from '../../../sheet/terminal/ansi.ts';
import { type Brush, rowOf } from './row.ts';

const carriageMark = '[=]';
const inset = 2;

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
