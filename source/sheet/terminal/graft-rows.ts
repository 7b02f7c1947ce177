/**
 * The open loops of the graft as they lie before the maker, and the needle's way through them. Turned over for the graft,
 * the mouth lies at the side to which the strip crawled, and loops are counted from the mouth: so loop 1 of a strip that
 * crawled right is the rightmost one.
 */
import type { Plan } from '../../planning/plan.ts';
import type { GraftMovement } from '../../steps/graft.ts';
import { Cells, type Line, type Span } from './ansi.ts';

type Edge = GraftMovement['edge'];

interface GraftRows {
  readonly names: Readonly<Record<Edge, Line>>;
  /** Loops, sewn ones full, and where the needle goes down and comes up. */
  readonly path: Readonly<Record<Edge, Line>>;
  readonly legs: Line;
  readonly width: number;
}

interface RowLook {
  readonly columns: number;
  readonly most: number;
  readonly ascii: boolean;
  /** The thread's colour; null for the terminal's own. */
  readonly thread: string | null;
  /** The loop whose turn it is, where no movement tells: one beyond the last when all are sewn. */
  readonly next?: number;
}

/** The first movement over both edges. */
export const firstMovements: readonly GraftMovement[] = [
  { edge: 'B', down: 1, up: 2 },
  { edge: 'A', down: 1, up: 2 },
];

const cell = 6;
const signs = {
  unicode: { full: '●', open: '○', behind: '╌', down: '▼', up: '▲', leg: '│' },
  ascii: { full: 'O', open: 'o', behind: '.', down: 'v', up: '^', leg: '|' },
} as const;

export function graftRows(
  { stitches, brief }: Plan,
  movements: readonly GraftMovement[],
  { columns, most, ascii, thread, next = 1 }: RowLook,
): GraftRows {
  const sign = signs[ascii ? 'ascii' : 'unicode'];
  const turns = movements.flatMap(({ down, up }) => down ?? up ?? []);
  const at = turns.length === 0 ? next : Math.max(1, Math.min(stitches, ...turns));
  const count = Math.max(2, Math.min(stitches, most, Math.floor(columns / cell)));
  const first = Math.max(1, Math.min(at - Math.floor(count / 2) + 1, stitches - count + 1));
  const loops = Array.from({ length: count }, (_, i) => first + i);
  const step = brief.crawl === 'right' ? -1 : 1;
  const place = (loop: number): number => (step > 0 ? loop - first : count - 1 - loop + first) * cell + 2;
  const blank = (): Cells => new Cells(count * cell, { text: ' ' });
  const here = (edge: Edge, loop: number): boolean =>
    movements.some((one) => one.edge === edge && (one.down === loop || one.up === loop));
  const between = (cells: Cells, loop: number, style: Omit<Span, 'text'>): void => {
    for (let way = 1; way < cell; way++) cells.put(place(loop) + way * step, sign.behind, style);
  };

  const names = (edge: Edge): Line => {
    const cells = blank();
    for (const loop of loops) {
      const name = `${edge}${loop}`;
      const style = here(edge, loop) ? { bold: true } : { dim: true };
      cells.put(place(loop) - Math.floor(name.length / 2), name, style);
    }
    return cells.line();
  };
  const path = (edge: Edge): Line => {
    const cells = blank();
    for (const loop of loops) {
      if (loop < at && loop + 1 < first + count) between(cells, loop, { ink: thread });
      cells.put(place(loop), loop < at ? sign.full : sign.open, loop < at ? { ink: thread } : {});
    }
    for (const { down, up } of movements.filter((one) => one.edge === edge)) {
      if (down !== null && up === down + 1) between(cells, down, { bold: true });
      if (down !== null) cells.put(place(down), sign.down, { bold: true });
      if (up !== null) cells.put(place(up), sign.up, { bold: true });
    }
    return cells.line();
  };
  const legs = blank();
  for (const loop of loops)
    legs.put(place(loop) - 1, sign.leg, { dim: true }).put(place(loop) + 1, sign.leg, { dim: true });
  return {
    names: { A: names('A'), B: names('B') },
    path: { A: path('A'), B: path('B') },
    legs: legs.line(),
    width: count * cell,
  };
}
