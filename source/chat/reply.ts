/** What comes back on a line typed at the prompt. Nothing is performed here: the effect is part of the reply. */
import { type Pace, usualPace } from '../journal/pace.ts';
import type { ReplanFault } from '../planning/plan-from.ts';
import type { OpenQuestion } from '../session/diagnose/question.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import { marksOf } from '../session/marks.ts';
import { type RipBackFault, ripBack } from '../session/rip-back/rip-back.ts';
import type { Session } from '../session/session.ts';
import { goesBack, type Way, type WayFault } from '../session/way.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { rowAt } from '../steps/job.ts';
import { doneBefore, type LandmarkFault } from '../steps/landmarks.ts';
import { explainWhy, explainWord } from '../wording/explain.ts';
import { sayWayStep } from '../wording/finding.ts';
import { sayAsked, sayWayBack } from '../wording/finding-answer.ts';
import { sayMarks, sayNotes, sayTimeLeft, sayWhere } from '../wording/place.ts';
import { formatPlanPage } from '../wording/plan-page.ts';
import { cautionLines, sayTools } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, Intent, NamedPlace } from './grammar/intent.ts';
import { inCm, measuredCommand, weighCommand } from './grammar/parse-measured.ts';
import { sayTrouble } from './grammar/trouble.ts';
import { replyToFind } from './reply-find.ts';
import { replyToReplan } from './reply-replan.ts';
import {
  answer,
  faultLine,
  noTalk,
  offer,
  type Reply,
  type Said,
  stillHolds,
  type Talk,
  takeOffer,
} from './talk.ts';

/**
 * The way back to where `toDone` steps are confirmed, shown and offered. Each step taken is kept as what happened, so that
 * a way broken off leaves the place as exact as the work.
 */
function replyToRip(
  session: Session,
  toDone: number,
  to: NamedPlace,
  words: Words,
): Result<Reply, RipBackFault | WayFault> {
  if (session.adrift) return fail({ code: 'way/between-places' });
  const back = ripBack(session, toDone);
  if (!back.ok) return back;
  const { value } = back;
  const orCount = to.at === 'rows-back' && to.count === 1 ? [words.slips.onlyTheCount] : [];
  const further = value.goesOn === null ? [] : [words.slips.further(value.goesOn, value.row + 1)];
  return succeed(
    offer(session, answer(...further, ...sayWayBack(value, words), ...orCount), {
      offers: [{ is: 'way-back', back: value, takes: { kind: 'do', command: { do: 'rip', done: toDone } } }],
    }),
  );
}

export type ReplyFault = ChatFault | LandmarkFault | SeenFault | RipBackFault | ReplanFault | WayFault;

export function replyTo(
  session: Session,
  intent: Intent,
  words: Words,
  talk: Talk = noTalk,
  pace: Pace = usualPace,
): Result<Reply, ReplyFault> {
  const asked = askBeforeLeaving(session, intent, talk, words);
  if (asked) return succeed(asked);
  switch (intent.kind) {
    case 'go':
      return replyToGo(session, intent.to);
    case 'find':
      return replyToFind(session, intent, talk, words);
    case 'rip': {
      const done = doneAt(session, intent.to);
      return done.ok ? replyToRip(session, done.value, intent.to, words) : done;
    }
    case 'replan':
      return replyToReplan(session, intent.wish, words);
    case 'weigh':
      return succeed({ kind: 'do', command: weighCommand(session, intent.weighed, words.units) });
    case 'measured':
      return succeed({ kind: 'do', command: measuredCommand(intent, words.units) });
    case 'cord-length':
      return succeed({
        kind: 'do',
        command: { do: 'cord', lengthCm: inCm(intent.length, words.units) },
      });
    case 'yes-no':
      return answerLeaving(session, intent.yes, talk, words);
    case 'choose':
      return takeOffer(session, talk, intent.number);
    case 'show':
      return succeed({ kind: 'say', lines: show(session, intent.what, words, pace) });
    case 'trouble':
      return succeed({ kind: 'say', lines: answer(...sayTrouble(session, intent.what, words)) });
    case 'words':
      return succeed({ kind: 'say', lines: answer(...explainWord(intent.about, words)) });
    case 'why':
      return succeed({ kind: 'say', lines: answer(...explainWhy(intent.about, session.job.plan, words)) });
    default:
      return succeed(intent);
  }
}

function replyToGo(session: Session, to: NamedPlace): Result<Reply, ChatFault | LandmarkFault> {
  const done = doneAt(session, to);
  return done.ok ? succeed({ kind: 'do', command: { do: 'go', done: done.value } }) : done;
}

/** Steps confirmed where the place comes next. */
function doneAt(session: Session, to: NamedPlace): Result<number, ChatFault | LandmarkFault> {
  const { job, done: now } = session;
  const marks = marksOf(session);
  if (to.at === 'rows-back') {
    const knitted = rowAt(job, now);
    if (to.count > knitted) return fail({ code: 'chat/not-so-many-rows', knitted });
    return doneBefore(job, { at: 'row', number: knitted - to.count + 1 });
  }
  if (to.at !== 'mark') return doneBefore(job, to);
  const done = marks.get(to.name);
  return done === undefined
    ? fail({ code: 'chat/no-such-mark', name: to.name, known: [...marks.keys()] })
    : succeed(done);
}

function show(
  session: Session,
  what: Extract<Intent, { readonly kind: 'show' }>['what'],
  words: Words,
  pace: Pace,
): readonly Said[] {
  switch (what) {
    case 'where':
      return answer(...sayWhere(session, words), ...sayTimeLeft(session, pace, words));
    case 'plan':
      return answer(...formatPlanPage(session.job.plan, words, { pace }).split('\n'));
    case 'tools':
      return answer(...sayTools(session.job.plan, words));
    case 'cautions':
      return answer(...cautionLines(session.job, words));
    case 'notes':
      return answer(...sayNotes(session, words));
    case 'marks':
      return answer(...sayMarks(session, words));
  }
}

// Leaving a way back or a mend in the middle: the loops are then where no step of the plan has them, so it is asked first, and
// who only leaves the bag finds the way where it was.

/** Intents that need the work at a place of the plan. */
const leavesWay: ReadonlySet<Intent['kind']> = new Set(['go', 'find', 'rip', 'replan']);
/** Intents that leave the bag, with the way in it. */
const leavesBag: ReadonlySet<Intent['kind']> = new Set(['quit', 'open', 'new', 'practice', 'another']);

/** The question that an intent meets in the middle of a way; null where it may go on. */
function askBeforeLeaving(session: Session, intent: Intent, { pending }: Talk, words: Words): Reply | null {
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
function answerLeaving(session: Session, yes: boolean, talk: Talk, words: Words): Result<Reply, ChatFault> {
  const { pending } = talk;
  const { way } = session;
  if (pending === null || way === null || !stillHolds(talk, session))
    return fail({ code: 'chat/nothing-asked' });
  if (yes) return succeed({ kind: 'leave', next: pending, stops: leavesWay.has(pending.kind) });
  return succeed(offer(session, answer(sayWayStep(way, words) ?? ''), {}));
}
