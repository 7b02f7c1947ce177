/**
 * What may have gone wrong, by supposing it: every slip within reach is carried out on the bed, and those remain whose bed
 * looks as the maker says. A mend is offered only where it is right for all that remain; else the question comes first that
 * tells them apart (trade practice: ask for the count before any row is touched).
 */
import { type Result, succeed } from '../../shared/result.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex, placesLike } from '../locate/place-index.ts';
import { checkSeen, type Fact, facts, type Look, type Looks, type SeenFault } from '../locate/seen.ts';
import type { Mend } from '../mend/mend.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { sameFabric } from './fabric.ts';
import { type Evidence, nextQuestion, type Question, type SlipMoment } from './question.ts';
import { sameBed } from './settle.ts';
import { type Story, storyOf } from './story.ts';
import { couldShow, farReach, nearReach, type Reach, supposed } from './suppose.ts';
import { waysOut } from './ways-out.ts';

export interface Remedy {
  readonly story: Story;
  readonly mend: Mend;
}

export interface Diagnosis {
  /** What fits, the likeliest first, each with slips in it. */
  readonly stories: readonly Story[];
  readonly remedies: readonly Remedy[];
  /** What to ask next; null where nothing more would tell. */
  readonly question: Question | null;
  /** Places that look just so without any slip: they may be gone to only where no slip speaks against it. */
  readonly elsewhere: readonly number[];
}

const nothingWrong: Diagnosis = { stories: [], remedies: [], question: null, elsewhere: [] };

/**
 * Explains what is told where `expectedDone` steps are confirmed. Nothing is wrong where that place looks so; places that look
 * so elsewhere are given as steps confirmed there.
 */
export function diagnose(job: Job, told: Evidence, expectedDone: number): Result<Diagnosis, SeenFault> {
  const { looseEdgeLoop, ...seen } = told.look;
  const checked = checkSeen(job, seen);
  if (!checked.ok) return checked;
  const look: Look = { ...checked.value, looseEdgeLoop };
  const elsewhere = soundPlaces(job, look);
  const sound =
    told.moment === null &&
    elsewhere.some(({ from, through }) => from <= expectedDone && expectedDone <= through);
  if (sound) return succeed(nothingWrong);
  const places = isFallen(job, look, expectedDone) ? [] : elsewhere.map(({ from }) => from);
  if (places.length > 0 && !(look.left && look.right)) return succeed({ ...nothingWrong, elsewhere: places });
  const found = survivors(job, { ...told, look }, expectedDone, places.length > 0);
  return succeed(verdict(job, told, found, places));
}

/** Nothing on the needles in the middle of the stripes: the work has dropped, wherever else the bed is bare. */
export const isFallen = (job: Job, { left }: Look, done: number): boolean =>
  left === null && done > 0 && stepAt(job, done).phase === 'stripes' && stepAt(job, done).after.left !== null;

function soundPlaces(job: Job, { looseEdgeLoop: _, ...seen }: Look) {
  if (facts.every((fact) => seen[fact] === undefined)) return [];
  const index = placeIndex(job);
  return placesLike(index, seen as Partial<Looks>)
    .slice(0, 200)
    .map((place) => ({ from: index.firstDone[place] ?? 0, through: index.lastDone[place] ?? 0 }));
}

/** One slip here; else, where no place is sound, one slip near by or anywhere, or two slips here. */
function survivors(job: Job, told: Evidence, done: number, isSoundElsewhere: boolean): readonly Story[] {
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

/** Rows of the bag knitted when a slip was made, its stripe and its shaping move. */
export function momentOf(
  job: Job,
  slip: Slip,
): { readonly row: number; readonly stripe: number; readonly move: number | null } {
  const rowOfSlip = (): number => {
    if ('move' in slip) return slip.move * job.plan.brief.shapeEveryRows;
    if ('step' in slip) return rowAt(job, slip.step ?? 0);
    if ('stripe' in slip) return job.plan.stripes[slip.stripe - 1]?.firstRow ?? 0;
    return 'row' in slip ? slip.row : 0;
  };
  const row: number = rowOfSlip();
  const stripe = 'stripe' in slip ? slip.stripe : (job.outline.stripeOfRow[Math.max(1, row)] ?? 0) + 1;
  return { row, stripe, move: isShapingSlip(slip) ? slip.move : null };
}

function isAt(job: Job, slip: Slip, moment: SlipMoment, rowsMade: number): boolean {
  const at = momentOf(job, slip);
  switch (moment.by) {
    case 'move':
      return at.move === moment.number;
    case 'stripe':
      return at.stripe === moment.number;
    case 'row':
      return at.move === null && at.row === moment.number;
    case 'rows-down':
      return rowsMade - at.row === moment.number;
  }
}

/** More than this are asked about before any is worked out. */
const workedOut = 48;

function verdict(
  job: Job,
  told: Evidence,
  stories: readonly Story[],
  elsewhere: readonly number[],
): Diagnosis {
  const question = nextQuestion(job, told, stories, elsewhere);
  const mine = stories
    .slice(0, workedOut)
    .map((story) => waysOut(job, story).map((mend) => ({ story, mend })));
  const keys = mine.map((ways) => new Set(ways.map(({ mend }) => keyOf(mend))));
  const all = mine.flat().filter(({ mend }) => keys.every((own) => own.has(keyOf(mend))));
  const once = all.filter(({ mend }, i) => all.findIndex((other) => keyOf(other.mend) === keyOf(mend)) === i);
  const isWhole = stories.length <= workedOut;
  const open = elsewhere.filter((done) => stories.every((story) => fitsPlace(job, story, done)));
  // Who has found the slip in the work is not elsewhere.
  const isSure = told.moment !== null || open.length === elsewhere.length;
  const remedies = isWhole && isSure ? once : [];
  const isEnough =
    question === 'moment' || question === 'row'
      ? backIsOffered(remedies)
      : sameWays(mine) && elsewhere.length === open.length;
  return {
    stories,
    remedies,
    question: isEnough ? null : question,
    elsewhere: open,
  };
}

const keyOf = ({ steps, thenDone, shows }: Mend): string =>
  JSON.stringify([
    thenDone,
    shows.length > 0,
    steps.map(({ moves, row, setsCounter }) => [moves, setsCounter ? row : null]),
  ]);

const mostCompared = 400;

/** All that was knitted is as the plan has it there, and not only what hangs on the needles. */
function fitsPlace(job: Job, { bed, looks, fabric, baseDone }: Story, done: number): boolean {
  const there = looksAt(job, done, placeIndex(job).bands);
  const planned = done < baseDone || done > baseDone + mostCompared ? null : storyOf(job, [], done, baseDone);
  if (!planned || !sameFabric(fabric, planned.fabric)) return false;
  return facts.every((fact) => looks[fact] === there[fact]) && sameBed(bed, bedAtPlace(job, done));
}

const backIsOffered = (remedies: readonly Remedy[]): boolean =>
  remedies.some(({ mend }) => mend.how !== 'make-up');

const sameWays = (mine: readonly (readonly Remedy[])[]): boolean =>
  new Set(mine.map((ways) => ways.map(({ mend }) => keyOf(mend)).join('|'))).size < 2;
