/**
 * Moves taken back with the hands. Pulling out a row loop for loop needs what lies below it, and the bed knows only the
 * newest loops: so a reverse move names what it restores. A row taken out catches a loop of the row below on each needle,
 * two where a needle was doubled and none where an eyelet was about to be made. The row counter is turned back with each
 * pass (common practice, no source).
 */
import { exhaustive, fail, type Result, succeed } from '../shared/result.ts';
import { emptyBetweenEdges, needlesNamed } from './apply-move.ts';
import { type Bed, type BedFault, edgesOf, type Needle, needleOutOfWork, type Side, turned } from './bed.ts';
import type { LoopRun, ReverseMove } from './move.ts';
import { formatNeedle } from './needles.ts';

export type ReverseFault =
  | BedFault
  | {
      readonly code: 'reverse/other-yarn';
      readonly needle: string;
      readonly yarn: string;
      readonly held: string | null;
    }
  | { readonly code: 'reverse/too-few-loops'; readonly needle: string; readonly loops: number };

type Outcome = Result<Bed, ReverseFault>;

/** The bed with one move taken back, or the fault that stops it; the bed given is never changed. */
export function applyReverse(bed: Bed, move: ReverseMove): Outcome {
  switch (move.undo) {
    case 'work':
      return restAgain(bed, move.needles);
    case 'rest':
      return change(bed, move.needles, (needle) => ({ ...needle, working: true }));
    case 'stand':
      return succeed({ ...bed, carriage: move.back });
    case 'slip':
      return succeed({ ...bed, carriage: move.back, counter: turned(bed, -1) });
    case 'counter':
      return succeed({ ...bed, counter: move.rows });
    case 'cast-on':
      return succeed({ ...bed, needles: bed.needles.map(emptied) });
    case 'feed':
      return unfeed(bed, move.yarn, move.parkedAt);
    case 'park':
      return feedAgain(bed, move.yarn);
    case 'cut':
      return joinAgain(bed, move.yarn, move.joinedAt);
    case 'knit':
      return pullOut(bed, move);
    case 'transfer':
      return setBack(bed, move);
    case 'take-off':
      return hangAgain(bed, move);
    case 'rehang':
      return takeOffAgain(bed, move.left, move.right);
    case 'pick-up':
      return dropPickedUp(bed, move.left, move.right);
    case 'bind-off':
      return unchain(bed, move.hangs);
    case 'stray':
      return change(bed, [move.needle], () => needleOutOfWork);
    case 'hand':
      return succeed(bed);
    default:
      return exhaustive(move);
  }
}

const emptied = (needle: Needle): Needle => ({ working: needle.working, loopCount: 0, yarn: null });

function change(bed: Bed, names: readonly string[], to: (needle: Needle, place: number) => Needle): Outcome {
  const places = needlesNamed(bed, names);
  if (!places.ok) return places;
  const needles = [...bed.needles];
  for (const place of places.value) needles[place] = to(needles[place] as Needle, place);
  return succeed({ ...bed, needles });
}

function restAgain(bed: Bed, names: readonly string[]): Outcome {
  const places = needlesNamed(bed, names);
  if (!places.ok) return places;
  const held = places.value.findIndex((place) => (bed.needles[place]?.loopCount ?? 0) > 0);
  if (held >= 0) return fail({ code: 'bed/needle-holds-loop', needle: names[held] ?? '' });
  return change(bed, names, () => needleOutOfWork);
}

function unfeed(bed: Bed, yarn: string, parkedAt: Side | null): Outcome {
  if (bed.feeder !== yarn) return fail({ code: 'bed/yarn-not-in-feeder', yarn, held: bed.feeder });
  const parked = parkedAt === null ? bed.parked : new Map(bed.parked).set(yarn, parkedAt);
  return succeed({ ...bed, feeder: null, parked });
}

function feedAgain(bed: Bed, yarn: string): Outcome {
  if (bed.feeder !== null) return fail({ code: 'bed/feeder-full', yarn, held: bed.feeder });
  if (!bed.parked.has(yarn)) return fail({ code: 'bed/yarn-not-here', yarn });
  const parked = new Map(bed.parked);
  parked.delete(yarn);
  return succeed({ ...bed, feeder: yarn, parked });
}

function joinAgain(bed: Bed, yarn: string, joinedAt: Side | 'feeder'): Outcome {
  if (joinedAt !== 'feeder') return succeed({ ...bed, parked: new Map(bed.parked).set(yarn, joinedAt) });
  if (bed.feeder !== null) return fail({ code: 'bed/feeder-full', yarn, held: bed.feeder });
  return succeed({ ...bed, feeder: yarn });
}

function pullOut(bed: Bed, move: Extract<ReverseMove, { readonly undo: 'knit' }>): Outcome {
  const { yarn, back, catches } = move;
  if (bed.carriage === back) return fail({ code: 'bed/carriage-already-there', side: back });
  if (bed.feeder !== yarn) return fail({ code: 'bed/yarn-not-in-feeder', yarn, held: bed.feeder });
  const other = bed.needles.findIndex((needle) => needle.loopCount > 0 && needle.yarn !== yarn);
  if (other >= 0) {
    const needle = formatNeedle(bed.needles.length, other);
    return fail({ code: 'reverse/other-yarn', needle, yarn, held: bed.needles[other]?.yarn ?? null });
  }
  const caught = hang({ ...bed, needles: bed.needles.map(emptied) }, catches);
  if (!caught.ok) return caught;
  return succeed({
    ...caught.value,
    carriage: back,
    counter: turned(bed, -1),
    eyeletCount: bed.eyeletCount - emptyBetweenEdges(caught.value),
  });
}

function hang(bed: Bed, runs: readonly LoopRun[]): Outcome {
  const needles = [...bed.needles];
  for (const { first, last, loops, yarn } of runs) {
    const ends = needlesNamed(bed, [first, last]);
    if (!ends.ok) return ends;
    const [from = 0, to = -1] = ends.value;
    for (let place = from; place <= to; place++) needles[place] = { working: true, loopCount: loops, yarn };
  }
  return succeed({ ...bed, needles });
}

function setBack(bed: Bed, move: Extract<ReverseMove, { readonly undo: 'transfer' }>): Outcome {
  const { from, to, lifts, rests } = move;
  const sources = needlesNamed(bed, from);
  if (!sources.ok) return sources;
  const targets = needlesNamed(bed, to);
  if (!targets.ok) return targets;
  const needles = [...bed.needles];
  const lifted: Needle[] = [];
  for (const [i, place] of sources.value.entries()) {
    const loops = lifts[i] ?? 0;
    const needle = needles[place] as Needle;
    if (needle.loopCount < loops)
      return fail({ code: 'reverse/too-few-loops', needle: from[i] ?? '', loops });
    lifted.push({ ...needle, loopCount: loops });
    const left = needle.loopCount - loops;
    needles[place] = left === 0 ? emptied(needle) : { ...needle, loopCount: left };
  }
  for (const [i, place] of targets.value.entries()) {
    const loops = lifted[i] as Needle;
    const held = needles[place]?.loopCount ?? 0;
    needles[place] = { working: true, loopCount: held + loops.loopCount, yarn: loops.yarn };
  }
  return restAgain({ ...bed, needles }, rests);
}

function hangAgain(bed: Bed, move: Extract<ReverseMove, { readonly undo: 'take-off' }>): Outcome {
  const { hangs, offBefore, back } = move;
  const { stitchCount } = edgesOf(bed);
  if (stitchCount > 0) return fail({ code: 'bed/bed-not-empty', stitchCount });
  const hung = hang(bed, hangs);
  if (!hung.ok) return hung;
  const loops = hung.value.needles.reduce((sum, needle) => sum + needle.loopCount, 0);
  if (loops !== bed.loopsOff)
    return fail({ code: 'bed/loops-differ', loopsOff: bed.loopsOff, needleCount: loops });
  const dropped = back === undefined ? {} : { carriage: back, counter: turned(bed, -1) };
  return succeed({ ...hung.value, ...dropped, loopsOff: offBefore });
}

function takeOffAgain(bed: Bed, left: string, right: string): Outcome {
  const ends = needlesNamed(bed, [left, right]);
  if (!ends.ok) return ends;
  const [first = 0, last = -1] = ends.value;
  const inside = (place: number): boolean => place >= first && place <= last;
  const loopsOff = bed.needles.reduce((sum, needle, i) => sum + (inside(i) ? needle.loopCount : 0), 0);
  if (loopsOff === 0) return fail({ code: 'bed/nothing-to-take-off' });
  const needles = bed.needles.map((needle, i) => (inside(i) ? emptied(needle) : needle));
  return succeed({ ...bed, needles, loopsOff });
}

function dropPickedUp(bed: Bed, left: string, right: string): Outcome {
  const ends = needlesNamed(bed, [left, right]);
  if (!ends.ok) return ends;
  const [first = 0, last = -1] = ends.value;
  const needles = [...bed.needles];
  for (let place = first; place <= last; place++) {
    const needle = needles[place] as Needle;
    if (needle.loopCount === 0)
      return fail({ code: 'reverse/too-few-loops', needle: formatNeedle(needles.length, place), loops: 1 });
    needles[place] =
      needle.loopCount === 1 ? emptied(needle) : { ...needle, loopCount: needle.loopCount - 1 };
  }
  return succeed({ ...bed, needles });
}

function unchain(bed: Bed, hangs: readonly LoopRun[]): Outcome {
  const { stitchCount } = edgesOf(bed);
  return stitchCount > 0 ? fail({ code: 'bed/bed-not-empty', stitchCount }) : hang(bed, hangs);
}
