import type { Side } from '../bed/bed.ts';
import type { Move } from '../bed/move.ts';
import type { Act } from './act.ts';

/** The parts of the job, in order; the hem is there only where the mouth has one. */
export const phases = ['cast-on', 'stripes', 'closing-row', 'hem', 'graft', 'seam', 'cord'] as const;
export type Phase = (typeof phases)[number];

/** The bed when a step is done. Edges are the outermost needles that hold loops; null when the bed is empty. */
export interface BedAfter {
  readonly left: string | null;
  readonly right: string | null;
  /** Needles that hold a loop; a doubled needle counts once. */
  readonly stitches: number;
  readonly carriage: Side;
  readonly feeder: string | null;
  readonly parked: ReadonlyMap<string, Side>;
  /** What the row counter shows; null on a bed that has none. */
  readonly counter: number | null;
  readonly shapings: number;
}

/** One instruction: what a single key press confirms. */
export interface Step {
  /** Counted from 1. */
  readonly step: number;
  readonly phase: Phase;
  /** Main-yarn rows knitted when the step is done. */
  readonly row: number;
  /** The stripe being worked, from 1; null outside stripes and closing row. */
  readonly stripe: number | null;
  readonly act: Act;
  readonly moves: readonly Move[];
  readonly after: BedAfter;
}

/** A step before it is given its number and phase. */
export type StepBody = Omit<Step, 'step' | 'phase'>;
