/**
 * Closing: one row with the last stripe's yarn (its second row is the graft), the tail measured and cut, waste rows to
 * hold the loops, weights off, and the work dropped off the needles (common practice).
 */
import { opposite } from '../bed/side.ts';
import { closingTailCm } from '../planning/tails.ts';
import { bareBed, bedAt, carriageAfter, hangingOf } from './bed-after.ts';
import { feedsBefore, type Outline, stripeNumberOf, yarnOfRow } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';
import { passStep, threadStep } from './stripes.ts';

/** Beside a thread step where one is due: pass, cut the tail, thread waste, weights off, take off. */
const fixedSteps = 5;

export const countClosingRow = (outline: Outline): number =>
  (feedsBefore(outline, outline.plan.knittedRows) ? 1 : 0) + fixedSteps + outline.closingWasteRows;

export function closingRowStep(outline: Outline, local: number): StepBody {
  const { plan, closingWasteRows, leftParked } = outline;
  const { graft, seam, shapings } = plan;
  const row = plan.knittedRows;
  const waste = plan.brief.waste.yarn;
  const part = local - (feedsBefore(outline, row) ? 1 : 0);
  if (part < 0) return threadStep(outline, row);
  if (part === 0) return passStep(outline, row);

  const yarn = yarnOfRow(outline, row);
  const side = carriageAfter(outline, row);
  const common = { row, stripe: stripeNumberOf(outline, row) };
  const onBed = (feeder: string | null, passes: number): BedAfter =>
    bedAt(outline, {
      hanging: hangingOf(outline, row),
      row,
      shapings,
      feeder,
      parked: new Map(),
      carriage: passes % 2 === 0 ? side : opposite(side),
    });

  if (part === 1) {
    const lengthCm = closingTailCm({ graft, seam });
    return {
      ...common,
      act: {
        kind: 'cut-graft-tail',
        yarn,
        lengthCm,
        throughSeam: graft.goesOnToSeam,
        alsoCut: leftParked,
      },
      moves: [
        { move: 'measure', lengthCm },
        { move: 'cut', yarn },
        ...leftParked.map((left) => ({ move: 'cut', yarn: left }) as const),
      ],
      after: onBed(null, 0),
    };
  }
  if (part === 2) {
    return {
      ...common,
      act: { kind: 'thread-waste', yarn: waste, aside: null },
      moves: [{ move: 'feed', yarn: waste }],
      after: onBed(waste, 0),
    };
  }
  const number = part - 2;
  if (number <= closingWasteRows) {
    const after = onBed(waste, number);
    return {
      ...common,
      act: { kind: 'waste-pass', yarn: waste, number, count: closingWasteRows, to: after.carriage },
      moves: [{ move: 'knit', to: after.carriage }],
      after,
    };
  }
  if (number === closingWasteRows + 1) {
    return {
      ...common,
      act: { kind: 'weights-off', wasteYarn: waste, rehang: false },
      moves: [{ move: 'cut', yarn: waste }],
      after: onBed(null, closingWasteRows),
    };
  }
  return {
    ...common,
    act: { kind: 'take-off', rehang: false },
    moves: [{ move: 'take-off' }],
    after: bareBed(outline, carriageAtEnd(outline)),
  };
}

/** The side on which the carriage is left once the work is off the bed. */
export function carriageAtEnd(outline: Outline): 'left' | 'right' {
  const side = carriageAfter(outline, outline.plan.knittedRows);
  return outline.closingWasteRows % 2 === 0 ? side : opposite(side);
}
