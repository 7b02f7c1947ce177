/** An offer in one sentence, and the question that would tell it from the others. */
import type { Units } from '../../shared/units.ts';
import type { Offer, Talk } from '../talk.ts';
import { formatLook, formatMend, formatRipBack, formatTraces } from './finding.ts';
import { sayLoose, sayQuestion } from './finding-answer.ts';
import { formatReplanChoice } from './finding-replan.ts';

export function sayOffer(offer: Offer, units: Units): string {
  switch (offer.is) {
    case 'place':
      return formatLook(offer.place);
    case 'mend':
      return formatMend(offer.mend).join(' ');
    case 'way-back':
      return formatRipBack(offer.back);
    case 'choice':
      return formatReplanChoice(offer.choice, units);
  }
}

/** What will show of a slip that is kept; null where nothing does. */
export const sayTrace = (offer: Offer): string | null =>
  offer.is === 'mend' ? (formatTraces(offer.mend)[0] ?? null) : null;

export const sayQuestions = ({ asked, askedLoose }: Talk): readonly string[] => [
  ...(asked === null ? [] : [sayQuestion(asked)]),
  ...(askedLoose === null ? [] : [sayLoose(askedLoose)]),
];
