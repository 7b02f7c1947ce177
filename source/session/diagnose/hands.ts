/** Shaping as the hands do it: from the outermost loops, wherever they are. Null where there is no room for it. */
import { type Bed, edgesOf, type Side } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { formatNeedle } from '../../bed/needles.ts';

/** The needle beyond the edge comes into work, and the outermost loops go one needle further out. */
export function setOut(bed: Bed, side: Side, edgeStitches: number): readonly BedMove[] | null {
  const needles = outermost(bed, side, edgeStitches, 1);
  const beyond = needles?.to[0];
  if (!needles || beyond === undefined) return null;
  return [
    { move: 'work', needles: [beyond] },
    { move: 'transfer', ...needles },
  ];
}

/** The outermost loops one needle further in, and the needle they leave out of work. */
export function setIn(bed: Bed, side: Side, edgeStitches: number): readonly BedMove[] | null {
  const needles = outermost(bed, side, edgeStitches, -1);
  const emptied = needles?.from[0];
  if (!needles || emptied === undefined) return null;
  return [
    { move: 'transfer', ...needles },
    { move: 'rest', needles: [emptied] },
  ];
}

function outermost(
  bed: Bed,
  side: Side,
  count: number,
  outwards: number,
): { readonly from: readonly string[]; readonly to: readonly string[] } | null {
  const edge = edgesOf(bed)[side];
  if (edge === null) return null;
  const inward = side === 'left' ? 1 : -1;
  const from = Array.from({ length: count }, (_, i) => edge + i * inward);
  const to = from.map((place) => place - outwards * inward);
  const needleCount = bed.needles.length;
  if ([...from, ...to].some((place) => place < 0 || place >= needleCount)) return null;
  const lifted = from.filter((place) => (bed.needles[place]?.loopCount ?? 0) > 0);
  if (lifted.length < from.length) return null;
  const names = (places: readonly number[]): readonly string[] =>
    places.map((place) => formatNeedle(needleCount, place));
  return { from: names(from), to: names(to) };
}
