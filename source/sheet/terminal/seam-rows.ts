import { Cells, type Line, type Span } from './ansi.ts';

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

interface RowLook {
  readonly columns: number;
  readonly ascii: boolean;
  /** The thread's colour; null for the terminal's own. */
  readonly thread: string | null;
}

const signs = {
  unicode: { thread: '━', side: '┃', open: ['┏', '┓'], close: ['┗', '┛'], bar: '│', needle: '►' },
  ascii: { thread: '=', side: ':', open: ['+', '+'], close: ['+', '+'], bar: '|', needle: '>' },
} as const;

/** From a bar of the front to the next; the bar of the back between them stands half way. */
const cell = 8;
const half = cell / 2;

export function seamRows(
  { from, through }: BarsAtHand,
  of: number,
  { columns, ascii, thread }: RowLook,
): SeamRows {
  const sign = signs[ascii ? 'ascii' : 'unicode'];
  const count = Math.max(1, Math.min(of, Math.floor((columns - half) / cell)));
  const first = Math.max(1, Math.min(from - 2, of - count + 1));
  const bars = Array.from({ length: count }, (_, i) => first + i);
  const width = count * cell + half;
  const blank = (): Cells => new Cells(width, { text: ' ' });
  const place = (bar: number): number => (bar - first) * cell + half / 2;
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
