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

type Part = (outline: Outline) => Pick<StepBody, 'act' | 'moves' | 'after'>;

/** What follows the closing row itself. */
const parts: readonly Part[] = [cutTail, threadWaste, knitWaste, takeWeightsOff, takeOff];

const threads = (outline: Outline): boolean => feedsBefore(outline, outline.plan.knittedRows);

export const countClosingRow = (outline: Outline): number => (threads(outline) ? 1 : 0) + 1 + parts.length;

export function closingRowStep(outline: Outline, local: number): StepBody {
  const row = outline.plan.knittedRows;
  const at = local - (threads(outline) ? 1 : 0);
  if (at < 0) return threadStep(outline, row);
  if (at === 0) return passStep(outline, row);
  const part = parts[at - 1] as Part;
  return { row, stripe: stripeNumberOf(outline, row), ...part(outline) };
}

/** The bed with the loops of the last row on it, so many waste rows later. */
function bedOf(outline: Outline, feeder: string | null, passes: number): BedAfter {
  const { knittedRows: row, shapings } = outline.plan;
  return bedAt(outline, {
    hanging: hangingOf(outline, row),
    row,
    shapings,
    feeder,
    parked: new Map(),
    carriage: sideAfterWaste(outline, passes),
    counter: counterAt(outline, row + passes),
  });
}

function cutTail(outline: Outline): ReturnType<Part> {
  const { plan, leftParked } = outline;
  const yarn = yarnOfRow(outline, plan.knittedRows);
  const lengthCm = closingTailCm(plan);
  const throughSeam = plan.graft.goesOnToSeam;
  return {
    act: { kind: 'cut-graft-tail', yarn, lengthCm, throughSeam, alsoCut: leftParked },
    moves: [
      { move: 'measure', lengthCm },
      { move: 'cut', yarn },
      ...leftParked.map((left) => ({ move: 'cut', yarn: left }) as const),
    ],
    after: bedOf(outline, null, 0),
  };
}

function threadWaste(outline: Outline): ReturnType<Part> {
  const { yarn } = outline.plan.brief.waste;
  return {
    act: { kind: 'thread-waste', yarn, aside: null },
    moves: [{ move: 'feed', yarn }],
    after: bedOf(outline, yarn, 0),
  };
}

function knitWaste(outline: Outline): ReturnType<Part> {
  const { yarn } = outline.plan.brief.waste;
  const through = outline.closingWasteRows;
  const end = sideAfterWaste(outline, through);
  return {
    ...wasteRows({ yarn, from: 1, through, of: through, end }),
    after: bedOf(outline, yarn, through),
  };
}

function takeWeightsOff(outline: Outline): ReturnType<Part> {
  const { knittedRows, brief } = outline.plan;
  const { yarn } = brief.waste;
  return {
    act: { kind: 'weights-off', wasteYarn: yarn, comb: combHangs(outline, knittedRows), rehangs: false },
    moves: [{ move: 'cut', yarn }],
    after: bedOf(outline, null, outline.closingWasteRows),
  };
}

function takeOff(outline: Outline): ReturnType<Part> {
  const to = carriageAtEnd(outline);
  return {
    act: { kind: 'take-off', to, rehangs: false },
    moves: [{ move: 'take-off', to }],
    after: closedBed(outline),
  };
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
