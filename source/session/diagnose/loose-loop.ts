/** A loop that a pass has begun on an empty needle beyond the edges: it hangs on nothing, and so does the column above it. */
import { type Bed, edgesOf, type Side } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { parseNeedle } from '../../bed/needles.ts';

export interface LooseLoop {
  readonly place: number;
  readonly side: Side;
  /** It was lifted to another needle with its neighbours: as an eye follows it down, it may be taken for loose or for firm. */
  readonly moved: boolean;
}

/** What the next pass begins beyond the edges; null where no needle is in work there. */
export function looseAt(bed: Bed): LooseLoop | null {
  const { left, right } = edgesOf(bed);
  const place = bed.needles.findIndex(
    ({ working, loopCount }, i) => working && loopCount === 0 && (i < (left ?? 0) || i > (right ?? 0)),
  );
  return place < 0 ? null : { place, side: place < (left ?? 0) ? 'left' : 'right', moved: false };
}

/** The same after a move from one bed to another; null once another loop holds it. */
export function looseAfter(
  loose: LooseLoop | null,
  move: BedMove,
  before: Bed,
  after: Bed,
): LooseLoop | null {
  if (!loose) return null;
  if (move.move === 'take-off') return edgesOf(before)[loose.side] === loose.place ? loose : null;
  const place = placeAfter(loose, move, after);
  const isHeld = place === null || (after.needles[place]?.loopCount ?? 0) > 1;
  return isHeld ? null : { ...loose, place, moved: loose.moved || place !== loose.place };
}

/** Loops that are off keep their order. */
function placeAfter({ place, side }: LooseLoop, move: BedMove, after: Bed): number | null {
  if (move.move === 'rehang') return edgesOf(after)[side];
  if (move.move !== 'transfer') return place;
  const lifted = move.from.map((name) => parseNeedle(after.needles.length, name)).indexOf(place);
  return lifted < 0 ? place : parseNeedle(after.needles.length, move.to[lifted] ?? '');
}
