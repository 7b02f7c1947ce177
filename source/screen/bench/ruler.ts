/** The bag's own stripes as progress: what is knitted full, what is to come half high, a mark at now, numbers beside it. */
import type { BenchView } from '../../chat/view.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Line, Span } from '../../sheet/terminal/ansi.ts';
import { edgeInk, filled } from '../../sheet/terminal/on-yarn.ts';
import type { Words } from '../../wording/words.ts';
import { type Brush, Cells, endingAt, rowOf, widthOf } from './row.ts';

const inset = 2;
const mostPerRow = 2;

export function rulerRows(
  view: BenchView,
  { width, height }: { width: number; height: number },
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const rows = numberOfRows(view, say);
  const stripe = say.stripe(view.stripe.at, view.stripe.of);
  const numbers = Math.max(rows.length, stripe.length);
  const beside = isBeside(view, width, numbers);
  const room = width - 2 * inset - (beside ? numbers + 2 : 0);
  const { cells, columnOf } = stripesIn(view, room, brush);
  const mark = columnOf(view.rows.at);
  const sign: Span = { text: brush.ascii ? '^' : '▲', bold: true };
  const both = `${rows}   ${stripe}`;
  const below = beside ? stripe : both.length <= width - 2 * inset - 2 ? both : rows;
  const first = rowOf(width, [
    { column: inset, spans: cells },
    ...(beside ? [endingAt(width - inset, [{ text: rows, bold: true }])] : []),
  ]);
  const end = [{ text: below.slice(0, width - 2 * inset - 2), bold: !beside }];
  const at = Math.min(inset + mark, inset + Math.max(0, widthOf(cells) - 1));
  const text = endingAt(width - inset, end);
  const isUnder = !beside && at >= text.column - 2;
  const second = rowOf(width, [
    ...(isUnder ? [{ column: inset, spans: end }] : []),
    { column: at, spans: [sign] },
    ...(isUnder ? [] : [text]),
  ]);
  return [first, second].slice(0, height);
}

/** A row that is due counts as coming, so that nobody takes the number of those done for the one to knit. */
function numberOfRows({ rows, glance, phase }: BenchView, say: Words['bench']): string {
  const isRow = glance.kind === 'pass' && (phase === 'stripes' || phase === 'closing-row');
  return isRow ? say.rowComes(rows.at + 1, rows.of) : say.rowsDone(rows.at, rows.of);
}

/** The numbers stand beside the ruler where its stripes lose nothing by it; else below. */
function isBeside({ plan }: BenchView, width: number, numbers: number): boolean {
  const whole = cellsPerUnit(plan, width - 2 * inset);
  return whole >= 1 && cellsPerUnit(plan, width - 2 * inset - numbers - 2) === whole;
}

const unitRows = ({ stripes }: Plan): number => stripes.map(({ rows }) => rows).reduce(greatestCommonDivisor);

/** Cells for the rows that all stripes are made of. */
const cellsPerUnit = (plan: Plan, room: number): number =>
  Math.min(mostPerRow * unitRows(plan), Math.floor((room * unitRows(plan)) / plan.rows));

interface Drawn {
  readonly cells: Line;
  /** Where the work is after so many rows. */
  readonly columnOf: (row: number) => number;
}

/** Stripes are whole cells wide where they can be, so that equal ones look equal. */
function stripesIn({ plan, rows }: BenchView, room: number, brush: Brush): Drawn {
  const perUnit = cellsPerUnit(plan, room);
  const width = perUnit >= 1 ? (perUnit * plan.rows) / unitRows(plan) : room;
  const columnOf = (row: number): number => Math.floor((row * width) / plan.rows + 1e-9);
  const cells = new Cells(width, { text: ' ' });
  for (const { yarn, firstRow, lastRow } of plan.stripes) {
    const [from, end] = [columnOf(firstRow - 1), columnOf(lastRow)];
    const knitted = Math.min(end, Math.max(from, columnOf(rows.at)));
    const mark = brush.marks.get(yarn);
    if (!mark) continue;
    const { depth, ascii } = brush;
    const full = filled(mark, 1, depth, ascii);
    const half = depth === 'none' || ascii ? mark.letter.toLowerCase() : '▄';
    for (let column = from; column < end; column++) {
      if (column < knitted) cells.put(column, full.text, full);
      else cells.put(column, half, depth === 'none' ? {} : { ink: mark.colour });
    }
    if (mark.edged && mark.pattern === 'plain' && depth !== 'none' && !ascii)
      rim(cells, from, end, knitted, mark.colour, edgeInk(depth));
  }
  return { cells: cells.line(), columnOf };
}

/** A yarn that may be the terminal's own ground is given sides, where no pattern shows it. */
function rim(
  cells: Cells,
  from: number,
  end: number,
  knitted: number,
  ground: string,
  ink: string | null,
): void {
  if (knitted > from) {
    cells.put(from, '▏', { ink, ground });
    if (knitted === end && end - from > 1) cells.put(end - 1, '▕', { ink, ground });
  }
  if (knitted < end) cells.put(Math.max(from, knitted), '▖', { ink });
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
