/** What taking back and doing again change besides the place, and what the hands cannot take back. */

import { irreversibleOf } from '../../session/rip-back/irreversible.ts';
import type { Session } from '../../session/session.ts';
import { stepAt } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import { formatIrreversible } from './finding.ts';

/** `64 rows round, 13.2 cm wide and 17.9 cm deep` */
export const sayPlanned = ({ job: { plan } }: Session, words: Words): string =>
  words.finding.planSize(plan.rows, plan.size.widthCm, plan.size.depthCm);

/** Which steps count otherwise than the way of the hands would have it: done again by taking back, undone by doing again. */
export function sayCounted(
  before: Session,
  after: Session,
  command: 'back' | 'redo',
  words: Words,
): readonly string[] {
  const rises = after.done > before.done;
  if (after.done === before.done || rises !== (command === 'back')) return [];
  const [first, last] = rises ? [before.done + 1, after.done] : [after.done + 1, before.done];
  if (first === last)
    return [rises ? words.finding.oneDoneAgain(first) : words.finding.oneUndoneAgain(first)];
  return [rises ? words.finding.manyDoneAgain(first, last) : words.finding.manyUndoneAgain(first, last)];
}

/** The plan, or the slips set right, where taking back or doing again has changed them. */
export function sayChanged(before: Session, after: Session, words: Words): readonly string[] {
  const plan = before.job === after.job ? [] : [words.finding.planNow(sayPlanned(after, words))];
  const mends = after.mends.length - before.mends.length;
  if (mends === 0) return plan;
  return [...plan, mends < 0 ? words.finding.mendTakenBack : words.finding.mendRedone];
}

const listed = 2;

/** Taking back moves the place, not the work: what was cut or let go of stays so. */
export function sayCannotUndo(before: Session, after: Session, words: Words): readonly string[] {
  if (before.job !== after.job) return [];
  const found: string[] = [];
  let more = 0;
  for (let number = before.done; number > after.done; number--) {
    const why = irreversibleOf(stepAt(before.job, number));
    if (why && found.length < listed)
      found.push(words.finding.irreversibleStep(number, formatIrreversible(why, words)));
    else if (why) more++;
  }
  return more === 0 ? found : [...found, words.finding.irreversibleBefore(more)];
}
