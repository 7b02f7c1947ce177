/**
 * What the hands do so that a bed is as the plan has it: carriage, yarns, then the edges. To cross without knitting the yarn
 * leaves the feeder first, since every stitch would drop or knit (common practice).
 */

import { type Bed, edgesOf, opposite, type Side } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { formatNeedle, formatNeedles } from '../../bed/needles.ts';
import type { Brief } from '../../planning/brief.ts';
import { applyMends } from '../mend/mend.ts';

/** Shaping as the hands do it: from the outermost loops, wherever they are. Null where there is no room for it. */

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

type Moves = readonly BedMove[];

/** Carriage, feeder and parked yarns as in `planned`. */
export function settleYarns(bed: Bed, planned: Bed): Moves {
  const moves: BedMove[] = [];
  const crosses = bed.carriage !== planned.carriage;
  const { feeder } = bed;
  const stays = feeder === planned.feeder && !crosses;
  const parked = new Map(bed.parked);
  if (feeder !== null && !stays) {
    const end = planned.parked.get(feeder) ?? (feeder === planned.feeder ? bed.carriage : undefined);
    moves.push(end === undefined ? { move: 'cut', yarn: feeder } : { move: 'park', yarn: feeder, end });
    if (end !== undefined) parked.set(feeder, end);
  }
  for (const [yarn, end] of stays ? [] : parked) {
    const due = planned.parked.get(yarn);
    if (due === end || yarn === planned.feeder) continue;
    if (due === undefined) moves.push({ move: 'cut', yarn });
    else moves.push({ move: 'feed', yarn }, { move: 'park', yarn, end: due });
  }
  if (crosses) moves.push({ move: 'slip', to: planned.carriage });
  if (planned.feeder !== null && !stays) moves.push({ move: 'feed', yarn: planned.feeder });
  return moves;
}

/** Things done with the tool, one after the other; null where there is no room, or they do not lead to `planned`. */
export function settleEdges(bed: Bed, planned: Bed, brief: Brief): readonly Moves[] | null {
  const leading = brief.crawl;
  const trailing = opposite(leading);
  const parts: Moves[] = [];
  let now = bed;
  const make = (moves: Moves | null): boolean => {
    const next = moves && applyMends(now, moves);
    if (!moves || !next?.ok) return false;
    parts.push(moves);
    now = next.value;
    return true;
  };
  for (const side of [leading, trailing] as const) {
    const outwards = side === 'left' ? -1 : 1;
    for (let tries = 0; ; tries++) {
      const short = ((edgesOf(planned)[side] ?? 0) - (edgesOf(now)[side] ?? 0)) * outwards;
      if (short === 0) break;
      if (tries === 4) return null;
      const shape = short > 0 ? setOut : setIn;
      if (!make(shape(now, side, brief.edgeStitches))) return null;
    }
  }
  const idle = outOfWorkInside(now, planned);
  if (idle.length > 0 && !make([{ move: 'work', needles: idle }])) return null;
  return parts;
}

/** Needles between the edges that are out of work and should not be. */
function outOfWorkInside(bed: Bed, planned: Bed): readonly string[] {
  const { left, right } = edgesOf(bed);
  return bed.needles.flatMap(({ working }, place) =>
    working ||
    left === null ||
    right === null ||
    place < left ||
    place > right ||
    !planned.needles[place]?.working
      ? []
      : [formatNeedle(bed.needles.length, place)],
  );
}

/** Where all loops hang so many needles aside, one on each needle: off and on again; null where they do not. */
export function hangAgain(bed: Bed, planned: Bed): Moves | null {
  const [now, due] = [edgesOf(bed), edgesOf(planned)];
  if (now.left === null || now.right === null || due.left === null || due.right === null) return null;
  const by = due.left - now.left;
  const single = bed.needles.every(({ loopCount }) => loopCount < 2);
  if (by === 0 || due.right - now.right !== by || !single || now.stitchCount !== now.right - now.left + 1)
    return null;
  const [left, right] = [due.left, due.right].map((place) => formatNeedle(bed.needles.length, place));
  const names = formatNeedles(bed.needles.length, due.left, due.right);
  return [
    { move: 'take-off' },
    { move: 'work', needles: names },
    { move: 'rehang', left: left ?? '', right: right ?? '' },
  ];
}

export const sameBed = (one: Bed, other: Bed): boolean =>
  one.carriage === other.carriage &&
  one.feeder === other.feeder &&
  one.loopsOff === other.loopsOff &&
  one.parked.size === other.parked.size &&
  [...one.parked].every(([yarn, end]) => other.parked.get(yarn) === end) &&
  sameNeedles(one, other);

const sameNeedles = (one: Bed, other: Bed): boolean =>
  one.needles.every((needle, place) => {
    const due = other.needles[place];
    return needle.working === due?.working && needle.loopCount === due.loopCount && needle.yarn === due.yarn;
  });
