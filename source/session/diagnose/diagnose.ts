/**
 * What may have gone wrong, by supposing it: every slip within reach is carried out on the bed, and those remain whose bed
 * looks as the maker says. A mend is offered only where it is right for all that remain; else the question comes first that
 * tells them apart (trade practice: ask for the count before any row is touched).
 */
import { type Result, succeed } from '../../shared/result.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex, placesLike } from '../locate/place-index.ts';
import { checkSeen, facts, type Look, type Looks, plainly, type SeenFault } from '../locate/seen.ts';
import type { Mend } from '../mend/mend.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { survivors } from './explanations.ts';
import { sameFabric } from './fabric.ts';
import {
  countToAsk,
  type Evidence,
  nextQuestion,
  type OpenQuestion,
  openQuestionOf,
  type Question,
} from './question.ts';
import { sameBed } from './settle.ts';
import { type Story, storyOf } from './story.ts';
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
  /** The same, as it is put. */
  readonly open: OpenQuestion | null;
  /** Places that look just so without any slip: they may be gone to only where no slip speaks against it, and nothing is asked. */
  readonly elsewhere: readonly number[];
}

const nothingWrong: Diagnosis = { stories: [], remedies: [], question: null, open: null, elsewhere: [] };

/**
 * Explains what is told where `expectedDone` steps are confirmed. Nothing is wrong where that place looks so; places that look
 * so elsewhere are given as steps confirmed there.
 */
export function diagnose(job: Job, told: Evidence, expectedDone: number): Result<Diagnosis, SeenFault> {
  const checked = checkSeen(job, plainly(told.look));
  if (!checked.ok) return checked;
  const look: Look = { ...told.look, ...checked.value };
  const elsewhere = soundPlaces(job, look);
  const sound =
    told.moments.length === 0 &&
    elsewhere.some(({ from, through }) => from <= expectedDone && expectedDone <= through);
  if (sound) return succeed(nothingWrong);
  const places = isFallen(job, look, expectedDone) ? [] : elsewhere.map(({ from }) => from);
  if (places.length > 0 && !(look.left && look.right)) return succeed({ ...nothingWrong, elsewhere: places });
  const found = (moments: Evidence['moments']) =>
    survivors(job, { ...told, look, moments }, expectedDone, places.length > 0);
  const all = found(told.moments);
  const newest = told.moments.slice(-1);
  // Who names another place than before means that one now.
  const isMended = all.length === 0 && told.moments.length > 1;
  return succeed(
    verdict(
      job,
      { ...told, look, moments: isMended ? newest : told.moments },
      isMended ? found(newest) : all,
      places,
    ),
  );
}

/** Nothing on the needles in the middle of the stripes: the work has dropped, wherever else the bed is bare. */
export const isFallen = (job: Job, { left }: Look, done: number): boolean =>
  left === null && done > 0 && stepAt(job, done).phase === 'stripes' && stepAt(job, done).after.left !== null;

function soundPlaces(job: Job, look: Look) {
  const seen = plainly(look);
  if (facts.every((fact) => seen[fact] === undefined)) return [];
  const index = placeIndex(job);
  return placesLike(index, seen as Partial<Looks>)
    .slice(0, 200)
    .map((place) => ({ from: index.firstDone[place] ?? 0, through: index.lastDone[place] ?? 0 }));
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
  const isCounted = countToAsk(job, told, stories) === null;
  const isWhole = stories.length <= workedOut;
  const { all, common, areSame } = isCounted && isWhole ? waysOfAll(job, stories) : noneWorkedOut;
  const sound = elsewhere.filter((done) => stories.every((story) => fitsPlace(job, story, done)));
  // Who has found the slip in the work is not elsewhere.
  const isSure = told.moments.length > 0 || sound.length === elsewhere.length;
  const remedies = isSure ? common : [];
  const isEnough =
    isCounted &&
    (question !== null && lookedFor.has(question)
      ? backIsOffered(remedies) || (sound.length > 0 && sound.length === elsewhere.length)
      : areSame && elsewhere.length === sound.length);
  const asked = isEnough ? null : question;
  return {
    stories,
    remedies: remedies.map((remedy) => showingAll(remedy, all)),
    question: asked,
    open: asked === null ? null : openQuestionOf(job, asked, told, stories),
    elsewhere: asked === null ? sound : [],
  };
}

interface Ways {
  readonly all: readonly Remedy[];
  /** Those that are right for each story, once each. */
  readonly common: readonly Remedy[];
  /** The stories have the same ways out, in the same order. */
  readonly areSame: boolean;
}
const noneWorkedOut: Ways = { all: [], common: [], areSame: false };

/** Worked out story by story, until what is common to them is known. */
function waysOfAll(job: Job, stories: readonly Story[]): Ways {
  const all: Remedy[] = [];
  let common: readonly Remedy[] = [];
  let areSame = true;
  let first: string | null = null;
  for (const story of stories) {
    const mine = waysOut(job, story).map((mend) => ({ story, mend }));
    const keys = mine.map(({ mend }) => keyOf(mend));
    common =
      first === null
        ? mine.filter((_, i) => keys.indexOf(keys[i] ?? '') === i)
        : common.filter(({ mend }) => keys.includes(keyOf(mend)));
    first ??= keys.join('|');
    if (first !== keys.join('|')) areSame = false;
    all.push(...mine);
    if (common.length === 0 && !areSame) break;
  }
  return { all, common, areSame };
}

/** Questions for which the work has to be followed down: not worth it once the way back is offered, or a place that looks just so. */
const lookedFor: ReadonlySet<Question> = new Set(['moment', 'row', 'stray', 'before-move', 'which-edge']);

/** A mend that is right for more than one story shows what any of them would. */
const showingAll = ({ story, mend }: Remedy, all: readonly Remedy[]): Remedy => {
  const same = all.filter((other) => keyOf(other.mend) === keyOf(mend));
  return { story, mend: { ...mend, shows: [...new Set(same.flatMap((other) => other.mend.shows))] } };
};

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
