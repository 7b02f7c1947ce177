/** What comes back on a line typed at the prompt. Nothing is performed here: the effect is part of the reply. */
import { type Pace, usualPace } from '../journal/pace.ts';
import type { ReplanFault } from '../planning/plan-from.ts';
import type { Command } from '../session/command.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import { marksOf } from '../session/marks.ts';
import { type RipBackFault, ripBack } from '../session/rip-back/rip-back.ts';
import { bedNow, type Session } from '../session/session.ts';
import type { WayFault } from '../session/way.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { rowAt, stepAt } from '../steps/job.ts';
import { doneBefore, type LandmarkFault } from '../steps/landmarks.ts';
import { cautionLines } from '../wording/cautions.ts';
import { explainWhy, explainWord } from '../wording/explain.ts';
import { sayCannotUndo, sayChanged, sayCounted, sayPlanned, sayWayStep } from '../wording/finding.ts';
import { sayWayBack } from '../wording/finding-answer.ts';
import { sayCord, sayMeasured, sayWeighed } from '../wording/measured.ts';
import { sayMarks, sayNotes, sayPlace, sayPlaceOrWay, sayTimeLeft, sayWhere } from '../wording/place.ts';
import { formatPlanPage } from '../wording/plan-page.ts';
import { sayStep, sayTools } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, Intent, NamedPlace } from './grammar/intent.ts';
import { inCm, measuredCommand, weighCommand } from './grammar/parse-measured.ts';
import { sayTrouble } from './grammar/trouble.ts';
import { answerLeaving, askBeforeLeaving } from './leave-way.ts';
import { replyToFind } from './reply-find.ts';
import { replyToReplan } from './reply-replan.ts';
import { noTalk, offer, type Reply, type Talk, takeOffer } from './talk.ts';
import { answer, type Said } from './transcript.ts';

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
    case 'do':
      return succeed(intent);
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
    case 'help':
    case 'set':
    case 'settings':
    case 'pedal':
    case 'again':
    case 'draw':
    case 'sheet':
    case 'save':
    case 'tag':
    case 'record':
    case 'another':
    case 'keep':
    case 'forget':
    case 'shelf':
    case 'party':
    case 'stop':
    case 'bags':
    case 'open':
    case 'discard':
    case 'restore':
    case 'practice':
    case 'new':
    case 'quit':
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
  if (to.at === 'rows-back') return doneBefore(job, { at: 'row', number: rowAt(job, now) - to.count + 1 });
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

/** What the transcript says once a command has been carried out. */
export function sayDone(before: Session, after: Session, command: Command, words: Words): readonly Said[] {
  switch (command.do) {
    case 'confirm':
      return doneLines(before, after, words);
    case 'back':
      return answer(
        words.prompt.done.back(sayPlaceOrWay(after, words)),
        ...sayCounted(before, after, command.do, words),
        ...sayChanged(before, after, words),
        ...sayCannotUndo(before, after, words),
      );
    case 'redo':
      return answer(
        words.prompt.done.redo(sayPlaceOrWay(after, words)),
        ...sayCounted(before, after, command.do, words),
        ...sayChanged(before, after, words),
      );
    case 'go':
      return answer(words.prompt.done.go(sayPlace(after, words)), ...sayWhere(after, words).slice(1));
    case 'note':
      return answer(words.prompt.done.note(command.text));
    case 'weigh':
      return answer(sayWeighed(after, command.yarn, words));
    case 'measured':
      return answer(...sayMeasured(after, words));
    case 'cord':
      return answer(sayCord(after, words));
    case 'rip':
    case 'mend':
      return after.way === null
        ? answer(words.prompt.done.setRight(sayPlace(after, words)))
        : answer(words.prompt.oneAtATime);
    case 'on-the-way':
      return sayOnWay(before, after, words);
    case 'stop':
      return sayLeft(before, after, words);
    case 'replan':
      return answer(
        words.prompt.done.replan(sayPlanned(after, words)),
        words.prompt.done.now(sayPlace(after, words)),
      );
    case 'rename':
      return answer(words.logs.renamed(before.name, after.name));
    case 'mark':
      return answer(words.prompt.done.mark(command.name));
  }
}

/** A way that is left: where the work stands then, and the weights, if they were off for it. */
function sayLeft(before: Session, after: Session, words: Words): readonly Said[] {
  const left = after.adrift ? words.slips.leftBetween : words.prompt.done.stop;
  const cares = before.way?.steps.slice(0, before.way.at).map(({ care }) => care) ?? [];
  const off = cares.find((care) => care?.is === 'weights-off');
  const bed = bedNow(before);
  if (off?.is !== 'weights-off' || !bed?.left || !bed.right) return answer(left);
  const { comb } = off;
  return answer(left, words.slips.care({ is: 'weights-on', left: bed.left, right: bed.right, comb }));
}

/** What was done on a way, and at its end the place. */
function sayOnWay(before: Session, after: Session, words: Words): readonly Said[] {
  const { way } = before;
  const line: Said = { tone: 'done', text: (way && sayWayStep(way, words)) ?? '' };
  if (after.way !== null || way === null) return [line];
  const place =
    way.kind === 'rip'
      ? words.prompt.done.rippedBack(sayPlace(after, words))
      : words.prompt.done.setRight(sayPlace(after, words));
  return [line, ...answer(place, ...sayWhere(after, words).slice(1))];
}

function doneLines({ done, job }: Session, after: Session, words: Words): readonly Said[] {
  const last = after.done;
  const text =
    last === done + 1
      ? `${last} ${sayStep(stepAt(job, last), words)}`
      : words.prompt.done.several(done + 1, last, last - done);
  return [{ tone: 'done', text }];
}
