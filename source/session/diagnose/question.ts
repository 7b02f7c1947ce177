/**
 * Which question `find` asks about slips: the fact, easiest first, that is expected to leave fewest of what remains; the moment of
 * the slip last, since it has to be looked for in the work. Of places that look alike `locate/locate.ts` asks.
 */

import type { Draw } from '../../planning/eyelets.ts';
import type { Job } from '../../steps/job.ts';
import { expectedLeft } from '../locate/locate.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import { type Fact, facts, type Look } from '../locate/seen.ts';
import { isShapingSlip } from '../mend/slip.ts';
import type { SlipMoment } from './slip-moment.ts';
import type { Story } from './story.ts';
export type Question = Fact | 'loose' | 'moment' | 'row';

export interface Evidence {
  readonly look: Look;
  readonly moment: SlipMoment | null;
  /** Questions that the maker cannot answer. */
  readonly unsure: readonly Question[];
}

/** Where the slip is found, or how loose the edge is. */
export type SlipQuestion = 'loose' | 'row' | 'move' | 'move-or-rehang' | 'stripe';

/** What stands to be answered, as it was asked. */
export type OpenQuestion =
  | { readonly about: 'fact'; readonly fact: Fact }
  | { readonly about: SlipQuestion }
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

export function nextQuestion(
  job: Job,
  { look, moment, unsure }: Evidence,
  stories: readonly Story[],
  elsewhere: readonly number[],
): Question | null {
  if (stories.length === 0) return null;
  const hasCounter = !job.plan.brief.bed.without.includes('counter');
  const askable = facts.filter(
    (fact) => look[fact] === undefined && !unsure.includes(fact) && (hasCounter || fact !== 'rowCounter'),
  );
  const valuesOf = (fact: Fact): readonly unknown[] => [
    ...stories.map(({ looks }) => looks[fact]),
    ...elsewhere.map((done) => looksAt(job, done, placeIndex(job).bands)[fact]),
  ];
  const byFact = askable
    .map((fact) => ({ fact, left: expectedLeft(valuesOf(fact)) }))
    .filter(({ left }) => left < stories.length + elsewhere.length)
    .toSorted((a, b) => a.left - b.left);
  if (byFact[0]) return byFact[0].fact;
  if (
    look.looseEdgeLoop === undefined &&
    !unsure.includes('loose') &&
    stories.some(({ looks }) => looks.looseEdgeLoop) &&
    stories.some(({ looks }) => !looks.looseEdgeLoop)
  )
    return 'loose';
  if (stories.length < 2) return null;
  if (moment === null) return unsure.includes('moment') ? null : 'moment';
  return moment.by === 'stripe' && !unsure.includes('row') ? 'row' : null;
}

/** A slip's moment is asked for by what it was: the number of the move, of the stripe, or of the row. */
export function openQuestionOf(question: Question, stories: readonly Story[]): OpenQuestion {
  if (question === 'loose' || question === 'row') return { about: question };
  if (question !== 'moment') return { about: 'fact', fact: question };
  const slips = stories.flatMap((story) => story.slips);
  const [slip] = slips;
  if (slips.some(isShapingSlip) && slips.some(({ is }) => is.startsWith('rehang')))
    return { about: 'move-or-rehang' };
  if (slip && isShapingSlip(slip)) return { about: 'move' };
  return { about: slip && ('stripe' in slip || slip.is.startsWith('rows')) ? 'stripe' : 'row' };
}
