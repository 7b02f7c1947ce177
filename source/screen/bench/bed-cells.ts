import type { BedStrip } from '../../chat/view.ts';

/** A run of cells that are drawn alike. */
export interface CellRun {
  readonly kind: 'empty' | 'loops' | 'middle';
  readonly text: string;
}

/**
 * The bed drawn in at most `width` cells, left to right: a cell stands for one or more needles and shows a loop when any
 * of them holds one. The middle of the bed, between L1 and R1, has a mark of its own.
 */
export function bedCells(strip: BedStrip, width: number): readonly CellRun[] {
  const perCell = Math.max(1, Math.ceil(strip.needleCount / Math.max(1, width - 2)));
  const middle = Math.floor(strip.needleCount / 2);
  const left = cellsBetween(strip, 0, middle, perCell, 'from-right');
  const right = cellsBetween(strip, middle, strip.needleCount, perCell, 'from-left');
  return joinRuns([...left, { kind: 'middle', text: '|' }, ...right]);
}

/** Cells are counted outward from the middle, so that the mark stands between two whole cells. */
function cellsBetween(
  strip: BedStrip,
  from: number,
  to: number,
  perCell: number,
  order: 'from-left' | 'from-right',
): CellRun[] {
  const cells: CellRun[] = [];
  const letter = (strip.yarn ?? 'o').slice(0, 1);
  const cellCount = Math.ceil((to - from) / perCell);
  for (let i = 0; i < cellCount; i++) {
    const first = order === 'from-left' ? from + i * perCell : Math.max(from, to - (cellCount - i) * perCell);
    const last =
      order === 'from-left' ? Math.min(to, first + perCell) - 1 : to - (cellCount - 1 - i) * perCell - 1;
    const holds = strip.left !== null && strip.right !== null && last >= strip.left && first <= strip.right;
    cells.push(holds ? { kind: 'loops', text: letter } : { kind: 'empty', text: '.' });
  }
  return cells;
}

function joinRuns(cells: readonly CellRun[]): readonly CellRun[] {
  const runs: CellRun[] = [];
  for (const cell of cells) {
    const last = runs.at(-1);
    if (last && last.kind === cell.kind) runs[runs.length - 1] = { ...last, text: last.text + cell.text };
    else runs.push(cell);
  }
  return runs;
}
