/**
 * Which eyelets the cord goes through. Both its ends come out on the outside only after an even number of holes,
 * counted from the gap at the graft. With an odd count the one opposite the graft is passed by, which sets the two
 * wide gaps as far apart as they can be. A thick cord goes through every second hole, where that leaves 8 at least
 * (common practice, no source).
 *
 * A second cord that pulls from the other side goes through the same holes, in where the first comes out. So it begins at a hole
 * of an even place, that nearest to half-way round; its ends hang in the gap before it, outside, where the first cord is inside.
 */
import type { LeaningStitch } from './gauge.ts';
import { alongEdgeMm } from './geometry.ts';

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
  /** From the last hole in use over the graft to the first, in cm; 0 where none is used. */
  readonly acrossCm: number;
  /** From hole to hole in use, from the first to the last, in cm. */
  readonly gapsCm: readonly number[];
  /** The eyelet through which a second cord goes in first; null where there is none. */
  readonly secondFrom: number | null;
}

/** Fewer holes than these do not gather a mouth evenly (common practice). */
const leastWhenThick = 8;
/** A cord is thick where winding in and out of every hole makes its way longer by more than this (rule of thumb). */
const longestWay = 1.1;

/** A tubular cord of 3 stitches is some 1.2 stitches thick, others in proportion (rule of thumb). */
export const cordThicknessMm = (cordStitches: number, { stitchMm }: LeaningStitch): number =>
  1.2 * stitchMm * (cordStitches / 3);

/** The eyelets of `made` shaping moves, one after every `shapeEveryRows` rows. */
export function chooseEyelets(
  made: number,
  gauge: LeaningStitch,
  shapeEveryRows: number,
  cordMm: number,
  draws: 1 | 2,
): EyeletChoice {
  const spacingCm = alongEdgeMm(1, shapeEveryRows, gauge) / 10;
  const graftGapCm = alongEdgeMm(1, 2 * shapeEveryRows, gauge) / 10;
  const isThick = Math.hypot(spacingCm, cordMm / 10) > longestWay * spacingCm;
  const used = (isThick ? everySecond(made) : null) ?? nearlyAll(made);
  const inUse = new Set(used);
  const skipped = Array.from({ length: made }, (_, i) => i + 1).filter((eyelet) => !inUse.has(eyelet));
  const gapsCm = used.slice(1).map((eyelet, i) => (eyelet - (used[i] ?? 0)) * spacingCm);
  const across = (used[0] ?? 1) + made - (used.at(-1) ?? made);
  const acrossCm = used.length > 0 ? alongEdgeMm(across, (across + 1) * shapeEveryRows, gauge) / 10 : 0;
  return {
    made,
    used,
    skipped,
    widestGapIntervals: widestGap(used, made),
    spacingCm,
    graftGapCm,
    widestGapCm: Math.max(acrossCm, ...gapsCm),
    acrossCm,
    gapsCm,
    secondFrom: draws === 2 ? halfWay(used, made) : null,
  };
}

/** Of the holes at even places, the one whose gap before it is nearest to half-way round. */
function halfWay(used: readonly number[], made: number): number | null {
  const offMiddle = (place: number): number =>
    Math.abs(((used[place - 1] ?? 0) + (used[place] ?? 0)) / 2 - (made + 1) / 2);
  const places = used.map((_, place) => place).filter((place) => place % 2 === 1);
  const nearest = places.toSorted((a, b) => offMiddle(a) - offMiddle(b))[0];
  return nearest === undefined ? null : (used[nearest] ?? null);
}

/** Which of the cords; `only` where there is one. */
export type Draw = 'only' | 'first' | 'second';

/** The holes in use in the order in which a cord goes through them, in and out in turn. */
export function threadingOrder({ used, secondFrom }: EyeletChoice, draw: Draw): readonly number[] {
  if (draw !== 'second') return used;
  const from = used.indexOf(secondFrom ?? 0);
  return [...used.slice(from), ...used.slice(0, from)];
}

function nearlyAll(made: number): readonly number[] {
  const all = Array.from({ length: made }, (_, i) => i + 1);
  return made % 2 === 0 ? all : all.filter((eyelet) => eyelet !== (made + 1) / 2);
}

/** An even number of holes two intervals apart or a little more, spread evenly; null where they would be too few. */
function everySecond(made: number): readonly number[] | null {
  const count = 2 * Math.floor((made + 1) / 4);
  if (count < leastWhenThick) return null;
  return Array.from({ length: count }, (_, i) => Math.floor(((i + 0.5) * (made + 1)) / count));
}

/** Round the mouth there are `made + 1` intervals: place 0 is the graft, which has no eyelet. */
function widestGap(used: readonly number[], made: number): number {
  const gaps = used.map((eyelet, i) => (used[i + 1] ?? (used[0] ?? 0) + made + 1) - eyelet);
  return Math.max(0, ...gaps);
}
