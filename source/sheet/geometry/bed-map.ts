import { formatNeedle } from '../../bed/needles.ts';
import { edgesOfRow } from '../../planning/hangings.ts';
import type { Plan } from '../../planning/plan.ts';

/** Edge needles by place (0 is the far left) and by name. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly leftName: string;
  readonly rightName: string;
}

export interface HangingOnBed {
  readonly number: number;
  readonly fromRow: number;
  readonly throughRow: number;
  /** As it is hung, before any shaping move there, and while its last row is knitted. */
  readonly hung: Edges;
  readonly last: Edges;
}

/** The bed from above, the maker in front of it. */
export interface BedMap {
  readonly needles: number;
  readonly marginNeedles: number;
  /** Needles left of the middle. */
  readonly leftNeedles: number;
  readonly hangings: readonly HangingOnBed[];
}

export function bedMapOf(plan: Plan): BedMap {
  const { needles, marginNeedles } = plan.brief.bed;
  return {
    needles,
    marginNeedles,
    leftNeedles: Math.floor(needles / 2),
    hangings: plan.hangings.map(({ fromRow, throughRow, hungLeft, hungRight }, i) => ({
      number: i + 1,
      fromRow,
      throughRow,
      hung: named(needles, hungLeft, hungRight),
      last: edgesAtRow(plan, throughRow),
    })),
  };
}

/** Edge needles while `row` is knitted, the shaping moves before it made. */
export function edgesAtRow(plan: Plan, row: number): Edges {
  const { left, right } = edgesOfRow(plan, row);
  return named(plan.brief.bed.needles, left, right);
}

const named = (needles: number, left: number, right: number): Edges => ({
  left,
  right,
  leftName: formatNeedle(needles, left),
  rightName: formatNeedle(needles, right),
});
