/**
 * Closing: one row with the last stripe's yarn (its second row is the graft), the tail measured and cut, waste rows to
 * hold the loops, weights off, and the work dropped by a pass with nothing in the feeder (common practice).
 */
import { opposite, type Side } from '../bed/bed.ts';
import { closingTailCm } from '../planning/tails.ts';
import { bareBed, bedAt, carriageAfter, counterAt, hangingOf } from './bed-after.ts';
import { wasteRows } from './cast-on.ts';
import { combHangs, feedsBefore, type Outline, stripeNumberOf, yarnOfRow } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';
import { passStep, threadStep } from './stripes.ts';

/** Beside a thread step where one is due: pass, cut the tail, thread waste, waste rows, weights off, take off. */
const fixedSteps = 6;

export const countClosingRow = (outline: Outline): number =>
  (feedsBefore(outline, outline.plan.knittedRows) ? 1 : 0) + fixedSteps;

export function closingRowStep(outline: Outline, local: number): StepBody {
  const { plan, closingWasteRows, leftParked } = outline;
  const { graft, seam, shapings } = plan;
  const row = plan.knittedRows;
  const waste = plan.brief.waste.yarn;
  const part = local - (feedsBefore(outline, row) ? 1 : 0);
  if (part < 0) return threadStep(outline, row);
  if (part === 0) return passStep(outline, row);

  const yarn = yarnOfRow(outline, row);
  const common = { row, stripe: stripeNumberOf(outline, row) };
  const onBed = (feeder: string | null, passes: number): BedAfter =>
    bedAt(outline, {
      hanging: hangingOf(outline, row),
      row,
      shapings,
      feeder,
      parked: new Map(),
      carriage: sideAfterWaste(outline, passes),
      counter: counterAt(outline, row + passes),
    });

  switch (part) {
    case 1: {
      const lengthCm = closingTailCm({ graft, seam });
      const throughSeam = graft.goesOnToSeam;
      return {
        ...common,
        act: { kind: 'cut-graft-tail', yarn, lengthCm, throughSeam, alsoCut: leftParked },
        moves: [
          { move: 'measure', lengthCm },
          { move: 'cut', yarn },
          ...leftParked.map((left) => ({ move: 'cut', yarn: left }) as const),
        ],
        after: onBed(null, 0),
      };
    }
    case 2:
      return {
        ...common,
        act: { kind: 'thread-waste', yarn: waste, aside: null },
        moves: [{ move: 'feed', yarn: waste }],
        after: onBed(waste, 0),
      };
    case 3: {
      const end = sideAfterWaste(outline, closingWasteRows);
      return {
        ...common,
        ...wasteRows({ yarn: waste, from: 1, through: closingWasteRows, of: closingWasteRows, end }),
        after: onBed(waste, closingWasteRows),
      };
    }
    case 4:
      return {
        ...common,
        act: { kind: 'weights-off', wasteYarn: waste, comb: combHangs(outline, row), rehangs: false },
        moves: [{ move: 'cut', yarn: waste }],
        after: onBed(null, closingWasteRows),
      };
    default: {
      const to = carriageAtEnd(outline);
      return {
        ...common,
        act: { kind: 'take-off', to, rehangs: false },
        moves: [{ move: 'take-off', to }],
        after: closedBed(outline),
      };
    }
  }
}

function sideAfterWaste(outline: Outline, passes: number): Side {
  const side = carriageAfter(outline, outline.plan.knittedRows);
  return passes % 2 === 0 ? side : opposite(side);
}

/** The side on which the pass that drops the work leaves the carriage. */
const carriageAtEnd = (outline: Outline): Side => sideAfterWaste(outline, outline.closingWasteRows + 1);

/** The bed while the work is in the lap. */
export const closedBed = (outline: Outline): BedAfter =>
  bareBed(
    outline,
    carriageAtEnd(outline),
    counterAt(outline, outline.plan.knittedRows + outline.closingWasteRows + 1),
  );
