/** What a typed line does at the bench. */

import { formatChatFault } from '../../chat/chat-faults.ts';
import { type Intent, type Known, knownOf } from '../../chat/grammar/intent.ts';
import { formatHelp, type Scene } from '../../chat/help.ts';
import { parseLine } from '../../chat/parse-line.ts';
import { type ReplyFault, replyTo } from '../../chat/reply.ts';
import { answer, faultLine, type Reply, stillHolds } from '../../chat/talk.ts';
import { type Pace, usualPace } from '../../journal/pace.ts';
import type { Command } from '../../session/command.ts';
import { formatSaveStatus } from '../../wording/file-faults.ts';
import { againIn, perform } from './bench-moves.ts';
import { beginPedal, sayPast, setAndTell, tellSettings } from './bench-settings.ts';
import { andThen, type BenchState, type Leaving, only, type Reaction, withLines } from './bench-state.ts';

export function answerLine(state: BenchState, text: string): Reaction {
  const typed = text.trim();
  const heard = typed === '' ? state : withLines(state, [{ tone: 'typed', text: typed }]);
  const intent = parseLine(text, state.words, knownOf(state.session, waitingIn(state)));
  if (!intent.ok) return refuse(asksForOffers(typed) ? withoutOffers(heard) : heard, intent.fault);
  const { value } = intent;
  const tellsTime = value.kind === 'show' && (value.what === 'plan' || value.what === 'where');
  return tellsTime && state.pace === null
    ? [heard, [{ do: 'read-pace', asked: value }]]
    : answerIntent(heard, value);
}

/** What was asked, once the pace of the maker's own bags is known. */
export function answerInPace(state: BenchState, pace: Pace, asked: Intent | null): Reaction {
  const paced = { ...state, pace };
  return asked === null ? only(paced) : answerIntent(paced, asked);
}

const waitingIn = ({ talk, session }: BenchState): Pick<Known, 'question' | 'offers'> =>
  stillHolds(talk, session) ? { question: talk.question, offers: talk.offers.length } : {};

function answerIntent(state: BenchState, intent: Intent): Reaction {
  const { session, words, talk, pace } = state;
  const reply = replyTo(session, intent, words, talk, pace ?? usualPace);
  if (reply.ok) return carryOut(state, reply.value);
  return refuse(makesOffers.has(intent.kind) ? withoutOffers(state) : state, reply.fault);
}

const makesOffers: ReadonlySet<string> = new Set<Intent['kind']>(['find', 'rip', 'replan']);

const asksForOffers = (typed: string): boolean => makesOffers.has(typed.split(/\s/)[0]?.toLowerCase() ?? '');

/** Who asked for other offers and was refused does not mean the old ones any more. */
const withoutOffers = (state: BenchState): BenchState => ({
  ...state,
  talk: { ...state.talk, offers: [] },
});

const refuse = (state: BenchState, fault: ReplyFault): Reaction =>
  only(withLines(state, [faultLine(fault, formatChatFault(fault, state.words))]));

const sceneOf = ({ session, talk, saving, words }: BenchState): Scene => ({
  session,
  way: session.way,
  trouble: formatSaveStatus(saving, words),
  offers: stillHolds(talk, session) ? talk.offers.length : 0,
});

function carryOut(state: BenchState, reply: Reply): Reaction {
  switch (reply.kind) {
    case 'do':
      return performTimes(state, reply.command, reply.times ?? 1);
    case 'say':
      return only(withLines(state, reply.lines));
    case 'offer':
      return offer(state, reply);
    case 'leave':
      return reply.stops
        ? andThen(perform(state, { do: 'stop' }), (after) => answerIntent(after, reply.next))
        : answerIntent(state, reply.next);
    case 'stop':
      return perform(state, { do: 'stop' });
    case 'help': {
      const past = sayPast(Object.keys(state.settings.pedals), state.words);
      return only(withLines(state, answer(...formatHelp(reply.topic, sceneOf(state), state.words), ...past)));
    }
    case 'set':
      return setAndTell(state, reply.change);
    case 'settings':
      return tellSettings(state, reply.of);
    case 'pedal':
      return beginPedal(state, reply.act);
    case 'again':
      return againIn(state);
    case 'draw':
      return only({ ...state, picture: reply.picture });
    case 'bags':
      return [state, [{ do: 'list-bags' }]];
    case 'sheet':
      return [state, [{ do: 'write-sheet', session: state.session, out: reply.out }]];
    case 'tag':
      return [state, [{ do: 'write-tag', session: state.session, out: reply.out }]];
    case 'record':
      return [state, [{ do: 'tell-record' }]];
    case 'keep':
    case 'forget':
    case 'shelf':
      return [state, [{ do: 'use-shelf', wish: reply }]];
    case 'party':
      return [state, [{ do: 'use-party', what: reply.what }]];
    case 'another':
      return [state, [{ do: 'plan-another', wish: reply.wish }]];
    case 'save':
      return [state, [{ do: 'save-elsewhere', out: reply.out }]];
    case 'open':
      return [state, [{ do: 'find-bag', bag: reply.bag }]];
    case 'discard':
      return [state, [{ do: 'discard-bag', bag: reply.bag, sure: reply.sure }]];
    case 'restore':
      return [state, [{ do: 'restore-bag' }]];
    case 'new':
    case 'practice':
      return askToLeave(state, reply.kind);
    case 'quit':
      return askToLeave(state, 'left');
  }
}

/** Over and over, as far as it can be done. */
function performTimes(state: BenchState, command: Command, times: number): Reaction {
  const done = perform(state, command);
  return times > 1 && done[1].length > 0
    ? andThen(done, (after) => performTimes(after, command, times - 1))
    : done;
}

function offer(
  state: BenchState,
  { record, talk, lines }: Extract<Reply, { readonly kind: 'offer' }>,
): Reaction {
  const recorded = record.reduce<Reaction>(
    (reaction, command) => andThen(reaction, (after) => perform(after, command)),
    only(state),
  );
  return andThen(recorded, (after) => only(withLines({ ...after, talk }, lines)));
}

/** Saving is tried a last time; one who was told of a loss and asks again may go. */
export const askToLeave = (state: BenchState, how: Leaving): Reaction =>
  state.toldOfLoss === state.session
    ? only({ ...state, end: how })
    : [state, [{ do: 'save-and-leave', how }]];
