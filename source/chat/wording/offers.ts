/** An offer in one sentence, and the question that would tell it from the others. */
import type { Words } from '../../wording/words.ts';
import type { Offer, Talk } from '../talk.ts';
import { formatLook, formatRipBack } from './finding.ts';
import { formatReplanChoice } from './finding-replan.ts';
import { sayShows, sayWholeMend } from './finding-slips.ts';

export function sayOffer(offer: Offer, words: Words): string {
  switch (offer.is) {
    case 'place':
      return formatLook(offer.place, words);
    case 'mend':
      return sayWholeMend(offer.remedy.mend, words);
    case 'way-back':
      return formatRipBack(offer.back, words);
    case 'choice':
      return formatReplanChoice(offer.choice, words);
  }
}

/** What will show of a slip that is kept; null where nothing does. */
export const sayTrace = (offer: Offer, words: Words): string | null =>
  offer.is === 'mend' ? (sayShows(offer.remedy.mend, words)[0] ?? null) : null;

export const sayQuestions = ({ question }: Talk): readonly string[] => (question === null ? [] : [question]);
