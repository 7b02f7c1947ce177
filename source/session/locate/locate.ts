/**
 * Finding the place from what can be seen. The bed remembers: the edges tell how many shaping moves are done, the colour
 * on the needles and the side of the carriage tell the row within the stripe. After hanging the work again several rows
 * can look alike, and the stripes have to be counted (common practice).
 */

import { type Result, succeed } from '../../shared/result.ts';
import type { Job } from '../../steps/job.ts';
import { looksAt } from './looks-of.ts';
import { type PlaceIndex, placeIndex, placesLike } from './place-index.ts';
import { checkSeen, type Fact, facts, type Looks, type Seen, type SeenFault } from './seen.ts';

/** More places than this are judged by an even sample of them. */
const sampleSize = 256;

/**
 * Facts that tell apart, first the one that is expected to leave fewest: `valuesOf` is what each of those that look alike shows of
 * a fact.
 */
export const tellingFacts = (
  askable: readonly Fact[],
  valuesOf: (fact: Fact) => readonly unknown[],
): readonly Fact[] =>
  askable
    .map((fact) => ({ fact, values: valuesOf(fact) }))
    .map(({ fact, values }) => ({ fact, of: values.length, left: expectedLeft(values) }))
    .filter(({ left, of }) => left < of)
    .toSorted((a, b) => a.left - b.left)
    .map(({ fact }) => fact);

/** Each value is as likely as the share that shows it, and leaves just those: Σ n² / Σ n. Alike ones mostly stand side by side. */
function expectedLeft(values: readonly unknown[]): number {
  const counts = new Map<unknown, number>();
  let squares = 0;
  for (let i = 0; i < values.length; ) {
    const value = values[i];
    const before = counts.get(value) ?? 0;
    let count = before;
    while (i < values.length && values[i] === value) {
      i++;
      count++;
    }
    counts.set(value, count);
    squares += count * count - before * before;
  }
  return squares / values.length;
}

function factsThatTell(
  { columns }: PlaceIndex,
  places: readonly number[],
  askable: readonly Fact[],
): readonly Fact[] {
  const many = places.length;
  const sample =
    many <= sampleSize
      ? places
      : Array.from({ length: sampleSize }, (_, i) => places[Math.floor((i * many) / sampleSize)] ?? 0);
  return tellingFacts(askable, (fact) => {
    const column = columns[fact];
    const values: unknown[] = [];
    for (const place of sample) values.push(column[place]);
    return values;
  });
}

/** A stretch of steps after each of which the bed looks the same. To carry on from `done` is always safe. */
export interface Place {
  /** Steps confirmed at least, and at most. */
  readonly done: number;
  readonly through: number;
  readonly looks: Looks;
}

export type Finding =
  | { readonly found: 'one'; readonly place: Place }
  | {
      readonly found: 'several';
      readonly count: number;
      /** The first few, in working order. */
      readonly places: readonly Place[];
      /** All facts that would leave fewer places, the most telling first. */
      readonly tellApart: readonly Fact[];
    }
  | { readonly found: 'none' };

const placesShown = 12;

/** Where the work must be. Facts that the maker `cannotTell` are not asked for. */
export function locate(job: Job, seen: Seen, cannotTell: readonly Fact[] = []): Result<Finding, SeenFault> {
  const checked = checkSeen(job, seen);
  if (!checked.ok) return checked;
  const index = placeIndex(job);
  const places = placesLike(index, checked.value as Partial<Looks>);
  if (places.length === 0) return succeed({ found: 'none' });
  const [only = 0] = places;
  if (places.length === 1) return succeed({ found: 'one', place: placeAt(job, index, only) });
  const tellApart = factsThatTell(
    index,
    places,
    facts.filter((fact) => checked.value[fact] === undefined && !cannotTell.includes(fact)),
  );
  return succeed({
    found: 'several',
    count: places.length,
    places: places.slice(0, placesShown).map((place) => placeAt(job, index, place)),
    tellApart,
  });
}

export function placeAt(job: Job, { firstDone, lastDone, bands }: PlaceIndex, place: number): Place {
  const done = firstDone[place] ?? 0;
  return { done, through: lastDone[place] ?? 0, looks: looksAt(job, done, bands) };
}

/** The stretch of steps that look alike and hold the place where `done` steps are confirmed. */
export function placeAtDone(job: Job, done: number): Place {
  const index = placeIndex(job);
  let place = 0;
  while (place + 1 < index.placeCount && (index.firstDone[place + 1] ?? 0) <= done) place++;
  return placeAt(job, index, place);
}
