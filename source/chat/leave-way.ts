/**
 * Leaving a way back or a mend in the middle: the loops are then where no step of the plan has them, so it is asked first, and
 * who only leaves the bag finds the way where it was.
 */
import type { OpenQuestion } from '../session/diagnose/question.ts';
import type { Session } from '../session/session.ts';
import { goesBack, type Way } from '../session/way.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { sayWayStep } from '../wording/finding.ts';
import { sayAsked } from '../wording/finding-answer.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, Intent } from './grammar/intent.ts';
import { offer, type Reply, stillHolds, type Talk } from './talk.ts';
import { answer, faultLine } from './transcript.ts';

/** Intents that need the work at a place of the plan. */
const leavesWay: ReadonlySet<Intent['kind']> = new Set(['go', 'find', 'rip', 'replan']);
/** Intents that leave the bag, with the way in it. */
const leavesBag: ReadonlySet<Intent['kind']> = new Set(['quit', 'open', 'new', 'practice', 'another']);

/** The question that an intent meets in the middle of a way; null where it may go on. */
export function askBeforeLeaving(
  session: Session,
  intent: Intent,
  { pending }: Talk,
  words: Words,
): Reply | null {
  const { way } = session;
  const isMiddle = way !== null && (leavesWay.has(intent.kind) || leavesBag.has(intent.kind));
  // Who asks to leave the bag a second time means it.
  if (!isMiddle || (pending !== null && leavesBag.has(intent.kind) && pending.kind === intent.kind))
    return null;
  const question = questionOf(way, leavesBag.has(intent.kind));
  const fault = { code: 'way/on-the-way' } as const;
  return offer(session, [faultLine(fault, sayAsked(question, words))], { question, pending: intent });
}

const questionOf = (way: Way, staysOnIt: boolean): OpenQuestion => ({
  about: 'leave-way',
  back: goesBack(way),
  at: way.at + 1,
  of: way.steps.length,
  staysOnIt,
});

/** Yes or no to that question. */
export function answerLeaving(
  session: Session,
  yes: boolean,
  talk: Talk,
  words: Words,
): Result<Reply, ChatFault> {
  const { pending } = talk;
  const { way } = session;
  if (pending === null || way === null || !stillHolds(talk, session))
    return fail({ code: 'chat/nothing-asked' });
  if (yes) return succeed({ kind: 'leave', next: pending, stops: leavesWay.has(pending.kind) });
  return succeed(offer(session, answer(sayWayStep(way, words) ?? ''), {}));
}
