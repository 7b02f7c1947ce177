/** What confirming and taking back do: a command for the log, or a step of the way that the hands are on. */
import { answer, faultLine, type Line } from '../../chat/line.ts';
import { sayDone } from '../../chat/reply.ts';
import { noTalk } from '../../chat/talk.ts';
import { sayWayStep, stepBack, stepOn, type Way, wayAfter } from '../../chat/way.ts';
import { formatFault } from '../../chat/wording/faults.ts';
import { sayBegun, sayHalfMended, sayLeft } from '../../chat/wording/finding-answer.ts';
import { sayNow } from '../../chat/wording/place.ts';
import type { Command } from '../../session/command.ts';
import { updateSession } from '../../session/update-session.ts';
import { andThen, type BenchState, only, type Reaction, withLines } from './bench-state.ts';

/** Carries out a command, and has it recorded; where it is refused, says why and leaves the session as it is. */
function move(state: BenchState, command: Command): Reaction {
  const { session, words } = state;
  const after = updateSession(session, command);
  if (!after.ok) return only(withLines(state, [faultLine(after.fault, formatFault(after.fault, words))]));
  const moved = { ...state, session: after.value, way: wayAfter(state.way, command, after.value) };
  const told = sayDone(session, after.value, command, words);
  return [withLines(moved, told), [{ do: 'record', command, first: true }]];
}

/** The next step of a way is done: the place follows where the log can keep it. */
function goOn(state: BenchState, way: Way): Reaction {
  const command = way.steps[way.at]?.command ?? null;
  const line: Line = { tone: 'done', text: sayWayStep(way, state.words) ?? '' };
  const next = stepOn(way);
  if (command === null) return only(withLines({ ...state, way: next }, [line]));
  const [moved, effects] = move(state, command);
  if (effects.length === 0) return [moved, effects];
  const told = next ? [] : moved.lines.slice(state.lines.length);
  return [withLines({ ...moved, lines: state.lines, way: next }, [line, ...told]), effects];
}

/** Confirms so many steps of a way; what is left when it ends is not confirmed. */
function confirmOnWay(state: BenchState, count: number): Reaction {
  if (count === 0 || state.way === null) return only(state);
  const done = goOn(state, state.way);
  const went = done[0].way !== state.way;
  return went ? andThen(done, (after) => confirmOnWay(after, count - 1)) : done;
}

export function perform(state: BenchState, command: Command): Reaction {
  const { way } = state;
  if (way && command.do === 'confirm') return confirmOnWay(state, command.count);
  if (way && command.do === 'back') {
    const back = stepBack(way);
    if (back === 'stop') return leaveWay(state, way);
    if (back !== 'back') return only({ ...state, way: back });
  }
  return move(state, command);
}

export const beginWay = (state: BenchState, way: Way): Reaction =>
  only(withLines({ ...state, way, talk: noTalk }, answer(sayBegun(state.words))));

export const leaveWay = (state: BenchState, way: Way): Reaction => {
  const told = way.kind === 'mend' && way.at > 0 ? sayHalfMended(state.words) : sayLeft(state.words);
  return only(withLines({ ...state, way: null }, answer(told)));
};

/** What is to be done now, in the words of the way where the hands are on one. */
export const sayNowIn = ({ way, session, words }: BenchState): string =>
  (way && sayWayStep(way, words)) ?? sayNow(session, words);

/** Says again what is to be done, to the ears too. */
export const againIn = (state: BenchState): Reaction => [
  withLines(state, answer(sayNowIn(state))),
  [{ do: 'announce', why: 'again' }],
];
