/** What to do now when something goes wrong at the bench, with the needles of this place. */

import { bedNow } from '../../session/bed-now.ts';
import type { Session } from '../../session/session.ts';
import { rowAt } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import { type Trouble, troubles } from '../trouble.ts';

/** All that can go wrong where nothing is said of it. */
export function sayTrouble(session: Session, what: Trouble | null, { trouble }: Words): readonly string[] {
  if (what === null) return [trouble.list(troubles.map((one) => trouble[one].title))];
  const bed = bedNow(session);
  const at = {
    edges: bed?.left && bed.right ? ([bed.left, bed.right] as const) : null,
    row: rowAt(session.job, session.done),
  };
  return [trouble[what].now(at), trouble[what].help(at)];
}
