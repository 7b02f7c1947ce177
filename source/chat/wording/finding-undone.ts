/** What taking back and doing again change besides the place, and what the hands cannot take back. */
import { irreversibleOf } from '../../session/rip-back/irreversible.ts';
import type { Session } from '../../session/session.ts';
import { count, say } from '../../shared/say.ts';
import { formatLength, metric, type Units } from '../../shared/units.ts';
import { stepAt } from '../../steps/job.ts';
import { formatIrreversible } from './finding.ts';

/** `64 rows round, 13.2 cm wide and 17.9 cm deep` */
export const sayPlanned = ({ job: { plan } }: Session, units: Units = metric): string =>
  say`${plan.rows} rows round, ${formatLength(plan.size.widthCm, units)} wide and ${formatLength(plan.size.depthCm, units)} deep`;

/** Which steps count otherwise than the way of the hands would have it: done again by taking back, undone by doing again. */
export function sayCounted(before: Session, after: Session, command: 'back' | 'redo'): readonly string[] {
  const rises = after.done > before.done;
  if (after.done === before.done || rises !== (command === 'back')) return [];
  const [first, last] = rises ? [before.done + 1, after.done] : [after.done + 1, before.done];
  if (first === last)
    return [rises ? say`Step ${first} counts as done again.` : say`Step ${first} counts as not done again.`];
  return [
    rises
      ? say`Steps ${first} to ${last} count as done again.`
      : say`Steps ${first} to ${last} count as not done again.`,
  ];
}

/** The plan, or the slips set right, where taking back or doing again has changed them. */
export function sayChanged(before: Session, after: Session, units: Units = metric): readonly string[] {
  const plan = before.job === after.job ? [] : [say`The plan is now: ${sayPlanned(after, units)}.`];
  const mends = after.mends.length - before.mends.length;
  if (mends === 0) return plan;
  return [...plan, mends < 0 ? say`The mend is off the record.` : say`The mend is on the record again.`];
}

const listed = 2;

/** Taking back moves the place, not the work: what was cut or let go of stays so. */
export function sayCannotUndo(before: Session, after: Session): readonly string[] {
  if (before.job !== after.job) return [];
  const found: string[] = [];
  let more = 0;
  for (let number = before.done; number > after.done; number--) {
    const why = irreversibleOf(stepAt(before.job, number));
    if (why && found.length < listed) found.push(say`If step ${number} was done: ${formatIrreversible(why)}`);
    else if (why) more++;
  }
  return more === 0 ? found : [...found, say`So with ${count(more, 'step')} before that.`];
}
