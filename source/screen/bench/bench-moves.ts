/** What confirming and taking back do: a command for the log, of the plan or of the way that the hands are on. */

import { sayDone } from '../../chat/say-done.ts';
import { answer, faultLine } from '../../chat/talk.ts';
import type { Command } from '../../session/command.ts';
import { updateSession } from '../../session/update-session.ts';
import { formatFault } from '../../wording/faults.ts';
import { sayWayStep } from '../../wording/finding.ts';
import { sayNow } from '../../wording/place.ts';
import { andThen, type BenchState, only, type Reaction, withLines } from './bench-state.ts';

/** Carries out a command, and has it recorded; where it is refused, says why and leaves the session as it is. */
function move(state: BenchState, command: Command): Reaction {
  const { session, words } = state;
  const after = updateSession(session, command);
  if (!after.ok) return only(withLines(state, [faultLine(after.fault, formatFault(after.fault, words))]));
  const told = sayDone(session, after.value, command, words);
  return [withLines({ ...state, session: after.value }, told), [{ do: 'record', command, first: true }]];
}

/** Confirms so many steps of a way; what is left when it ends is not confirmed. */
function confirmOnWay(state: BenchState, count: number): Reaction {
  if (count === 0 || state.session.way === null) return only(state);
  const done = move(state, { do: 'on-the-way' });
  return done[1].length > 0 ? andThen(done, (after) => confirmOnWay(after, count - 1)) : done;
}

export function perform(state: BenchState, command: Command): Reaction {
  const isOnWay = state.session.way !== null && command.do === 'confirm';
  return isOnWay ? confirmOnWay(state, command.count) : move(state, command);
}

/** What is to be done now, in the words of the way where the hands are on one. */
export const sayNowIn = ({ session, words }: BenchState): string =>
  (session.way && sayWayStep(session.way, words)) ?? sayNow(session, words);

/** Says again what is to be done, to the ears too. */
export const againIn = (state: BenchState): Reaction => [
  withLines(state, answer(sayNowIn(state))),
  [{ do: 'announce', why: 'again' }],
];
