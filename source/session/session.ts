import { type Bed, edgesOf } from '../bed/bed.ts';
import { formatNeedle } from '../bed/needles.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { BedAfter, Step } from '../steps/step.ts';
import { type SetRight, standingAfter } from './mend/mend.ts';
import { type Way, type WayWithoutBed, withBed, withoutBed } from './way.ts';

/**
 * A list that grows at its end and never changes otherwise. What it was before goes on being that, though both share their
 * items: so adding costs the same at any length. Adding to an older state copies.
 */
export class Kept<Item> implements Iterable<Item> {
  readonly #items: Item[];
  readonly length: number;

  private constructor(items: Item[], length: number) {
    this.#items = items;
    this.length = length;
  }

  static readonly none: Kept<never> = new Kept<never>([], 0);

  add<Added>(item: Added): Kept<Item | Added> {
    const grows = this.#items.length === this.length && this.length > 0;
    const items: (Item | Added)[] = grows ? this.#items : this.#items.slice(0, this.length);
    items.push(item);
    return new Kept(items, this.length + 1);
  }

  get last(): Item | undefined {
    return this.#items[this.length - 1];
  }

  *[Symbol.iterator](): Iterator<Item> {
    for (let i = 0; i < this.length; i++) yield this.#items[i] as Item;
  }
}

/** What taking back brings back: the place, the plan followed from there, the slips set right. */
export interface Standing {
  readonly job: Job;
  /** Steps confirmed; the step to do now is `done + 1`. */
  readonly done: number;
  readonly mends: readonly SetRight[];
  /** The way back or the mend that the hands are on. */
  readonly way: Way | null;
  /** The bed where a way was left between two places of the plan; null where the bed is the plan's. */
  readonly adrift: Bed | null;
}

/** Places left by earlier commands, newest first. A linked list, so that a press costs the same after a thousand. */
export interface PlacesLeft extends Omit<Standing, 'way'> {
  readonly way: WayWithoutBed | null;
  readonly earlier: PlacesLeft | null;
  /** This one and those before it. */
  readonly count: number;
}

/** So many commands can be taken back at least. Of twice as many the older half is let go of, so that no work fills the memory. */
export const leastPlaces = 4000;

export function addPlace(
  { job, done, mends, way, adrift }: Standing,
  earlier: PlacesLeft | null,
): PlacesLeft {
  const kept = earlier?.count === 2 * leastPlaces - 1 ? newestOf(earlier, leastPlaces - 1) : earlier;
  const left = way && withoutBed(way);
  return { job, done, mends, way: left, adrift, earlier: kept, count: (kept?.count ?? 0) + 1 };
}

function newestOf(places: PlacesLeft, count: number): PlacesLeft | null {
  const newest: PlacesLeft[] = [];
  for (let place: PlacesLeft | null = places; place && newest.length < count; place = place.earlier)
    newest.push(place);
  return newest.reduceRight<PlacesLeft | null>(
    (earlier, place) => ({ ...place, earlier, count: (earlier?.count ?? 0) + 1 }),
    null,
  );
}

/** A place that was left, as it was then. */
export const standingAt = ({ job, done, mends, way, adrift }: PlacesLeft): Standing => ({
  job,
  done,
  mends,
  way: way && withBed(way, job.plan.stitches),
  adrift,
});

export interface Note {
  readonly done: number;
  readonly text: string;
}

/** A name for a place. */
export interface Mark {
  readonly name: string;
  /** Steps confirmed there. */
  readonly done: number;
  /** The plan that was followed when it was made. */
  readonly job: Job;
}

/** What was left of a yarn when it was last weighed. */
export interface Weighing {
  readonly grams: number;
  /** Steps confirmed then. */
  readonly done: number;
}

/** The bag's own size, sewn and lying flat. */
export interface MeasuredBag {
  readonly widthCm: number;
  readonly depthCm: number;
  /** Steps confirmed then. */
  readonly done: number;
}

/** Where a maker is in a job. Immutable: `updateSession` gives the next one. */
export interface Session extends Standing {
  /** What the bag is called: as its brief has it, until it is renamed. */
  readonly name: string;
  readonly takeBack: PlacesLeft | null;
  readonly redo: PlacesLeft | null;
  readonly notes: Kept<Note>;
  /** As they were made; of several with one name the last holds. */
  readonly marks: Kept<Mark>;
  /** By yarn. */
  readonly weighed: ReadonlyMap<string, Weighing>;
  /** As it was last measured; null before that. */
  readonly measured: MeasuredBag | null;
}

export const startSession = (job: Job): Session => ({
  job,
  name: job.plan.brief.name,
  done: 0,
  mends: [],
  way: null,
  adrift: null,
  takeBack: null,
  redo: null,
  notes: Kept.none,
  marks: Kept.none,
  weighed: new Map(),
  measured: null,
});

export const isFinished = ({ done, job }: Session): boolean => done === job.stepCount;

/** The step to do now; null once the bag is finished. */
export const currentStep = (session: Session): Step | null =>
  isFinished(session) ? null : stepAt(session.job, session.done + 1);

/** Planned steps whose work hangs there: in the middle of a way those that are not undone, and those done again on it. */
export const stepsStanding = ({ done, way }: Pick<Session, 'done' | 'way'>): number =>
  way?.steps
    .slice(0, way.at)
    .map(standingAfter)
    .findLast((stands) => stands !== null) ??
  way?.stood ??
  done;

/**
 * The bed as it is now, in the middle of a way and after one was left too, in the words of a step's `after`. Null before the
 * first step.
 */
export function bedNow(session: Session): BedAfter | null {
  const { job, way, adrift } = session;
  const bed = way?.bed ?? adrift;
  const done = stepsStanding(session);
  const planned = done === 0 ? null : stepAt(job, done).after;
  return bed ? { ...shownOf(bed), shapings: planned?.shapings ?? 0 } : planned;
}

export function shownOf(bed: Bed): Omit<BedAfter, 'shapings'> {
  const { left, right, stitchCount } = edgesOf(bed);
  const name = (place: number | null): string | null =>
    place === null ? null : formatNeedle(bed.needles.length, place);
  const { carriage, feeder, parked, counter } = bed;
  return { left: name(left), right: name(right), stitches: stitchCount, carriage, feeder, parked, counter };
}
