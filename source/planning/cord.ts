/**
 * The tubular cord: two passes a round, each round one row high. A round takes its stitches and the strand that
 * crosses the back, (c − 1) stitch widths (common practice; loop length as for the bag). It winds in and out of the holes,
 * so its way from hole to hole is √(gap² + thickness²), and that much longer than the mouth (rule of thumb). A bed that
 * cannot slip knits it flat, a row for a round; its long edges are sewn with a thread twice as long (common practice).
 */
import { hair } from '../shared/numbers.ts';
import type { Brief } from './brief.ts';
import { cordThicknessMm, type EyeletChoice } from './eyelets.ts';
import type { Gauge } from './gauge.ts';
import { endTailCm } from './tails.ts';

/**
 * Published limits for cords on toys for the very young, in cm: 220 mm for a free cord that can form a noose and 380 mm round
 * a noose, stretched by 25 N (EN 71-1:2005+A8:2009, 5.4 b and c; later editions changed the clause). What compares is the
 * cord's free end and the loop that it makes drawn or tied, not the mouth. This bag is no toy, and local rules decide.
 */
export const toyCordLimits = { freeCordCm: 22, loopCm: 38 };

/** Of each cord, where there are two. */
export interface CordPlan {
  readonly draws: 1 | 2;
  readonly stitches: number;
  readonly yarn: string;
  /** Once round the mouth with what the holes take up, and two ties. */
  readonly lengthCm: number;
  /** What winding in and out of the holes adds to the mouth. */
  readonly takeUpCm: number;
  readonly rounds: number;
  readonly passes: number;
  /** Thread to sew the edges of a flat cord with, and to hold on to; null for a tube. */
  readonly flatSeamCm: number | null;
  /** Yarn in the cord itself, without its two tails. */
  readonly metres: number;
}

/** At least `knitted` rounds: those that there are already. */
export function planCord(
  { cord, bed }: Brief,
  gauge: Gauge,
  mouthCm: number,
  eyelets: EyeletChoice,
  knitted = 0,
): CordPlan {
  const takeUpCm = takenUpCm(eyelets, cordThicknessMm(cord.stitches, gauge) / 10);
  const lengthCm = mouthCm + takeUpCm + 2 * cord.tieCm;
  const roundCm = cord.roundsPer10Cm === null ? gauge.rowMm / 10 : 10 / cord.roundsPer10Cm;
  const isFlat = bed.without.includes('slip');
  const needed = Math.max(knitted, Math.ceil(lengthCm / roundCm - hair));
  // To and fro: the carriage ends where it began.
  const rounds = isFlat ? needed + (needed % 2) : needed;
  const acrossMm = isFlat ? 0 : (cord.stitches - 1) * gauge.stitchMm;
  const flatSeamCm = isFlat ? 2 * lengthCm + endTailCm : null;
  const knittedMm = rounds * (cord.stitches * gauge.loopLengthMm + acrossMm);
  return {
    draws: cord.draws,
    stitches: cord.stitches,
    yarn: cord.yarn,
    lengthCm,
    takeUpCm,
    rounds,
    passes: isFlat ? rounds : 2 * rounds,
    flatSeamCm,
    metres: knittedMm / 1000 + (flatSeamCm ?? 0) / 100,
  };
}

/** By the cord that winds more: the first passes by the gap at the graft, the second the one where its ends hang. */
function takenUpCm({ gapsCm, acrossCm, used, secondFrom }: EyeletChoice, thicknessCm: number): number {
  const takes = (gapCm: number): number => Math.hypot(gapCm, thicknessCm) - gapCm;
  const first = gapsCm.reduce((sum, gapCm) => sum + takes(gapCm), 0);
  const passedBy = secondFrom === null ? undefined : gapsCm[used.indexOf(secondFrom) - 1];
  return passedBy === undefined ? first : Math.max(first, first - takes(passedBy) + takes(acrossCm));
}

/** Yarn of all cords, with the two ends of each, in cm. */
export const cordYarnCm = ({ draws, metres }: CordPlan): number => draws * (metres * 100 + 2 * endTailCm);
