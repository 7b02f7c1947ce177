import { formatNeedle } from '../../bed/needles.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { edgesAtRow } from '../geometry/bed-map.ts';
import { span } from '../measure.ts';
import { markYarns, type YarnMark } from '../yarn-marks.ts';

/** One stripe of the list that is ticked off. */
export interface StripeRow {
  readonly number: number;
  readonly mark: YarnMark;
  /** Row numbers, a dot after each that a shaping move follows: `1 2•`; in a long list only `1–2`. */
  readonly rows: string;
  /** Edge needles while its last knitted row is knitted. */
  readonly edges: string;
  /** Where the work is hung again within this stripe or after it; else null. */
  readonly rehang: string | null;
}

/** Single row numbers are written in short stripes, while the list has room for them. */
const mostRowsWritten = 4;
const mostStripesWritten = 33;

export function stripeRows(plan: Plan, words: Words): readonly StripeRow[] {
  const marks = markYarns(plan, 'print');
  return plan.stripes.map(({ number, yarn, firstRow, lastRow }) => {
    const mark = marks.get(yarn);
    if (!mark) throw new Error(`no mark for the yarn of stripe ${number}`);
    const lastKnitted = Math.min(lastRow, plan.knittedRows);
    const edges = edgesAtRow(plan, lastKnitted);
    return {
      number,
      mark,
      rows: rowsText(plan, firstRow, lastRow, words),
      edges: `${edges.leftName}–${edges.rightName}`,
      rehang: rehangText(plan, firstRow, lastKnitted, words),
    };
  });
}

function rowsText(plan: Plan, firstRow: number, lastRow: number, words: Words): string {
  const knitted = Math.min(lastRow, plan.knittedRows);
  const withGraft = (numbers: string): string => (knitted < lastRow ? words.say`${numbers} graft` : numbers);
  if (knitted - firstRow >= mostRowsWritten || plan.stripes.length > mostStripesWritten)
    return withGraft(span(firstRow, knitted));
  const isShaped = (row: number): boolean => row % plan.brief.shapeEveryRows === 0 && row < plan.knittedRows;
  const numbers = Array.from({ length: knitted - firstRow + 1 }, (_, i) => firstRow + i);
  return withGraft(numbers.map((row) => `${row}${isShaped(row) ? '•' : ''}`).join(' '));
}

function rehangText(plan: Plan, firstRow: number, lastRow: number, words: Words): string | null {
  const again = plan.hangings.filter(
    ({ fromRow }) => fromRow > 1 && fromRow - 1 >= firstRow && fromRow - 1 <= lastRow,
  );
  if (again.length === 0) return null;
  return again
    .map(({ fromRow, hungLeft, hungRight }) => {
      const nameOf = (place: number): string => formatNeedle(plan.brief.bed.needles, place);
      return words.say`after row ${fromRow - 1} hang again, ${nameOf(hungLeft)} to ${nameOf(hungRight)}, then shape`;
    })
    .join('; ');
}
