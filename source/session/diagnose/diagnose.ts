import { type Result, succeed } from '../../shared/result.ts';
import type { Job } from '../../steps/job.ts';
import { type Place, placeAt } from '../locate/locate.ts';
import { type PlaceIndex, placeIndex, placesLike } from '../locate/place-index.ts';
import { checkSeen, type Looks, type SeenFault } from '../locate/seen.ts';
import { type Diagnosis, shapingSlips } from './slip.ts';
import type { Look, Suspect } from './suspect.ts';
import { missingLoop, strayLoop } from './suspect-loop.ts';
import { shapingSuspect } from './suspect-shaping.ts';
import { swappedSides, wrongSide } from './suspect-side.ts';
import { wrongColour, wrongFeeder } from './suspect-yarn.ts';

/** More explanations than this help nobody. */
const diagnosesShown = 6;

/** Places tried for one slip: those nearest to where the program thinks the work is. */
const placesTried = 24;

/**
 * What may have gone wrong, the likeliest first, when what is seen is not what the place must look like. Where the
 * program's own count `expectedDone` explains it with one slip, only such slips are given. Empty when nothing is wrong,
 * or when no single slip explains it.
 */
export function diagnose(
  job: Job,
  seen: Look,
  expectedDone?: number,
): Result<readonly Diagnosis[], SeenFault> {
  const checked = checkSeen(job, seen);
  if (!checked.ok) return checked;
  const look: Look = { ...checked.value, looseEdgeLoop: seen.looseEdgeLoop };
  const index = placeIndex(job);
  const sound = placesLike(index, known(look));
  const isExpected = (place: number): boolean =>
    expectedDone === undefined || holds(index, place, expectedDone);
  if (sound.some(isExpected)) return succeed([]);
  const found = suspects(job, look).flatMap((suspect) =>
    nearest(index, placesLike(index, known(suspect.withoutSlip)), expectedDone).flatMap(
      (place) => suspect.at(placeAt(job, index, place)) ?? [],
    ),
  );
  return succeed(likeliest(found, expectedDone).slice(0, diagnosesShown));
}

/**
 * Every slip that could be behind what was seen, the likeliest first: with its effect taken out of what was seen, the
 * place must be one that the plan knows.
 */
function suspects(job: Job, seen: Look): readonly Suspect[] {
  const shaping = shapingSlips.flatMap((slip) => shapingSuspect(job, seen, slip) ?? []);
  return [
    ...shaping.slice(0, 2),
    ...strayLoop(job, seen),
    ...shaping.slice(2),
    ...missingLoop(job, seen),
    ...wrongSide(job, seen),
    ...wrongFeeder(job, seen),
    ...wrongColour(job, seen),
    ...swappedSides(job, seen),
  ];
}

const known = ({ looseEdgeLoop: _, ...seen }: Look): Partial<Looks> => seen as Partial<Looks>;

const holds = ({ firstDone, lastDone }: PlaceIndex, place: number, done: number): boolean =>
  (firstDone[place] ?? 0) <= done && done <= (lastDone[place] ?? 0);

function nearest(
  index: PlaceIndex,
  places: readonly number[],
  expectedDone: number | undefined,
): readonly number[] {
  if (expectedDone === undefined || places.length <= placesTried) return places.slice(0, placesTried);
  const after = places.findIndex((place) => (index.lastDone[place] ?? 0) >= expectedDone);
  const middle = after < 0 ? places.length : after;
  const from = Math.max(0, Math.min(middle - placesTried / 2, places.length - placesTried));
  return places.slice(from, from + placesTried);
}

function likeliest(found: readonly Diagnosis[], expectedDone: number | undefined): readonly Diagnosis[] {
  if (expectedDone === undefined) return found;
  const there = found.filter(({ place }) => place.done <= expectedDone && expectedDone <= place.through);
  if (there.length > 0) return there;
  return found.toSorted((a, b) => farness(a.place, expectedDone) - farness(b.place, expectedDone));
}

const farness = ({ done, through }: Place, expected: number): number =>
  expected < done ? done - expected : Math.max(0, expected - through);
