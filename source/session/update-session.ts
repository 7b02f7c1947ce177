import { fail, type Result, succeed } from '../shared/result.ts';
import type { Command, SessionFault } from './command.ts';
import { isFinished, type Session } from './session.ts';

/**
 * The one state machine: the session after `command`, or why it cannot be done. Opening, resuming and replaying a log
 * are folds over this function, and its cost does not depend on what went before.
 */
export function updateSession(session: Session, command: Command): Result<Session, SessionFault> {
  switch (command.do) {
    case 'confirm':
      return confirm(session, command.count);
    case 'take-back':
      return takeBack(session);
    case 'redo':
      return redo(session);
    case 'jump':
      return jump(session, command.done);
    case 'note':
      return note(session, command.text);
    case 'mark':
      return mark(session, command.name);
  }
}

type Outcome = Result<Session, SessionFault>;

const goTo = (session: Session, done: number): Outcome =>
  succeed({ ...session, done, takeBack: { done: session.done, earlier: session.takeBack }, redo: null });

function confirm(session: Session, count: number): Outcome {
  const left = session.job.stepCount - session.done;
  if (isFinished(session)) return fail({ code: 'session/nothing-to-confirm' });
  if (!Number.isInteger(count) || count < 1 || count > left) {
    return fail({ code: 'session/too-many-steps', count, left });
  }
  return goTo(session, session.done + count);
}

function takeBack(session: Session): Outcome {
  const { takeBack: place } = session;
  if (!place) return fail({ code: 'session/nothing-to-take-back' });
  const redoPlace = { done: session.done, earlier: session.redo };
  return succeed({ ...session, done: place.done, takeBack: place.earlier, redo: redoPlace });
}

function redo(session: Session): Outcome {
  const { redo: place } = session;
  if (!place) return fail({ code: 'session/nothing-to-redo' });
  const takeBackPlace = { done: session.done, earlier: session.takeBack };
  return succeed({ ...session, done: place.done, redo: place.earlier, takeBack: takeBackPlace });
}

function jump(session: Session, done: number): Outcome {
  const { stepCount } = session.job;
  if (!Number.isInteger(done) || done < 0 || done > stepCount) {
    return fail({ code: 'session/no-such-step', step: done + 1, stepCount });
  }
  return done === session.done ? fail({ code: 'session/already-there', done }) : goTo(session, done);
}

function note(session: Session, text: string): Outcome {
  if (text.trim() === '') return fail({ code: 'session/nothing-to-say', what: 'note' });
  return succeed({ ...session, notes: [...session.notes, { done: session.done, text }] });
}

function mark(session: Session, name: string): Outcome {
  if (name.trim() === '') return fail({ code: 'session/nothing-to-say', what: 'mark' });
  return succeed({ ...session, marks: new Map(session.marks).set(name, session.done) });
}
