/** An offer in one sentence, and the question that would tell it from the others. */
import type { Words } from '../../wording/words.ts';
import type { Offer, Talk } from '../talk.ts';
import { formatLook, formatMend, formatRipBack, formatTraces } from './finding.ts';
import { sayLoose, sayQuestion } from './finding-answer.ts';
import { formatReplanChoice } from './finding-replan.ts';

export function sayOffer(offer: Offer, words: Words): string {
  switch (offer.is) {
    case 'place':
      return formatLook(offer.place, words);
    case 'mend':
      return formatMend(offer.mend, words).join(' ');
    case 'way-back':
      return formatRipBack(offer.back, words);
    case 'choice':
      return formatReplanChoice(offer.choice, words);
  }
}

/** What will show of a slip that is kept; null where nothing does. */
export const sayTrace = (offer: Offer, words: Words): string | null =>
  offer.is === 'mend' ? (formatTraces(offer.mend, words)[0] ?? null) : null;

export const sayQuestions = ({ asked, askedLoose }: Talk, words: Words): readonly string[] => [
  ...(asked === null ? [] : [sayQuestion(asked, words)]),
  ...(askedLoose === null ? [] : [sayLoose(askedLoose, words)]),
];
