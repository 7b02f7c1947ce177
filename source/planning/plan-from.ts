/**
 * Planning on from here: what is knitted stays, the rows still to knit are worked out again. They must come to whole stripe
 * repeats, or the colours do not meet at the graft; stitches cannot change once they are cast on, nor where the work hangs.
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import { boxedBelowCm, canBeBoxed } from './boxed.ts';
import type { Brief, Swatch, Yarn } from './brief.ts';
import { leastRowsOf, neighbourOf, rowMultipleOf } from './choose-size.ts';
import type { Neighbour } from './fault.ts';
import { gaugeOf } from './gauge.ts';
import type { Counts } from './geometry.ts';
import type { Begun } from './hangings.ts';
import type { Plan } from './plan.ts';
import { completePlan } from './plan-bag.ts';
import { type KnittedStripe, layStripes } from './stripe-sequence.ts';
import { planYarn } from './yarn-needs.ts';

/** How far the work has come. */
export interface Knitted {
  /** Rows knitted. */
  readonly row: number;
  /** Stripes through this row keep their yarn: the row whose yarn is in the feeder already. */
  readonly colouredThrough: number;
}

export interface PlanChanges {
  /** Rows round the tube, the grafted row included. */
  readonly rows: number;
  /** Stitch width and row height as the piece measures; null where the swatch holds. */
  readonly measured: { readonly stitchMm: number; readonly rowMm: number } | null;
  /** One yarn takes the place of another from the next stripe on. */
  readonly recolour: { readonly from: string; readonly to: string; readonly yarn: Yarn | null } | null;
  /** The cord is made of this yarn instead. */
  readonly cordYarn: { readonly to: string; readonly yarn: Yarn | null } | null;
}

export const noChange = { measured: null, recolour: null, cordYarn: null } as const;

export type ReplanFault =
  | {
      readonly code: 'replan/rows-not-whole-repeats';
      readonly rows: number;
      readonly rowMultiple: number;
      readonly least: number;
    }
  | { readonly code: 'replan/rows-too-few'; readonly rows: number; readonly least: number }
  | { readonly code: 'replan/rows-too-many'; readonly rows: number; readonly most: number }
  | { readonly code: 'replan/unknown-yarn'; readonly yarn: string; readonly known: readonly string[] }
  | { readonly code: 'replan/yarn-not-to-come'; readonly yarn: string }
  | {
      readonly code: 'replan/colours-meet';
      readonly first: number;
      readonly second: number;
      readonly yarn: string;
    }
  | { readonly code: 'replan/boxed-too-deep'; readonly boxedCm: number; readonly belowCm: number }
  | { readonly code: 'replan/measure-impossible'; readonly sizeMm: number }
  | { readonly code: 'replan/too-late' }
  | { readonly code: 'replan/cord-begun' };

/** As many rows as a brief may ask for. */
export const mostRows = 20_000;

/** The fewest rows round the tube that leave the closing row still to knit. */
export function leastRowsFrom(brief: Brief, row: number): number {
  const rowMultiple = rowMultipleOf(brief);
  return Math.max(leastRowsOf(brief), Math.ceil((row + 2) / rowMultiple) * rowMultiple);
}

/** The plan with its knitted part as it is and the changes from there on, or why they cannot be. */
export function planFrom(plan: Plan, knitted: Knitted, changes: PlanChanges): Result<Plan, ReplanFault> {
  const { rows } = changes;
  const fault = checkRows(plan.brief, knitted, rows) ?? checkChanges(plan, knitted, changes);
  if (fault) return fail(fault);
  const brief = changedBrief(plan, changes);
  const stripes = stripesFrom(plan, brief, knitted, changes);
  const meeting = newMeeting(plan, stripes);
  if (meeting) return fail(meeting);
  const counts = { rows, stitches: plan.stitches, shapeEveryRows: brief.shapeEveryRows };
  const gauge = gaugeOf(brief);
  if (!canBeBoxed(brief, gauge, counts)) {
    const belowCm = boxedBelowCm(brief, gauge, counts);
    return fail({ code: 'replan/boxed-too-deep', boxedCm: brief.boxedCm, belowCm });
  }
  return succeed(asBegun(completePlan(brief, gauge, counts, { stripes, begun: begunOf(plan, knitted) })));
}

/** The plan with its cord of another yarn and all else as it is: the rows may be knitted already. */
export function planWithCordOf(
  plan: Plan,
  cordYarn: NonNullable<PlanChanges['cordYarn']>,
): Result<Plan, ReplanFault> {
  const changes = { ...noChange, rows: plan.rows, cordYarn };
  const fault = checkChanges(plan, { row: plan.rows, colouredThrough: plan.rows }, changes);
  if (fault) return fail(fault);
  const brief = changedBrief(plan, changes);
  const cord = { ...plan.cord, yarn: cordYarn.to };
  return succeed({ ...plan, brief, cord, yarn: planYarn(brief, plan.gauge, { ...plan, cord }) });
}

/** Where a rehang is due, the hanging after it stands too: it may have been begun. */
const begunOf = ({ hangings }: Plan, { row }: Knitted): Begun => ({
  hangings: hangings.filter(({ fromRow }) => fromRow <= row + 1),
  row,
});

/** The stitches are on the needles, so neighbours keep them; and the maker has chosen the size with both in sight. */
function asBegun(plan: Plan): Plan {
  const counts = ({ rows }: Neighbour): Counts => ({
    rows,
    stitches: plan.stitches,
    shapeEveryRows: plan.brief.shapeEveryRows,
  });
  return {
    ...plan,
    neighbours: plan.neighbours.map((one) => neighbourOf(plan.brief, plan.gauge, counts(one))),
  };
}

function checkRows(brief: Brief, { row }: Knitted, rows: number): ReplanFault | null {
  const rowMultiple = rowMultipleOf(brief);
  const least = leastRowsFrom(brief, row);
  if (!Number.isInteger(rows) || rows % rowMultiple !== 0) {
    return { code: 'replan/rows-not-whole-repeats', rows, rowMultiple, least };
  }
  if (rows < least) return { code: 'replan/rows-too-few', rows, least };
  return rows > mostRows ? { code: 'replan/rows-too-many', rows, most: mostRows } : null;
}

function checkChanges(
  { brief, stripes }: Plan,
  { colouredThrough }: Knitted,
  { measured, recolour, cordYarn }: PlanChanges,
): ReplanFault | null {
  const odd = Object.values(measured ?? {}).find((sizeMm) => !(sizeMm >= 0.2 && sizeMm <= 60));
  if (odd !== undefined) return { code: 'replan/measure-impossible', sizeMm: odd };
  const known = [...brief.yarns.keys()];
  const taken = cordYarn && cordYarn.yarn === null && cordYarn.to !== recolour?.to ? cordYarn.to : null;
  if (taken !== null && !known.includes(taken)) {
    return { code: 'replan/unknown-yarn', yarn: taken, known };
  }
  if (!recolour) return null;
  const toCome = [...brief.stripes, ...stripes.filter(({ firstRow }) => firstRow > colouredThrough)];
  if (!toCome.some(({ yarn }) => yarn === recolour.from)) {
    return { code: 'replan/yarn-not-to-come', yarn: recolour.from };
  }
  if (recolour.yarn === null && !known.includes(recolour.to)) {
    return { code: 'replan/unknown-yarn', yarn: recolour.to, known };
  }
  return null;
}

function changedBrief({ brief }: Plan, changes: PlanChanges): Brief {
  const { measured, recolour, cordYarn } = changes;
  const swatch = measured ? measuredSwatch(brief.swatch, measured) : brief.swatch;
  // What the swatch foretold no longer matters once the piece itself has been measured.
  const learned = measured ? null : brief.learned;
  const yarns = new Map(brief.yarns);
  for (const change of [recolour, cordYarn]) if (change?.yarn) yarns.set(change.to, change.yarn);
  const cord = cordYarn ? { ...brief.cord, yarn: cordYarn.to } : brief.cord;
  const stripes = brief.stripes.map((stripe) =>
    recolour && stripe.yarn === recolour.from ? { ...stripe, yarn: recolour.to } : stripe,
  );
  return { ...brief, swatch, learned, yarns, stripes, cord };
}

/** What the swatch would measure if it were as the piece is; how it has rested, and a loop measured, still hold. */
const measuredSwatch = (
  swatch: Swatch,
  { stitchMm, rowMm }: { readonly stitchMm: number; readonly rowMm: number },
): Swatch => ({
  ...swatch,
  widthMm: stitchMm * swatch.stitches,
  heightMm: rowMm * swatch.rows,
  // It leans as it did.
  asideMm: (swatch.asideMm * rowMm * swatch.rows) / swatch.heightMm,
  onPiece: true,
});

/** Stripes that were planned stay, but for the colour that changes; more of them follow the repeat. */
function stripesFrom(
  plan: Plan,
  brief: Brief,
  { colouredThrough }: Knitted,
  { rows, recolour }: PlanChanges,
): readonly KnittedStripe[] {
  return layStripes(brief.stripes, rows).map((stripe, i) => {
    const before = plan.stripes[i];
    if (!before) return stripe;
    const changes = recolour?.from === before.yarn && before.firstRow > colouredThrough;
    return changes ? { ...before, yarn: recolour.to } : before;
  });
}

/** Two neighbours of one colour, across the graft too, where the plan had none. */
function newMeeting(plan: Plan, stripes: readonly KnittedStripe[]): ReplanFault | null {
  if (meetings(plan.stripes).length > 0) return null;
  const found = meetings(stripes);
  // One within the strip stays however many rows follow; the one at the graft may not.
  const second = found.find((i) => i > 0) ?? found[0];
  if (second === undefined) return null;
  const first = stripes.at(second - 1);
  return {
    code: 'replan/colours-meet',
    first: first?.number ?? 0,
    second: second + 1,
    yarn: first?.yarn ?? '',
  };
}

const meetings = (stripes: readonly KnittedStripe[]): readonly number[] =>
  stripes.flatMap((stripe, i) => (stripe.yarn === stripes.at(i - 1)?.yarn ? [i] : []));
