/**
 * What each move does to the bed, and when it cannot be done. The rules are the machine's own (common practice,
 * no source): a pass with an empty feeder drops every stitch, a needle out of work must be empty before a pass, an
 * empty working needle takes a loop at the next pass.
 */
import { exhaustive, fail, type Result, succeed } from '../shared/result.ts';
import { type Bed, type BedFault, edgesOf, type Needle, needleOutOfWork, type Side, turned } from './bed.ts';
import type { BedMove } from './move.ts';
import { formatNeedle, parseNeedle } from './needles.ts';

type Outcome = Result<Bed, BedFault>;

/** The bed after `move`, or the fault that stops it; the bed given is never changed. */
export function applyMove(bed: Bed, move: BedMove): Outcome {
  switch (move.move) {
    case 'work':
      return setNeedles(bed, move.needles, (needle) => ({ ...needle, working: true }));
    case 'rest':
      return restNeedles(bed, move.needles);
    case 'stand':
      return stand(bed, move.side);
    case 'counter':
      return bed.counter === null
        ? fail({ code: 'bed/no-counter' })
        : succeed({ ...bed, counter: move.rows });
    case 'cast-on':
      return castOn(bed, move);
    case 'feed':
      return feed(bed, move.yarn);
    case 'park':
      return park(bed, move.yarn, move.end);
    case 'cut':
      return cut(bed, move.yarn);
    case 'knit':
      return knit(bed, move.to);
    case 'slip':
      return bed.carriage === move.to
        ? alreadyThere(move.to)
        : succeed({ ...bed, carriage: move.to, counter: turned(bed, 1) });
    case 'transfer':
      return transfer(bed, move.from, move.to);
    case 'take-off':
      return takeOff(bed, move.to ?? null);
    case 'rehang':
      return rehang(bed, move.left, move.right);
    case 'pick-up':
      return pickUp(bed, move);
    case 'bind-off':
      return bindOff(bed);
    default:
      return exhaustive(move);
  }
}

const alreadyThere = (side: Side): Outcome => fail({ code: 'bed/carriage-already-there', side });

/** Places of needles by name, or the first name that the bed does not have. */
export function needlesNamed(bed: Bed, names: readonly string[]): Result<readonly number[], BedFault> {
  const needleCount = bed.needles.length;
  const places: number[] = [];
  for (const name of names) {
    const place = parseNeedle(needleCount, name);
    if (place === null) return fail({ code: 'bed/needle-off-bed', needle: name, needleCount });
    places.push(place);
  }
  return succeed(places);
}

function setNeedles(bed: Bed, names: readonly string[], change: (needle: Needle) => Needle): Outcome {
  const places = needlesNamed(bed, names);
  if (!places.ok) return places;
  const chosen = new Set(places.value);
  return succeed({
    ...bed,
    needles: bed.needles.map((needle, i) => (chosen.has(i) ? change(needle) : needle)),
  });
}

function restNeedles(bed: Bed, names: readonly string[]): Outcome {
  const places = needlesNamed(bed, names);
  if (!places.ok) return places;
  const held = places.value.findIndex((place) => (bed.needles[place]?.loopCount ?? 0) > 0);
  if (held >= 0) return fail({ code: 'bed/needle-holds-loop', needle: names[held] ?? '' });
  return setNeedles(bed, names, () => needleOutOfWork);
}

/** Pushed across by hand, which is nothing for the counter; over loops it would knit them, or drop them. */
function stand(bed: Bed, side: Side): Outcome {
  const { stitchCount } = edgesOf(bed);
  if (stitchCount > 0) return fail({ code: 'bed/bed-not-empty', stitchCount });
  return succeed({ ...bed, carriage: side });
}

function castOn(bed: Bed, { yarn, from, to }: Extract<BedMove, { move: 'cast-on' }>): Outcome {
  const { stitchCount } = edgesOf(bed);
  if (stitchCount > 0) return fail({ code: 'bed/bed-not-empty', stitchCount });
  if (!bed.needles.some((needle) => needle.working)) return fail({ code: 'bed/no-working-needles' });
  const ends = needlesNamed(bed, [from, to]);
  if (!ends.ok) return ends;
  const [far = 0, beside = 0] = ends.value;
  // The yarn must end where the feeder is.
  const endsOn = far < beside ? 'right' : 'left';
  if (far !== beside && bed.carriage !== endsOn)
    return fail({ code: 'bed/cast-on-ends-far', side: bed.carriage, needle: to });
  return succeed({ ...bed, needles: bed.needles.map((needle) => knitted(needle, yarn)) });
}

function feed(bed: Bed, yarn: string): Outcome {
  if (bed.feeder !== null) return fail({ code: 'bed/feeder-full', yarn, held: bed.feeder });
  const parked = new Map(bed.parked);
  parked.delete(yarn);
  return succeed({ ...bed, feeder: yarn, parked });
}

function park(bed: Bed, yarn: string, end: Side): Outcome {
  if (bed.feeder !== yarn) return fail({ code: 'bed/yarn-not-in-feeder', yarn, held: bed.feeder });
  return succeed({ ...bed, feeder: null, parked: new Map(bed.parked).set(yarn, end) });
}

function cut(bed: Bed, yarn: string): Outcome {
  if (bed.feeder === yarn) return succeed({ ...bed, feeder: null });
  if (!bed.parked.has(yarn)) return fail({ code: 'bed/yarn-not-here', yarn });
  const parked = new Map(bed.parked);
  parked.delete(yarn);
  return succeed({ ...bed, parked });
}

const knitted = (needle: Needle, yarn: string): Needle =>
  needle.working ? { working: true, loopCount: 1, yarn } : needle;

function knit(bed: Bed, to: Side): Outcome {
  if (bed.carriage === to) return alreadyThere(to);
  const yarn = bed.feeder;
  if (yarn === null) return fail({ code: 'bed/feeder-empty', to });
  const stray = bed.needles.findIndex((needle) => !needle.working && needle.loopCount > 0);
  if (stray >= 0) {
    return fail({ code: 'bed/loop-out-of-work', needle: formatNeedle(bed.needles.length, stray) });
  }
  if (!bed.needles.some((needle) => needle.working)) return fail({ code: 'bed/no-working-needles' });
  const eyeletCount = bed.eyeletCount + emptyBetweenEdges(bed);
  return succeed({
    ...bed,
    carriage: to,
    counter: turned(bed, 1),
    eyeletCount,
    needles: bed.needles.map((needle) => knitted(needle, yarn)),
  });
}

/** Working needles without a loop between the edges: the next pass makes each an eyelet. */
export function emptyBetweenEdges(bed: Bed): number {
  const { left, right } = edgesOf(bed);
  if (left === null || right === null) return 0;
  return bed.needles.slice(left, right + 1).filter((needle) => needle.working && needle.loopCount === 0)
    .length;
}

function transfer(bed: Bed, from: readonly string[], to: readonly string[]): Outcome {
  if (from.length !== to.length) {
    return fail({ code: 'bed/transfer-uneven', fromCount: from.length, toCount: to.length });
  }
  const sources = needlesNamed(bed, from);
  if (!sources.ok) return sources;
  const targets = needlesNamed(bed, to);
  if (!targets.ok) return targets;
  const idle = targets.value.findIndex((place) => !bed.needles[place]?.working);
  if (idle >= 0) return fail({ code: 'bed/needle-out-of-work', needle: to[idle] ?? '' });
  const needles = [...bed.needles];
  const lifted: Needle[] = [];
  for (const [i, place] of sources.value.entries()) {
    const needle = needles[place];
    if (!needle || needle.loopCount === 0) return fail({ code: 'bed/needle-empty', needle: from[i] ?? '' });
    lifted.push(needle);
    needles[place] = { working: needle.working, loopCount: 0, yarn: null };
  }
  for (const [i, place] of targets.value.entries()) {
    const loops = lifted[i] as Needle;
    needles[place] = {
      working: true,
      loopCount: (needles[place]?.loopCount ?? 0) + loops.loopCount,
      yarn: loops.yarn,
    };
  }
  return succeed({ ...bed, needles });
}

/** The carriage that drops the work must carry no yarn, or it knits. */
function takeOff(bed: Bed, to: Side | null): Outcome {
  const loopsOff = bed.needles.reduce((sum, needle) => sum + needle.loopCount, 0);
  if (loopsOff === 0) return fail({ code: 'bed/nothing-to-take-off' });
  const off = { ...bed, loopsOff, needles: bed.needles.map(() => needleOutOfWork) };
  if (to === null) return succeed(off);
  if (bed.feeder !== null) return fail({ code: 'bed/yarn-in-feeder', held: bed.feeder });
  if (bed.carriage === to) return alreadyThere(to);
  return succeed({ ...off, carriage: to, counter: turned(bed, 1) });
}

function rehang(bed: Bed, left: string, right: string): Outcome {
  const ends = needlesNamed(bed, [left, right]);
  if (!ends.ok) return ends;
  const [first = 0, last = -1] = ends.value;
  const { stitchCount } = edgesOf(bed);
  if (stitchCount > 0) return fail({ code: 'bed/bed-not-empty', stitchCount });
  const needleCount = Math.max(0, last - first + 1);
  if (needleCount !== bed.loopsOff)
    return fail({ code: 'bed/loops-differ', loopsOff: bed.loopsOff, needleCount });
  const idle = bed.needles.findIndex((needle, i) => i >= first && i <= last && !needle.working);
  if (idle >= 0)
    return fail({ code: 'bed/needle-out-of-work', needle: formatNeedle(bed.needles.length, idle) });
  const needles = bed.needles.map((needle, i) =>
    i >= first && i <= last ? { working: true, loopCount: 1, yarn: null } : needle,
  );
  return succeed({ ...bed, loopsOff: 0, needles });
}

function pickUp(bed: Bed, { of, left, right }: Extract<BedMove, { move: 'pick-up' }>): Outcome {
  const ends = needlesNamed(bed, [left, right]);
  if (!ends.ok) return ends;
  const [first = 0, last = -1] = ends.value;
  const { stitchCount } = edgesOf(bed);
  if (of === 'edge' && stitchCount > 0) return fail({ code: 'bed/bed-not-empty', stitchCount });
  const needles = [...bed.needles];
  for (let place = first; place <= last; place++) {
    const { working, loopCount, yarn } = needles[place] as Needle;
    const needle = formatNeedle(needles.length, place);
    if (!working) return fail({ code: 'bed/needle-out-of-work', needle });
    if (of === 'first-row' && loopCount === 0) return fail({ code: 'bed/needle-empty', needle });
    needles[place] = { working, loopCount: loopCount + 1, yarn };
  }
  return succeed({ ...bed, needles });
}

/** The yarn is cut by then: its end goes through the last loop. */
function bindOff(bed: Bed): Outcome {
  if (edgesOf(bed).stitchCount === 0) return fail({ code: 'bed/nothing-to-take-off' });
  if (bed.feeder !== null) return fail({ code: 'bed/yarn-in-feeder', held: bed.feeder });
  return succeed({ ...bed, needles: bed.needles.map(() => needleOutOfWork) });
}
