/** The stories that fit what is seen: one slip where the work stands, else near by, else two of them, else anywhere. */
import { type Job, stepAt } from '../../steps/job.ts';
import { placeIndex, placesLike } from '../locate/place-index.ts';
import { type Fact, facts, type Look, type Looks, plainly } from '../locate/seen.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import { showingAt } from './could-show.ts';
import { sameFabric } from './fabric.ts';
import type { Evidence } from './question.ts';
import { sameBed } from './settle.ts';
import { edgeAt, isAt, isPass } from './slip-moment.ts';
import { type Story, storyOf } from './story.ts';
import { farReach, nearReach, type Reach, supposed } from './suppose.ts';

/** One slip here; else, where no place is sound, one slip near by or two slips here; else one anywhere. */
export function survivors(
  job: Job,
  told: Evidence,
  done: number,
  isSoundElsewhere: boolean,
): readonly Story[] {
  const here = oneSlip(job, told, done, farReach);
  if (here.some(isTelling) || isSoundElsewhere) return here;
  const near = nearby(job, done).flatMap((place) => oneSlip(job, told, place, reachFrom(done, place)));
  if (here.length > 0) return [...here, ...near.filter(isTelling)];
  const found = [...near, ...unlike(job, near, twoSlips(job, told, done))];
  if (found.length > 0) return withoutUnfound(job, told, found);
  return anywhere(job, told.look, done).flatMap((place) => oneSlip(job, told, place, nearReach));
}

/** A press too few or too many beside an old slip is common; further off, only what is new is looked for. */
const reachFrom = (done: number, place: number): Reach =>
  Math.abs(place - done) <= 3 ? farReach : nearReach;

/** Who has found one slip in the work, and looked in vain for another, has made one. */
function withoutUnfound(
  job: Job,
  { moments, unsure }: Evidence,
  stories: readonly Story[],
): readonly Story[] {
  if (moments.length === 0 || !unsure.includes('moment')) return stories;
  const found = stories.filter(({ slips, rows }) =>
    slips.every((slip) => moments.some((moment) => isAt(job, slip, moment, rows))),
  );
  return found.length > 0 ? found : stories;
}

/** Hung so many needles aside, work can have its edges anywhere: that explains too much to be taken for the only story. */
const isTelling = ({ slips }: Story): boolean => slips.every(({ is }) => is !== 'rehang-shifted');

/** Tells those stories that fit, of the slips that could look so. */
function teller(job: Job, told: Evidence, done: number): (slips: readonly Slip[]) => readonly Story[] {
  const couldShow = showingAt(job, told.look, done);
  return (slips) => {
    if (!couldShow(slips) || !areWhereFound(job, told, slips)) return [];
    const [first] = slips;
    const story = storyOf(job, slips, first?.is === 'work-dropped' ? first.step : done);
    return story && fits(job, told, story) ? [story] : [];
  };
}

function oneSlip(job: Job, told: Evidence, done: number, reach: Reach): readonly Story[] {
  if (done === 0) return [];
  const tell = teller(job, told, done);
  return alike(forgotten(supposed(job, told.look, done, reach).flatMap((slip) => tell([slip]))));
}

/** More than these are asked about, and none of them needs to be known yet. */
const pairsTold = 100;

/** Two slips, the newest first, each as old as one alone may be. */
function twoSlips(job: Job, told: Evidence, done: number): readonly Story[] {
  if (done === 0) return [];
  const tell = teller(job, told, done);
  const slips = supposed(job, told.look, done, farReach).filter((slip) => isOfPair(job, slip, done));
  const found: Story[] = [];
  for (let at = 1; at < slips.length && found.length < pairsTold; at++)
    for (let i = 0; i < at && found.length < pairsTold; i++) {
      const [one, other] = [slips[i] as Slip, slips[at] as Slip];
      if (canBeBoth(one, other)) found.push(...tell([one, other]));
    }
  return alike(found);
}

/** What leaves nothing to see of another is not supposed beside it, nor the same rows at two places. */
function isOfPair(job: Job, slip: Slip, done: number): boolean {
  if (slip.is === 'work-dropped' || slip.is === 'stitch-dropped') return false;
  return slip.is !== 'rows-too-many' || slip.step === done || isPass(stepAt(job, slip.step));
}

const canBeBoth = (one: Slip, other: Slip): boolean =>
  isShapingSlip(one) && isShapingSlip(other) ? one.move !== other.move : one.is !== other.is;

/** Hung where it was before, with nothing to tell it by, is not hung again, rather than hung amiss. */
function forgotten(stories: readonly Story[]): readonly Story[] {
  const missing = stories.filter(({ slips }) => slips[0]?.is === 'rehang-missing');
  return stories.filter(
    ({ slips, bed }) =>
      slips[0]?.is !== 'rehang-shifted' || !missing.some((other) => sameBed(other.bed, bed)),
  );
}

/** What one slip explains needs no second: stories that have left other rows or another bed than each of `simpler`. */
function unlike(job: Job, simpler: readonly Story[], stories: readonly Story[]): readonly Story[] {
  const from = Math.min(...[...simpler, ...stories].map(({ baseDone }) => baseDone));
  const told = new Map<Story, Story['fabric']>();
  const fabricOf = (story: Story): Story['fabric'] => {
    const known = told.get(story) ?? storyOf(job, story.slips, story.done, from)?.fabric ?? [];
    told.set(story, known);
    return known;
  };
  const isSame = (one: Story, other: Story): boolean =>
    one.rows === other.rows && sameBed(one.bed, other.bed) && sameFabric(fabricOf(one), fabricOf(other));
  return stories.filter((story) => !simpler.some((one) => isSame(one, story)));
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
function anywhere(job: Job, look: Look, done: number): readonly number[] {
  const index = placeIndex(job);
  const seen = plainly(look);
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

function fits(job: Job, { look, moments }: Evidence, { looks, slips, rows }: Story): boolean {
  if (!looksSo.every((fact) => look[fact] === undefined || look[fact] === (looks[fact] ?? look[fact])))
    return false;
  const [first] = moments;
  const isThere = !first || look.edgeStep === undefined || edgeAt(job, slips, first, rows) === look.edgeStep;
  return isThere && moments.every((moment) => slips.some((slip) => isAt(job, slip, moment, rows)));
}

const looksSo = [...facts, 'looseEdgeLoop', 'strayColumn', 'rehung', 'beforeMove'] as const;

/** Told by the slips alone; how many rows down they lie is known once they are carried out. */
const areWhereFound = (job: Job, { moments }: Evidence, slips: readonly Slip[]): boolean =>
  moments.every((moment) => moment.by === 'rows-down' || slips.some((slip) => isAt(job, slip, moment, 0)));
