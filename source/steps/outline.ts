/**
 * The table of contents of a job: where each phase and each row begins. A few numbers a row, from which the step at
 * any index follows without building the ones before it.
 */

import { opposite, type Side } from '../bed/bed.ts';
import { formatNeedles } from '../bed/needles.ts';
import { isShapedAfter } from '../planning/hangings.ts';
import type { Plan } from '../planning/plan.ts';
import { closingWasteRows, rehangWasteRows } from '../planning/yarn-needs.ts';

/** When a yarn is first and last knitted, and the end of the bed at which it is parked. */
interface YarnSpan {
  readonly yarn: string;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly end: Side;
}

export interface Outline {
  readonly plan: Plan;
  /** Needle names by place. */
  readonly needles: readonly string[];
  readonly yarnSpans: readonly YarnSpan[];
  /** By row, from 1: index of its stripe in the plan. */
  readonly stripeOfRow: Uint16Array;
  /** By row, from 1: index of its hanging in the plan. */
  readonly hangingOfRow: Uint16Array;
  /** By row, from 1: steps of the stripes phase before that row's own; one more entry holds their number. */
  readonly rowStart: Uint32Array;
  readonly closingWasteRows: number;
  readonly rehangWasteRows: number;
  /** The row after which the work carries claw weights alone: an even one, so that the carriage is at home. */
  readonly clawRow: number;
  /** By row: the waiting yarns that are crossed with the working one before its pass. */
  readonly crossings: ReadonlyMap<number, readonly string[]>;
  /** Yarns that wait parked though the plan, changed half-way, does not need them again: cut at the closing row. */
  readonly leftParked: readonly string[];
}

/** What is knitted already when the rest of a job is planned again. */
export interface KnittedPart {
  /** Rows knitted. */
  readonly row: number;
  readonly feeder: string | null;
  readonly parked: ReadonlyMap<string, Side>;
}

/** The comb comes off and claw weights go on once so many rows hang, and they are moved up every so many (common practice). */
const combRows = 20;
const weightRows = 10;

/** A strand that waits longer than this gathers the edge: it is crossed with the working yarn every so many rows (common practice). */
const longestWait = 6;
const crossedEvery = 4;

export function outlineSteps(plan: Plan, knitted: KnittedPart | null = null): Outline {
  const stripeOfRow = new Uint16Array(plan.rows + 1);
  for (const [i, { firstRow, lastRow }] of plan.stripes.entries()) stripeOfRow.fill(i, firstRow, lastRow + 1);
  const hangingOfRow = new Uint16Array(plan.rows + 1);
  for (const [i, { fromRow, throughRow }] of plan.hangings.entries())
    hangingOfRow.fill(i, fromRow, throughRow + 1);
  const leftParked = knitted ? leftParkedOf(plan, knitted) : [];
  const yarnSpans = yarnSpansOf(plan).map((span) => spanFromHere(plan, span, knitted, leftParked));
  const bare = {
    plan,
    needles: formatNeedles(plan.brief.bed.needles, 0, plan.brief.bed.needles - 1),
    yarnSpans,
    stripeOfRow,
    hangingOfRow,
    rowStart: new Uint32Array(plan.rows),
    closingWasteRows: closingWasteRows(plan.brief),
    rehangWasteRows: rehangWasteRows(plan.brief),
    clawRow: clawRowOf(plan),
    crossings: crossingsOf(plan, yarnSpans),
    leftParked,
  };
  for (let row = 1; row < plan.knittedRows; row++) {
    bare.rowStart[row + 1] = (bare.rowStart[row] ?? 0) + partsOfRow(bare, row).stepCount;
  }
  return bare;
}

function yarnSpansOf({ brief, stripes, rows }: Plan): readonly YarnSpan[] {
  const names = [...new Set(stripes.map((stripe) => stripe.yarn))];
  return names.map((yarn, i) => ({
    yarn,
    firstRow: stripes.find((stripe) => stripe.yarn === yarn)?.firstRow ?? 1,
    lastRow: stripes.findLast((stripe) => stripe.yarn === yarn)?.lastRow ?? rows,
    end: brief.bed.park === 'home' || i % 2 === 0 ? brief.homeSide : opposite(brief.homeSide),
  }));
}

/** Below the first row of the bag hang the waste rows and the ravel row. */
function clawRowOf({ brief }: Plan): number {
  const row = Math.max(2, combRows - brief.waste.rows - 1);
  return row + (row % 2);
}

function crossingsOf({ stripes }: Plan, spans: readonly YarnSpan[]): Outline['crossings'] {
  const crossings = new Map<number, string[]>();
  const lastKnitted = new Map<string, number>();
  for (const { yarn, firstRow, lastRow } of stripes) {
    const since = lastKnitted.get(yarn);
    lastKnitted.set(yarn, lastRow);
    const span = spans.find((one) => one.yarn === yarn);
    if (since === undefined || !span || since < span.firstRow || firstRow - since - 1 <= longestWait)
      continue;
    for (let row = since + crossedEvery + 1; row < firstRow; row += crossedEvery) {
      crossings.set(row, [...(crossings.get(row) ?? []), yarn]);
    }
  }
  return crossings;
}

const leftParkedOf = ({ stripes }: Plan, { row, parked }: KnittedPart): readonly string[] =>
  [...parked.keys()].filter(
    (yarn) => !stripes.some((stripe) => stripe.yarn === yarn && stripe.lastRow > row),
  );

/** A yarn cut before the change starts again; one left parked waits there until the end. */
function spanFromHere(
  { stripes, rows }: Plan,
  span: YarnSpan,
  knitted: KnittedPart | null,
  leftParked: readonly string[],
): YarnSpan {
  if (!knitted || span.firstRow > knitted.row) return span;
  const { row, feeder, parked } = knitted;
  if (leftParked.includes(span.yarn)) return { ...span, lastRow: rows + 1 };
  if (span.yarn === feeder || parked.has(span.yarn)) return span;
  const next = stripes.find((stripe) => stripe.yarn === span.yarn && stripe.lastRow > row);
  return next ? { ...span, firstRow: Math.max(next.firstRow, row + 1) } : span;
}

/** What one row brings with it, in working order: thread, pass, rehang, increase and decrease, weights. */
interface RowParts {
  readonly threads: boolean;
  readonly rehangs: boolean;
  readonly shapes: boolean;
  readonly movesWeights: boolean;
  readonly stepCount: number;
}

/** Steps of a rehang: waste yarn, waste rows, weights off, off, needles, on again, weights, waste out. */
export const rehangSteps = 8;

export function partsOfRow(outline: Outline, row: number): RowParts {
  const { plan, clawRow } = outline;
  const threads = feedsBefore(outline, row);
  const rehangs = rehangsAfter(outline, row);
  const shapes = isShapedAfter(plan, row);
  const movesWeights = row >= clawRow && (row - clawRow) % weightRows === 0 && !rehangs;
  const stepCount =
    1 + (threads ? 1 : 0) + (rehangs ? rehangSteps : 0) + (shapes ? 2 : 0) + (movesWeights ? 1 : 0);
  return { threads, rehangs, shapes, movesWeights, stepCount };
}

/** The cast-on comb still hangs once `row` is knitted: until enough rows do, or until the work is hung again. */
export const combHangs = ({ plan, clawRow, hangingOfRow }: Outline, row: number): boolean =>
  !plan.brief.bed.without.includes('comb') && row <= clawRow && hangingOfRow[row] === 0;

export const yarnOfRow = ({ plan, stripeOfRow }: Outline, row: number): string =>
  plan.stripes[stripeOfRow[row] ?? 0]?.yarn ?? '';

/** Number of the stripe that holds `row`, from 1. */
export const stripeNumberOf = ({ stripeOfRow }: Outline, row: number): number => (stripeOfRow[row] ?? 0) + 1;

/** A rehang follows this row. */
export const rehangsAfter = ({ hangingOfRow, plan }: Outline, row: number): boolean =>
  row < plan.knittedRows && hangingOfRow[row] !== hangingOfRow[row + 1];

/** The row's yarn has to be put into the feeder first: a new colour, the first row, or back from a rehang. */
export const feedsBefore = (outline: Outline, row: number): boolean =>
  row === 1 || rehangsAfter(outline, row - 1) || yarnOfRow(outline, row) !== yarnOfRow(outline, row - 1);

/** The row whose own steps hold the stripes-phase step at `local` (from 0). */
export function rowAtStep({ rowStart, plan }: Outline, local: number): number {
  let low = 1;
  let high = plan.knittedRows - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((rowStart[middle] ?? 0) <= local) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** So many needles in the middle of the bed. */
export function middleNeedles({ needles }: Outline, count: number): readonly string[] {
  const first = Math.floor(needles.length / 2) - Math.floor(count / 2);
  return needles.slice(first, first + count);
}
