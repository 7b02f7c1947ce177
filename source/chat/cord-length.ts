/** How long the first rounds of the cord are, as it is typed: `cord 7.4 cm`. */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { ChatFault, Intent } from './intent.ts';
import { lengthOf, lengthPattern } from './length.ts';

export const cordUsage = 'cord 7.4';

const oneLength = new RegExp(`^${lengthPattern}$`, 'i');

export function parseCordLength(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: cordUsage });
  const found = oneLength.exec(rest);
  if (!found) return fail({ code: 'chat/not-a-length', text: rest, usage: cordUsage });
  return succeed({ kind: 'cord-length', length: lengthOf(found[1], found[2]) });
}
