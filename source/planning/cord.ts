/**
 * The tubular cord: two passes a round, each round one row high. A round takes its stitches and the strand that
 * crosses the back, (c − 1) stitch widths (common practice; loop length as for the bag). It winds in and out of the holes,
 * so its way from hole to hole is √(gap² + thickness²), and that much longer than the mouth (rule of thumb).
 */
import type { Brief } from './brief.ts';
import { cordThicknessMm, type EyeletChoice } from './eyelets.ts';
import type { Gauge } from './gauge.ts';

export interface CordPlan {
  readonly stitches: number;
  readonly yarn: string;
  /** Once round the mouth with what the holes take up, and two ties. */
  readonly lengthCm: number;
  /** What winding in and out of the holes adds to the mouth. */
  readonly takeUpCm: number;
  readonly rounds: number;
  readonly passes: number;
  /** Yarn in the cord itself, without its two tails. */
  readonly metres: number;
}

/** At least `knitted` rounds: those that there are already. */
export function planCord(
  { cord }: Brief,
  gauge: Gauge,
  mouthCm: number,
  eyelets: EyeletChoice,
  knitted = 0,
): CordPlan {
  const takeUpCm = takenUpCm(eyelets, cordThicknessMm(cord.stitches, gauge) / 10);
  const lengthCm = mouthCm + takeUpCm + 2 * cord.tieCm;
  const roundCm = cord.roundsPer10Cm === null ? gauge.rowMm / 10 : 10 / cord.roundsPer10Cm;
  const rounds = Math.max(knitted, Math.ceil(lengthCm / roundCm - 1e-9));
  const roundMm = cord.stitches * gauge.loopLengthMm + (cord.stitches - 1) * gauge.stitchMm;
  return {
    stitches: cord.stitches,
    yarn: cord.yarn,
    lengthCm,
    takeUpCm,
    rounds,
    passes: 2 * rounds,
    metres: (rounds * roundMm) / 1000,
  };
}

const takenUpCm = ({ gapsCm }: EyeletChoice, thicknessCm: number): number =>
  gapsCm.reduce((sum, gapCm) => sum + Math.hypot(gapCm, thicknessCm) - gapCm, 0);
