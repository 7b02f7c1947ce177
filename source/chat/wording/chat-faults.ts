import { exhaustive } from '../../shared/exhaustive.ts';
import type { LandmarkFault } from '../../steps/landmarks.ts';
import type { ChatFault } from '../intent.ts';
import { formatList } from './numbers.ts';

/** Why a typed line could not be carried out, and what to type instead. */
export function formatChatFault(fault: ChatFault | LandmarkFault): string {
  switch (fault.code) {
    case 'chat/unknown-command':
      return fault.nearest
        ? `There is no command ${fault.word}. Did you mean ${fault.nearest}?`
        : `There is no command ${fault.word}. Type help to see them all.`;
    case 'chat/ambiguous':
      return `${fault.word} could be ${formatList(fault.choices, 'or')}: type one more letter.`;
    case 'chat/not-a-count':
      return `${fault.word} is not a whole number. For example: ${fault.usage}.`;
    case 'chat/not-a-choice':
      return `${fault.word} is not one of ${formatList(fault.choices, 'or')}.`;
    case 'chat/needs-more':
      return `Something is missing. For example: ${fault.usage}.`;
    case 'chat/unknown-place':
      return `${fault.word} is not a place to go to. For example: ${fault.usage}; type help go for more.`;
    case 'chat/no-such-mark':
      return fault.known.length > 0
        ? `There is no mark ${fault.name}. Marks: ${formatList(fault.known)}.`
        : 'No marks have been made yet. Type mark and a name.';
    case 'steps/no-such-place':
      return `There is no ${fault.what} ${fault.number}: this bag has ${fault.most}.`;
    default:
      return exhaustive(fault);
  }
}
