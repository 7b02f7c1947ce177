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
  readonly ascii: boolean;
  /** The thread's colour; null for the terminal's own. */
  readonly thread: string | null;
}

interface LoopLook extends RowLook {
  readonly most: number;
  /** The loop whose turn it is, where no movement tells: one beyond the last when all are sewn. */
  readonly next?: number;
}

/** The first movement over both edges. */
export const firstMovements: readonly GraftMovement[] = [
  { edge: 'B', down: 1, up: 2 },
  { edge: 'A', down: 1, up: 2 },
];

const loopCells = 6;
const loopSigns = {
  unicode: { full: '●', open: '○', behind: '╌', down: '▼', up: '▲', leg: '│' },
  ascii: { full: 'O', open: 'o', behind: '.', down: 'v', up: '^', leg: '|' },
} as const;

export function graftRows(
  { stitches, brief }: Plan,
  movements: readonly GraftMovement[],
  { columns, most, ascii, thread, next = 1 }: LoopLook,
): GraftRows {
  const sign = loopSigns[ascii ? 'ascii' : 'unicode'];
  const turns = movements.flatMap(({ down, up }) => down ?? up ?? []);
  const at = turns.length === 0 ? next : Math.max(1, Math.min(stitches, ...turns));
  const count = Math.max(2, Math.min(stitches, most, Math.floor(columns / loopCells)));
  const first = Math.max(1, Math.min(at - Math.floor(count / 2) + 1, stitches - count + 1));
  const loops = Array.from({ length: count }, (_, i) => first + i);
  const step = brief.crawl === 'right' ? -1 : 1;
  const place = (loop: number): number =>
    (step > 0 ? loop - first : count - 1 - loop + first) * loopCells + 2;
  const blank = (): Cells => new Cells(count * loopCells, { text: ' ' });
  const here = (edge: Edge, loop: number): boolean =>
    movements.some((one) => one.edge === edge && (one.down === loop || one.up === loop));
  const between = (cells: Cells, loop: number, style: Omit<Span, 'text'>): void => {
    for (let way = 1; way < loopCells; way++) cells.put(place(loop) + way * step, sign.behind, style);
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
    width: count * loopCells,
  };
}

/** Counted from 1 on each side; those before them are sewn. */
export interface BarsAtHand {
  readonly from: number;
  readonly through: number;
}

interface SeamRows {
  readonly names: Line;
  /** A bar as it runs on into the cloth. */
  readonly bars: Readonly<Record<'front' | 'back', Line>>;
  readonly path: Readonly<Record<'front' | 'back', Line>>;
  /** Where the thread crosses from one edge to the other. */
  readonly across: Line;
}

const barSigns = {
  unicode: { thread: '━', side: '┃', open: ['┏', '┓'], close: ['┗', '┛'], bar: '│', needle: '►' },
  ascii: { thread: '=', side: ':', open: ['+', '+'], close: ['+', '+'], bar: '|', needle: '>' },
} as const;

/** From a bar of the front to the next; the bar of the back between them stands half way. */
const barCells = 8;
const half = barCells / 2;

export function seamRows(
  { from, through }: BarsAtHand,
  of: number,
  { columns, ascii, thread }: RowLook,
): SeamRows {
  const sign = barSigns[ascii ? 'ascii' : 'unicode'];
  const count = Math.max(1, Math.min(of, Math.floor((columns - half) / barCells)));
  const first = Math.max(1, Math.min(from - 2, of - count + 1));
  const bars = Array.from({ length: count }, (_, i) => first + i);
  const width = count * barCells + half;
  const blank = (): Cells => new Cells(width, { text: ' ' });
  const place = (bar: number): number => (bar - first) * barCells + half / 2;
  const [names, front, across, back, frontBars, backBars] = [0, 1, 2, 3, 4, 5].map(blank) as Six;
  for (const bar of bars) {
    const isHere = bar >= from && bar <= through;
    const style: Omit<Span, 'text'> = isHere ? { bold: true } : bar < from ? {} : { dim: true };
    const at = place(bar);
    names.put(at - Math.floor(`${bar}`.length / 2), `${bar}`, style);
    if (bar <= through) sew(bar, isHere ? { bold: true } : { ink: thread });
    for (const cells of [frontBars, front]) cells.put(at, sign.bar, style);
    for (const cells of [backBars, back]) cells.put(at + half, sign.bar, style);
  }
  return {
    names: names.line(),
    bars: { front: frontBars.line(), back: backBars.line() },
    path: { front: front.line(), back: back.line() },
    across: across.line(),
  };

  function sew(bar: number, style: Omit<Span, 'text'>): void {
    const left = place(bar) - half / 2;
    const run = sign.thread.repeat(half - 1);
    const begins = bar === 1;
    front.put(left, (begins ? sign.thread : sign.open[0]) + run + sign.open[1], style);
    if (!begins) across.put(left, sign.side, style);
    across.put(left + half, sign.side, style);
    if (!begins) back.put(left, sign.close[1], style);
    back.put(
      left + half,
      sign.close[0] + run + (bar === through && bar >= from ? sign.needle : sign.close[1]),
      style,
    );
  }
}

type Six = [Cells, Cells, Cells, Cells, Cells, Cells];
