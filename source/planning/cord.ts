/**
 * The tubular cord: two passes a round, each round one row high. A round takes its stitches and the strand that
 * crosses the back, (c − 1) stitch widths (common practice; loop length as for the bag).
 */
import type { Brief } from './brief.ts';
import type { Gauge } from './gauge.ts';

export interface CordPlan {
  readonly stitches: number;
  readonly yarn: string;
  readonly lengthCm: number;
  readonly rounds: number;
  readonly passes: number;
  /** Yarn in the cord itself, without its two tails. */
  readonly metres: number;
}

export function planCord({ cord }: Brief, gauge: Gauge, mouthCm: number): CordPlan {
  const lengthCm = mouthCm + 2 * cord.tieCm;
  const roundCm = cord.roundsPer10Cm === null ? gauge.rowMm / 10 : 10 / cord.roundsPer10Cm;
  const rounds = Math.ceil(lengthCm / roundCm - 1e-9);
  const roundMm = cord.stitches * gauge.loopLengthMm + (cord.stitches - 1) * gauge.stitchMm;
  return {
    stitches: cord.stitches,
    yarn: cord.yarn,
    lengthCm,
    rounds,
    passes: 2 * rounds,
    metres: (rounds * roundMm) / 1000,
  };
}
