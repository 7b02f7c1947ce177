/**
 * Every place of a job by what can be seen there: one column of small numbers a fact. Neighbouring steps that look the
 * same, such as a reminder that moves nothing, share one place. Built once for a job, then only columns are compared.
 */
import { type Job, stepAt } from '../../steps/job.ts';
import { colourBands, looksAfter, looksAt } from './looks-of.ts';
import { type Fact, facts, type Looks, yarnsSeen } from './seen.ts';

export interface PlaceIndex {
  readonly placeCount: number;
  readonly columns: Readonly<Record<Fact, Int32Array>>;
  /** Places by what a fact shows there, in working order. */
  readonly byValue: ReadonlyMap<Fact, ReadonlyMap<number, readonly number[]>>;
  /** By place: steps confirmed at its first and its last step. */
  readonly firstDone: Int32Array;
  readonly lastDone: Int32Array;
  readonly bands: readonly number[];
  /** The number that stands for a fact in its column; negative where no place can show it. */
  readonly code: (fact: Fact, value: Looks[Fact]) => number;
}

const built = new WeakMap<Job, PlaceIndex>();

export function placeIndex(job: Job): PlaceIndex {
  const known = built.get(job);
  if (known) return known;
  const index = buildIndex(job);
  built.set(job, index);
  return index;
}

function buildIndex(job: Job): PlaceIndex {
  const code = coder(job);
  const bands = colourBands(job);
  const size = job.stepCount + 1;
  const columns = Object.fromEntries(facts.map((fact) => [fact, new Int32Array(size)])) as Record<
    Fact,
    Int32Array
  >;
  const firstDone = new Int32Array(size);
  const lastDone = new Int32Array(size);
  let last = -1;
  for (let done = 0; done < size; done++) {
    const looks = done === 0 ? looksAt(job, 0, bands) : looksAfter(job, stepAt(job, done), bands);
    const next = last + 1;
    for (const fact of facts) columns[fact][next] = code(fact, looks[fact]);
    const same = last >= 0 && facts.every((fact) => columns[fact][next] === columns[fact][last]);
    if (!same) {
      last = next;
      firstDone[last] = done;
    }
    lastDone[last] = done;
  }
  const placeCount = last + 1;
  const byValue = new Map(facts.map((fact) => [fact, groupByValue(columns[fact], placeCount)]));
  return { placeCount, columns, byValue, firstDone, lastDone, bands, code };
}

function groupByValue(column: Int32Array, placeCount: number): ReadonlyMap<number, readonly number[]> {
  const groups = new Map<number, number[]>();
  for (let place = 0; place < placeCount; place++) {
    const value = column[place] ?? 0;
    const group = groups.get(value);
    if (group) group.push(place);
    else groups.set(value, [place]);
  }
  return groups;
}

function coder(job: Job): PlaceIndex['code'] {
  const needles = new Map(job.outline.needles.map((name, place) => [name, place + 1]));
  const yarns = new Map(yarnsSeen(job).map((yarn, i) => [yarn, i + 1]));
  return (fact, value) => {
    if (value === null) return 0;
    if (typeof value === 'number') return value;
    switch (fact) {
      case 'carriage':
        return value === 'left' ? 1 : 2;
      case 'left':
      case 'right':
        return needles.get(value) ?? -1;
      default:
        return yarns.get(value) ?? -1;
    }
  };
}

/** Places that look as `seen`, in working order: only those that share the rarest of its facts are compared. */
export function placesLike(index: PlaceIndex, seen: Partial<Looks>): readonly number[] {
  const known = facts.flatMap((fact) => {
    const value = seen[fact];
    if (value === undefined) return [];
    const code = index.code(fact, value);
    return [{ column: index.columns[fact], code, group: index.byValue.get(fact)?.get(code) ?? [] }];
  });
  const [rarest, ...others] = known.toSorted((a, b) => a.group.length - b.group.length);
  if (!rarest) return Array.from({ length: index.placeCount }, (_, place) => place);
  return others.reduce((places, { column, code }) => keepCode(places, column, code), rarest.group);
}

/** A plain loop: this is the one place where tens of thousands of places may be compared. */
function keepCode(places: readonly number[], column: Int32Array, code: number): readonly number[] {
  const kept: number[] = [];
  for (const place of places) if (column[place] === code) kept.push(place);
  return kept;
}
