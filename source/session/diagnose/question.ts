/**
 * Which question `find` asks: the fact, easiest first, that is expected to leave fewest of what remains, slips or places that look
 * alike; the moment of a slip last, since it has to be looked for in the work.
 */

import type { Draw } from '../../planning/eyelets.ts';
import type { Job } from '../../steps/job.ts';
import { tellingFacts } from '../locate/locate.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import { type Fact, facts, type Look } from '../locate/seen.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import { edgeAt, isAt, momentOf, type SlipMoment } from './slip-moment.ts';
import type { Story } from './story.ts';

export type Question = Fact | 'loose' | 'rehung' | 'moment' | 'row' | 'stray' | 'before-move' | 'which-edge';

export interface Evidence {
  readonly look: Look;
  /** Where slips were found in the work, the newest answer last. */
  readonly moments: readonly SlipMoment[];
  /** Questions that the maker cannot answer. */
  readonly unsure: readonly Question[];
}

/** Where the slip is found, or how loose the edge is. */
export type SlipQuestion =
  | 'loose'
  | 'rehung'
  | 'stray'
  | 'before-move'
  | 'which-edge'
  | 'row'
  | 'move'
  | 'move-or-rehang'
  | 'stripe';

/** What stands to be answered, as it was asked. */
export type OpenQuestion =
  | { readonly about: 'fact'; readonly fact: Fact }
  /** `which` of two slips, where there may be two. */
  | { readonly about: SlipQuestion; readonly which: 'only' | 'first' | 'other' }
  /** A yarn that was told by its name alone. */
  | { readonly about: 'yarn-where'; readonly yarn: string }
  /** A number that may be a row of the counter or of the stripe. */
  | { readonly about: 'row-of-what'; readonly row: number }
  /** A way is to be left in the middle: for good, or with the bag, and then it goes on there. */
  | {
      readonly about: 'leave-way';
      readonly back: boolean;
      readonly at: number;
      readonly of: number;
      readonly staysOnIt: boolean;
    }
  /** Which of many steps after which the bed looks the same. */
  | {
      readonly about: 'many-steps';
      readonly from: number;
      readonly through: number;
      readonly part: 'cord' | 'hand';
      /** Which cord, and the number of a round of it. */
      readonly draw: Draw;
      readonly round: number;
    };

/** Where nothing went wrong, and several places look alike. */
export const questionOfPlaces = ({ tellApart }: { readonly tellApart: readonly Fact[] }): Fact | null =>
  tellApart[0] ?? null;

/** Where slips explain what is seen. */
export function nextQuestion(
  job: Job,
  told: Evidence,
  stories: readonly Story[],
  elsewhere: readonly number[],
): Question | null {
  if (stories.length === 0) return null;
  return (
    countToAsk(job, told, stories) ??
    factToAsk(job, told, stories, elsewhere) ??
    ofTheSlip(job, told, stories, elsewhere.length > 0)
  );
}

const counts = ['rowCounter', 'rowsOfColour'] as const satisfies readonly Fact[];

/** Where rows may be too many or too few, one count of them is asked for before any is touched (trade practice). */
export function countToAsk(job: Job, { look, unsure }: Evidence, stories: readonly Story[]): Fact | null {
  const areOfRows = stories.some(({ slips }) => slips.some(({ is }) => is.startsWith('rows-')));
  if (!areOfRows || counts.some((fact) => look[fact] !== undefined)) return null;
  const hasCounter = !job.plan.brief.bed.without.includes('counter');
  return counts.find((fact) => !unsure.includes(fact) && (hasCounter || fact !== 'rowCounter')) ?? null;
}

function factToAsk(
  job: Job,
  { look, unsure }: Evidence,
  stories: readonly Story[],
  elsewhere: readonly number[],
): Fact | null {
  const hasCounter = !job.plan.brief.bed.without.includes('counter');
  const askable = facts.filter(
    (fact) => look[fact] === undefined && !unsure.includes(fact) && (hasCounter || fact !== 'rowCounter'),
  );
  const valuesOf = (fact: Fact): readonly unknown[] => [
    ...stories.map(({ looks }) => looks[fact]),
    ...elsewhere.map((done) => looksAt(job, done, placeIndex(job).bands)[fact]),
  ];
  return tellingFacts(askable, valuesOf)[0] ?? null;
}

/** How loose the edge is; where the slip lies; whether a column begins there on nothing. */
function ofTheSlip(
  job: Job,
  { look, moments, unsure }: Evidence,
  stories: readonly Story[],
  looksSoundElsewhere: boolean,
): Question | null {
  const differ = (tell: (story: Story) => unknown): boolean => new Set(stories.map(tell)).size > 1;
  const asks = (question: Question): boolean => !unsure.includes(question);
  if (look.looseEdgeLoop === undefined && asks('loose') && differ(({ looks }) => looks.looseEdgeLoop))
    return 'loose';
  if (look.rehung === undefined && asks('rehung') && differ(({ looks }) => looks.rehung)) return 'rehung';
  const placed = (by: 'move' | 'stripe' | 'row') => (story: Story) =>
    JSON.stringify(unfound(job, story, moments, by === 'row').map((slip) => momentOf(job, slip)[by]));
  const byStripe = moments.at(-1)?.by === 'stripe';
  if (byStripe && asks('row') && differ(placed('row'))) return 'row';
  // Only the work tells a slip from a place that looks just so with nothing wrong.
  const againstPlace =
    looksSoundElsewhere && moments.length === 0 && stories.every(({ slips }) => slips.every(liesInWork));
  const isOpen = stories.some((story) => unfound(job, story, moments).length > 0);
  if (
    isOpen &&
    asks('moment') &&
    (againstPlace || differ(placed('move')) || differ(placed('stripe')) || differ(placed('row')))
  )
    return 'moment';
  const edge = ({ slips, rows }: Story) => edgeAt(job, slips, moments[0], rows);
  if (moments.length > 1 && look.edgeStep === undefined && asks('which-edge') && differ(edge))
    return 'which-edge';
  if (look.beforeMove === undefined && asks('before-move') && differ(({ looks }) => looks.beforeMove))
    return 'before-move';
  return look.strayColumn === undefined && asks('stray') && differ(({ looks }) => looks.strayColumn)
    ? 'stray'
    : null;
}

/** It can be found by following the work down; another is seen at the bed as it is, or not at all. */
const liesInWork = (slip: Slip): boolean =>
  isShapingSlip(slip) || 'stripe' in slip || slip.is.startsWith('rows-');

/** The slips of a story that have not been found in the work; where the row matters, those of which only the stripe is known too. */
function unfound(
  job: Job,
  { slips, rows }: Story,
  moments: readonly SlipMoment[],
  toTheRow = false,
): readonly Slip[] {
  const exact = toTheRow ? moments.filter(({ by }) => by !== 'stripe') : moments;
  return slips.filter((slip) => !exact.some((moment) => isAt(job, slip, moment, rows)));
}

/** A slip's moment is asked for by what it was: the number of the move, of the stripe, or of the row. */
export function openQuestionOf(
  job: Job,
  question: Question,
  { moments }: Evidence,
  stories: readonly Story[],
): OpenQuestion {
  if (question === 'moment') return momentToAsk(job, moments, stories);
  return isOfSlip(question) ? { about: question, which: 'only' } : { about: 'fact', fact: question };
}

const ofSlips = ['loose', 'rehung', 'stray', 'before-move', 'which-edge', 'row'] as const;
const isOfSlip = (question: Question): question is (typeof ofSlips)[number] =>
  ofSlips.some((one) => one === question);

function momentToAsk(job: Job, moments: Evidence['moments'], stories: readonly Story[]): OpenQuestion {
  const isOfTwo = stories.some(({ slips }) => slips.length > 1);
  const which = !isOfTwo ? 'only' : moments.length === 0 ? 'first' : 'other';
  const slips = stories.flatMap((story) => unfound(job, story, moments));
  const [slip] = slips;
  if (slips.some(isShapingSlip) && slips.some(({ is }) => is.startsWith('rehang')))
    return { about: 'move-or-rehang', which };
  if (slip && isShapingSlip(slip)) return { about: 'move', which };
  return { about: slip && ('stripe' in slip || slip.is.startsWith('rows')) ? 'stripe' : 'row', which };
}
