import { type RipBackFault, ripBack } from '../session/rip-back/rip-back.ts';
import type { Session } from '../session/session.ts';
import { type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';
import { answer } from './line.ts';
import { offer, type Reply } from './talk.ts';
import { sayWayBack } from './wording/finding-answer.ts';

/**
 * The way back to where `toDone` steps are confirmed, shown and offered. Each step taken is kept as what happened, so that
 * a way broken off leaves the place as exact as the work.
 */
export function replyToRip(session: Session, toDone: number, words: Words): Result<Reply, RipBackFault> {
  const back = ripBack(session, toDone);
  if (!back.ok) return back;
  const { value } = back;
  const further = value.toDone < value.askedDone ? [words.slips.further(value.row + 1)] : [];
  return succeed(
    offer(session, answer(...further, ...sayWayBack(value, words)), {
      offers: [{ is: 'way-back', back: value, takes: { kind: 'do', command: { do: 'rip', done: toDone } } }],
    }),
  );
}
