/**
 * Which eyelets the cord goes through. Both its ends come out on the outside only after an even number of holes,
 * counted from the gap at the graft. With an odd count the one opposite the graft is passed by, which sets the two
 * wide gaps as far apart as they can be (common practice, no source).
 */
import type { Gauge } from './gauge.ts';

export interface EyeletChoice {
  readonly made: number;
  readonly used: readonly number[];
  readonly skipped: readonly number[];
  /** The widest gap between neighbouring holes in use, in shaping intervals; the graft counts as two. */
  readonly widestGapIntervals: number;
  /** From one eyelet to the next along the edge, in cm. */
  readonly spacingCm: number;
  /** Across the graft, where an interval has no eyelet and no move. */
  readonly graftGapCm: number;
  /** The widest of the gaps between holes in use; 0 where none is used. */
  readonly widestGapCm: number;
}

type StitchSize = Pick<Gauge, 'stitchMm' | 'rowMm'>;

/** The eyelets of `made` shaping moves, one after every `shapeEveryRows` rows. */
export function chooseEyelets(
  made: number,
  { stitchMm, rowMm }: StitchSize,
  shapeEveryRows: number,
): EyeletChoice {
  const all = Array.from({ length: made }, (_, i) => i + 1);
  const skipped = made % 2 === 0 ? [] : [(made + 1) / 2];
  const used = all.filter((eyelet) => !skipped.includes(eyelet));
  const spacingCm = Math.hypot(stitchMm, shapeEveryRows * rowMm) / 10;
  const graftGapCm = Math.hypot(stitchMm, 2 * shapeEveryRows * rowMm) / 10;
  const widestUsedCm = skipped.length > 0 ? 2 * spacingCm : graftGapCm;
  return {
    made,
    used,
    skipped,
    widestGapIntervals: widestGap(used, made),
    spacingCm,
    graftGapCm,
    widestGapCm: used.length > 0 ? widestUsedCm : 0,
  };
}

/** Round the mouth there are `made + 1` intervals: place 0 is the graft, which has no eyelet. */
function widestGap(used: readonly number[], made: number): number {
  const gaps = used.map((eyelet, i) => (used[i + 1] ?? (used[0] ?? 0) + made + 1) - eyelet);
  return Math.max(0, ...gaps);
}
