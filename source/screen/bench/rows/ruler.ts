/**
 * The bag's own stripes as progress: what is knitted full, what is to come half high, a pointer at now, numbers beside it. Off
 * the bed, where rows mean nothing any more, it is the thread, and counts loops, bars, rounds or holes.
 */

import type { Count, Glance } from '../../../chat/glance.ts';
import type { BenchView } from '../../../chat/view.ts';
import { greatestCommonDivisor } from '../../../planning/choose-size.ts';
import type { Plan } from '../../../planning/plan.ts';
import { Cells, edgeInk, filled, type Line, type Span } from '../../../sheet/terminal/ansi.ts';
import { asDyed, type YarnSign } from '../../../sheet/yarn-signs.ts';
import type { Words } from '../../../wording/words.ts';
import { glanceAround } from './close-up-by-hand.ts';
import { type Brush, endingAt, type Placed, placedFree, rowOf, widthOf } from './row.ts';

const inset = 2;
const mostPerRow = 2;

interface RulerSize {
  readonly width: number;
  readonly height: number;
}

export function rulerRows(
  view: BenchView,
  size: RulerSize,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const isOnBed = view.phase === 'cast-on' || view.phase === 'stripes' || view.phase === 'closing-row';
  if (view.finished) return [];
  if (isOnBed) return stripeRows(view, size, brush, say);
  const count = countOf(glanceAround(view));
  return count ? threadRows(view, count, size, brush, say) : [];
}

/** How many of what the hands count are done; null where they count nothing but rows. */
export function countOf(glance: Glance): Count | null {
  switch (glance.kind) {
    case 'graft':
    case 'holes':
      return { at: glance.count.at - 1, of: glance.count.of };
    case 'passes':
      return glance.rows === 'hem' ? { at: glance.from - 1, of: glance.of } : null;
    case 'bars':
    case 'rounds':
      return { at: glance.from - 1, of: glance.of };
    default:
      return null;
  }
}

function threadRows(
  view: BenchView,
  { at, of }: Count,
  { width, height }: RulerSize,
  brush: Brush,
  say: Words['bench'],
): readonly Line[] {
  const sign = brush.signs.get(view.yarn ?? view.plan.cord.yarn);
  const text = [{ text: say.done(at, of), bold: true }];
  const room = width - 2 * inset - widthOf(text) - 2;
  if (!sign || room < 4) return [];
  const done = Math.floor((at * room) / of);
  const cells = new Cells(room, { text: ' ' });
  for (let column = 0; column < room; column++) putCell(cells, column, sign, column < done, brush);
  const pointer: Span = { text: brush.ascii ? '^' : '▲', bold: true };
  return [
    rowOf(width, [{ column: inset, spans: cells.line() }, endingAt(width - inset, text)]),
    rowWithTime(view, width, [{ column: inset + Math.min(done, room - 1), spans: [pointer] }], say),
  ].slice(0, height);
}

function stripeRows(
  view: BenchView,
  { width, height }: RulerSize,
  brush: Brush,
  say: Words['bench'],
): readonly Line[] {
  const rows = numberOfRows(view, say);
  const stripe = view.stripe.at === 0 ? '' : say.stripe(view.stripe.at, view.stripe.of);
  const numbers = Math.max(rows.length, stripe.length);
  const beside = isBeside(view, width, numbers);
  const room = width - 2 * inset - (beside ? numbers + 2 : 0);
  const { cells, columnOf } = stripesIn(view, room, brush);
  const now = columnOf(view.rows.at);
  const pointer: Span = { text: brush.ascii ? '^' : '▲', bold: true };
  const both = stripe === '' ? rows : `${rows}   ${stripe}`;
  const below = beside ? stripe : both.length <= width - 2 * inset - 2 ? both : rows;
  const first = rowOf(width, [
    { column: inset, spans: cells },
    ...(beside ? [endingAt(width - inset, [{ text: rows, bold: true }])] : []),
  ]);
  const end = [{ text: below.slice(0, width - 2 * inset - 2), bold: !beside }];
  const at = Math.min(inset + now, inset + Math.max(0, widthOf(cells) - 1));
  const text = endingAt(width - inset, end);
  const isUnder = !beside && at >= text.column - 2;
  const placed = [{ column: at, spans: [pointer] }, isUnder ? { column: inset, spans: end } : text];
  const second = rowWithTime(view, width, placed, say);
  return [first, second].slice(0, height);
}

/** What is placed, and beside it how long it still takes, for who looks for it; where room is short, the whole bag only. */
function rowWithTime(
  { timeLeft }: BenchView,
  width: number,
  placed: readonly Placed[],
  say: Words['bench'],
): Line {
  const texts = timeLeft
    ? [say.timeLeft(timeLeft.phaseS, timeLeft.bagS), say.bagTimeLeft(timeLeft.bagS)]
    : [];
  const time = texts
    .map((text) => placedFree(width - inset, placed, [{ text, dim: true }]))
    .find((free) => free.length > 0);
  return rowOf(
    width,
    [...placed, ...(time ?? [])].toSorted((a, b) => a.column - b.column),
  );
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

interface RulerCells {
  readonly cells: Line;
  /** Where the work is after so many rows. */
  readonly columnOf: (row: number) => number;
}

/** Stripes are whole cells wide where they can be, so that equal ones look equal. */
function stripesIn({ plan, rows }: BenchView, room: number, brush: Brush): RulerCells {
  const perUnit = cellsPerUnit(plan, room);
  const width = perUnit >= 1 ? (perUnit * plan.rows) / unitRows(plan) : room;
  const columnOf = (row: number): number => Math.floor((row * width) / plan.rows + 1e-9);
  const cells = new Cells(width, { text: ' ' });
  const { stripes } = brush.depth === 'none' ? plan : asDyed(plan);
  for (const { yarn, firstRow, lastRow } of stripes) {
    const [from, end] = [columnOf(firstRow - 1), columnOf(lastRow)];
    const knitted = Math.min(end, Math.max(from, columnOf(rows.at)));
    const sign = brush.signs.get(yarn);
    if (!sign) continue;
    const { depth, ascii } = brush;
    for (let column = from; column < end; column++) putCell(cells, column, sign, column < knitted, brush);
    if (sign.edged && sign.pattern === 'plain' && depth !== 'none' && !ascii)
      rim(cells, from, end, knitted, sign.colour, edgeInk(depth));
  }
  return { cells: cells.line(), columnOf };
}

/** What is done is full, what is to come half high. */
function putCell(
  cells: Cells,
  column: number,
  sign: YarnSign,
  isDone: boolean,
  { depth, ascii }: Brush,
): void {
  const full = filled(sign, 1, depth, ascii);
  const half = depth === 'none' || ascii ? sign.letter.toLowerCase() : '▄';
  if (isDone) cells.put(column, full.text, full);
  else cells.put(column, half, depth === 'none' ? {} : { ink: sign.colour });
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
