/**
 * The list of stripes to tick. A line holds rows up to a shaping move, a dot after each row that a move follows, and the edge
 * needles as they are when the line is done, its moves made. A stripe takes as many lines as its rows need.
 */
import { formatNeedle } from '../../bed/needles.ts';
import { edgesOfRow } from '../../planning/hangings.ts';
import type { Plan } from '../../planning/plan.ts';
import { type Outline, outlineSteps } from '../../steps/outline.ts';
import type { Words } from '../../wording/words.ts';
import { textWidth } from '../svg/element.ts';
import { inSentence, span } from '../text.ts';
import { type YarnSign, yarnSigns } from '../yarn-signs.ts';

interface StripeLine {
  readonly rows: string;
  readonly edges: string;
}

export interface StripeLines {
  readonly number: number;
  readonly sign: YarnSign;
  readonly lines: readonly StripeLine[];
  /** Where a waiting yarn is laid over, where the work is hung again, where a yarn is done with, and the graft. */
  readonly notes: readonly string[];
}

/** `rowsEms`: room for the rows of a line, in heights of its letters. */
export function listStripes(plan: Plan, words: Words, rowsEms: number): readonly StripeLines[] {
  const signs = yarnSigns(plan, 'print');
  const { crossings } = outlineSteps(plan);
  return plan.stripes.map(({ number, yarn, firstRow, lastRow }) => {
    const sign = signs.get(yarn);
    if (!sign) throw new Error(`no sign for the yarn of stripe ${number}`);
    const knitted = Math.min(lastRow, plan.knittedRows);
    const graft = knitted < lastRow ? words.sheet.graftRow(lastRow) : null;
    const lines = packed(groupsOf(plan, firstRow, knitted), rowsEms);
    // Where the stripe is one row and the graft, the edges are still those of the stripe before: the graft has their place.
    const isOneRow = graft !== null && knitted === firstRow;
    return {
      number,
      sign,
      lines: lines.map(({ text, through }) => ({
        rows: text,
        edges: isOneRow ? graft : edgesAfter(plan, through),
      })),
      notes: [
        ...crossingsIn(crossings, firstRow, knitted).map(([row, yarns]) =>
          words.sheet.crossing(
            row,
            yarns.map((one) => signs.get(one)?.letter ?? one),
          ),
        ),
        ...rehangs(plan, words, firstRow, knitted),
        ...(isLastOf(plan, number, yarn) ? [words.sheet.thenCut(inSentence(yarn))] : []),
        ...(graft !== null && !isOneRow ? [graft] : []),
      ],
    };
  });
}

/** Yarns that wait long are caught in on the way. */
const crossingsIn = (
  crossings: Outline['crossings'],
  firstRow: number,
  lastRow: number,
): readonly (readonly [row: number, yarns: readonly string[]])[] =>
  [...crossings].filter(([row]) => row >= firstRow && row <= lastRow);

/** No later stripe is of this yarn; the graft's is cut at the closing row, and so is one that waits for no other row before it. */
const isLastOf = ({ stripes, knittedRows }: Plan, number: number, yarn: string): boolean =>
  (stripes[number]?.firstRow ?? knittedRows) < knittedRows &&
  stripes.every((later) => later.number <= number || later.yarn !== yarn);

interface Rows {
  readonly text: string;
  readonly through: number;
}

/** Rows from one shaping move to the next: `1 2•`, or `1–4•` where there are more than two. */
function groupsOf({ brief, knittedRows }: Plan, firstRow: number, lastRow: number): readonly Rows[] {
  const groups: Rows[] = [];
  for (let from = firstRow; from <= lastRow; ) {
    const shaped = Math.ceil(from / brief.shapeEveryRows) * brief.shapeEveryRows;
    const through = Math.min(shaped, lastRow);
    const numbers = through - from === 1 ? `${from} ${through}` : span(from, through);
    groups.push({ text: `${numbers}${through === shaped && through < knittedRows ? '•' : ''}`, through });
    from = through + 1;
  }
  return groups;
}

/** As many groups in a line as it has room for. */
function packed(groups: readonly Rows[], rowsEms: number): readonly Rows[] {
  const lines: Rows[] = [];
  for (const { text, through } of groups) {
    const last = lines.at(-1);
    const longer = last ? `${last.text} ${text}` : text;
    if (last && textWidth(longer, 1) <= rowsEms) lines[lines.length - 1] = { text: longer, through };
    else lines.push({ text, through });
  }
  return lines;
}

/** Edge needles when a row and the move that follows it are done, the work hung again where it is to be. */
function edgesAfter(plan: Plan, row: number): string {
  const { bed } = plan.brief;
  const { left, right } = edgesOfRow(plan, row + 1);
  return `${formatNeedle(bed.needles, left)}–${formatNeedle(bed.needles, right)}`;
}

function rehangs(plan: Plan, words: Words, firstRow: number, lastRow: number): readonly string[] {
  return plan.hangings
    .filter(({ fromRow }) => fromRow > 1 && fromRow - 1 >= firstRow && fromRow - 1 <= lastRow)
    .map(({ fromRow, hungLeft, hungRight }) => {
      const nameOf = (place: number): string => formatNeedle(plan.brief.bed.needles, place);
      return words.sheet.rehang(fromRow - 1, nameOf(hungLeft), nameOf(hungRight));
    });
}

/** Stripes down columns, in tables of at most so much room a column; the last table is shared out evenly. */
export function stripeTables<T>(
  stripes: readonly T[],
  across: number,
  heightOf: (stripe: T) => number,
  roomOf: (table: number) => number,
): readonly (readonly (readonly T[])[])[] {
  const tables: (readonly T[])[][] = [];
  let rest = stripes;
  while (rest.length > 0) {
    const room = roomOf(tables.length);
    const columns: (readonly T[])[] = [];
    for (let left = across; left > 0 && rest.length > 0; left--) {
      const share = rest.reduce((sum, stripe) => sum + heightOf(stripe), 0) / left;
      // What is higher than the rest of a page begins the next, where it has a column to itself.
      if (columns.length > 0 && heightOf(rest[0] as T) > room) break;
      const column = fill(rest, heightOf, share, room);
      columns.push(column);
      rest = rest.slice(column.length);
    }
    tables.push(columns);
  }
  return tables;
}

/** The first ones until they come to their share, as far as there is room; at least one. */
function fill<T>(
  stripes: readonly T[],
  heightOf: (stripe: T) => number,
  share: number,
  room: number,
): readonly T[] {
  const taken: T[] = [];
  let used = 0;
  for (const stripe of stripes) {
    const height = heightOf(stripe);
    if (taken.length > 0 && (used > share - 0.01 || used + height > room)) break;
    taken.push(stripe);
    used += height;
  }
  return taken;
}
