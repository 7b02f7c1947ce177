/** The stories that fit what is seen: one slip where the work stands, else near by, else two of them, else anywhere. */
import type { Job } from '../../steps/job.ts';
import { placeIndex, placesLike } from '../locate/place-index.ts';
import { type Fact, facts, type Look, type Looks } from '../locate/seen.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import type { Evidence } from './question.ts';
import { sameBed } from './settle.ts';
import { isAt } from './slip-moment.ts';
import { type Story, storyOf } from './story.ts';
import { couldShow, farReach, nearReach, type Reach, supposed } from './suppose.ts';

/** One slip here; else, where no place is sound, one slip near by or anywhere, or two slips here. */
export function survivors(
  job: Job,
  told: Evidence,
  done: number,
  isSoundElsewhere: boolean,
): readonly Story[] {
  const here = oneSlip(job, told, done, farReach);
  if (here.length > 0 || isSoundElsewhere) return here;
  const near = nearby(job, done).flatMap((place) => oneSlip(job, told, place, nearReach));
  if (near.length > 0) return near;
  const two = twoSlips(job, told, done);
  if (two.length > 0) return two;
  return anywhere(job, told.look, done).flatMap((place) => oneSlip(job, told, place, nearReach));
}

const tell = (job: Job, told: Evidence, slips: readonly Slip[], done: number): readonly Story[] => {
  const [first] = slips;
  if (!couldShow(job, told.look, done, slips)) return [];
  const at = first?.is === 'work-dropped' ? first.step : done;
  const story = storyOf(job, slips, at);
  return story && fits(job, told, story) ? [story] : [];
};

const oneSlip = (job: Job, told: Evidence, done: number, reach: Reach): readonly Story[] =>
  done === 0
    ? []
    : alike(
        forgotten(supposed(job, told.look, done, reach).flatMap((slip) => tell(job, told, [slip], done))),
      );

function twoSlips(job: Job, told: Evidence, done: number): readonly Story[] {
  if (done === 0) return [];
  const slips = supposed(job, told.look, done, nearReach);
  const found: Story[] = [];
  for (const [i, one] of slips.entries())
    for (const other of slips.slice(i + 1))
      if (canBeBoth(one, other)) found.push(...tell(job, told, [one, other], done));
  return alike(found).slice(0, 24);
}

const canBeBoth = (one: Slip, other: Slip): boolean => {
  if (isShapingSlip(one) && isShapingSlip(other)) return one.move !== other.move;
  const alone = (slip: Slip) => slip.is === 'work-dropped' || slip.is === 'stitch-dropped';
  return one.is !== other.is && !alone(one) && !alone(other);
};

/** Hung where it was before, with nothing to tell it by, is not hung again, rather than hung amiss. */
function forgotten(stories: readonly Story[]): readonly Story[] {
  const missing = stories.filter(({ slips }) => slips[0]?.is === 'rehang-missing');
  return stories.filter(
    ({ slips, bed }) =>
      slips[0]?.is !== 'rehang-shifted' || !missing.some((other) => sameBed(other.bed, bed)),
  );
}

/** Slips that have left the very same work are one: what is supposed twice is told once. */
function alike(stories: readonly Story[]): readonly Story[] {
  const seen = new Set<string>();
  return stories.filter(({ baseDone, made, done }) => {
    const key = JSON.stringify([baseDone, done, made.map(({ move, step }) => [move, step])]);
    return !seen.has(key) && seen.add(key);
  });
}

/** A few steps before and after: the maker has gone on without a press, or pressed once too often. */
const nearSteps = 10;

const nearby = (job: Job, done: number): readonly number[] =>
  Array.from({ length: 2 * nearSteps }, (_, i) => done + (i % 2 === 0 ? -1 : 1) * (1 + (i >> 1))).filter(
    (place) => place > 0 && place < job.stepCount,
  );

/** Facts that a slip may falsify together. */
const doubtful: readonly (readonly Fact[])[] = [
  ['right', 'stitches'],
  ['left', 'stitches'],
  ['left', 'right', 'stitches'],
  ['stitches'],
  ['carriage', 'rowCounter', 'rowsOfColour'],
  ['carriage'],
  ['lastColour', 'feeder', 'stripesCounted', 'rowsOfColour'],
  ['feeder'],
];

const placesTried = 12;

/** Places, nearest first, that look so but for what one slip may have changed. */
function anywhere(job: Job, { looseEdgeLoop: _, ...seen }: Look, done: number): readonly number[] {
  const index = placeIndex(job);
  const found = new Set<number>();
  for (const left of doubtful) {
    const others = Object.fromEntries(Object.entries(seen).filter(([fact]) => !left.includes(fact as Fact)));
    if (Object.values(others).filter((value) => value !== undefined).length < 2) continue;
    const places = placesLike(index, others as Partial<Looks>).map((place) => index.firstDone[place] ?? 0);
    const nearest = places.toSorted((a, b) => Math.abs(a - done) - Math.abs(b - done));
    for (const place of nearest.slice(0, placesTried)) found.add(place);
  }
  return [...found];
}

function fits(job: Job, { look, moment }: Evidence, { looks, slips, rows }: Story): boolean {
  if (look.looseEdgeLoop !== undefined && look.looseEdgeLoop !== looks.looseEdgeLoop) return false;
  if (!facts.every((fact) => look[fact] === undefined || look[fact] === looks[fact])) return false;
  return moment === null || slips.some((slip) => isAt(job, slip, moment, rows));
}
