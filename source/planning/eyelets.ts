/**
 * Which eyelets the cord goes through. Both its ends come out on the outside only after an even number of holes,
 * counted from the gap at the graft. With an odd count the one opposite the graft is passed by, which sets the two
 * wide gaps as far apart as they can be (common practice, no source).
 */
export interface EyeletChoice {
  readonly made: number;
  readonly used: readonly number[];
  readonly skipped: readonly number[];
  /** The widest gap between neighbouring holes in use, in shaping intervals; the graft counts as two. */
  readonly widestGapIntervals: number;
  /** From eyelet to eyelet along the mouth, and across the widest gap, in cm. */
  readonly spacingCm: number;
  readonly widestGapCm: number;
}

/** The eyelets of a mouth that is `mouthCm` round. */
export function chooseEyelets(made: number, mouthCm: number): EyeletChoice {
  const all = Array.from({ length: made }, (_, i) => i + 1);
  const skipped = made % 2 === 0 ? [] : [(made + 1) / 2];
  const used = all.filter((eyelet) => !skipped.includes(eyelet));
  const widestGapIntervals = widestGap(used, made);
  const spacingCm = mouthCm / (made + 1);
  return { made, used, skipped, widestGapIntervals, spacingCm, widestGapCm: widestGapIntervals * spacingCm };
}

/** Round the mouth there are `made + 1` intervals: place 0 is the graft, which has no eyelet. */
function widestGap(used: readonly number[], made: number): number {
  const gaps = used.map((eyelet, i) => (used[i + 1] ?? (used[0] ?? 0) + made + 1) - eyelet);
  return Math.max(0, ...gaps);
}
