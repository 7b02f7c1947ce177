/** What comes back on a line typed at the prompt. Nothing is performed here: the effect is part of the reply. */

import { type Pace, usualPace } from '../journal/pace.ts';
import type { ReplanFault } from '../planning/plan-from.ts';
import type { Command } from '../session/command.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import type { RipBackFault } from '../session/rip-back/rip-back.ts';
import type { Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { say } from '../shared/say.ts';
import { metric, type Units } from '../shared/units.ts';
import { stepAt } from '../steps/job.ts';
import { doneBefore, type LandmarkFault } from '../steps/landmarks.ts';
import type { ChatFault, Intent, NamedPlace } from './intent.ts';
import { inCm } from './length.ts';
import { answer, type Line } from './line.ts';
import { measuredCommand } from './measured.ts';
import { replyToFind } from './reply-find.ts';
import { replyToReplan } from './reply-replan.ts';
import { replyToRip } from './reply-rip.ts';
import { noTalk, type Reply, type Talk, takeOffer } from './talk.ts';
import { weighCommand } from './weigh.ts';
import { cautionLines } from './wording/cautions-page.ts';
import { sayCord } from './wording/cord.ts';
import { explainWhy, explainWord } from './wording/explain.ts';
import { sayCannotUndo, sayChanged, sayCounted, sayPlanned } from './wording/finding-undone.ts';
import { sayMeasured } from './wording/measured.ts';
import { sayMarks, sayNotes, sayPlace, sayTimeLeft, sayWhere } from './wording/place.ts';
import { formatPlanPage } from './wording/plan-page.ts';
import { sayStep } from './wording/steps.ts';
import { sayWeighed } from './wording/weighed.ts';

export type ReplyFault = ChatFault | LandmarkFault | SeenFault | RipBackFault | ReplanFault;

export function replyTo(
  session: Session,
  intent: Intent,
  units: Units = metric,
  talk: Talk = noTalk,
  pace: Pace = usualPace,
): Result<Reply, ReplyFault> {
  switch (intent.kind) {
    case 'do':
      return succeed({ kind: 'do', command: intent.command });
    case 'go':
      return replyToGo(session, intent.to);
    case 'find':
      return replyToFind(session, intent, talk);
    case 'rip': {
      const done = doneAt(session, intent.to);
      return done.ok ? replyToRip(session, done.value) : done;
    }
    case 'replan':
      return replyToReplan(session, intent.wish, units);
    case 'weigh':
      return succeed({ kind: 'do', command: weighCommand(session, intent.weighed, units) });
    case 'measured':
      return succeed({ kind: 'do', command: measuredCommand(intent, units) });
    case 'cord-length':
      return succeed({ kind: 'do', command: { do: 'cord-measured', lengthCm: inCm(intent.length, units) } });
    case 'choose':
      return takeOffer(session, talk, intent.number);
    case 'show':
      return succeed({ kind: 'say', lines: show(session, intent.what, units, pace) });
    case 'words':
      return succeed({ kind: 'say', lines: answer(...explainWord(intent.about)) });
    case 'why':
      return succeed({ kind: 'say', lines: answer(...explainWhy(intent.about, session.job.plan, units)) });
    case 'help':
    case 'set':
    case 'pedal':
    case 'again':
    case 'draw':
    case 'sheet':
    case 'save':
    case 'stop':
    case 'bags':
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
function doneAt({ job, marks }: Session, to: NamedPlace): Result<number, ChatFault | LandmarkFault> {
  if (to.at !== 'mark') return doneBefore(job, to);
  const done = marks.get(to.name);
  return done === undefined
    ? fail({ code: 'chat/no-such-mark', name: to.name, known: [...marks.keys()] })
    : succeed(done);
}

function show(
  session: Session,
  what: Extract<Intent, { readonly kind: 'show' }>['what'],
  units: Units,
  pace: Pace,
): readonly Line[] {
  switch (what) {
    case 'where':
      return answer(...sayWhere(session), ...sayTimeLeft(session, pace, units));
    case 'plan':
      return answer(...formatPlanPage(session.job.plan, { units, pace }).split('\n'));
    case 'cautions':
      return answer(...cautionLines(session.job));
    case 'notes':
      return answer(...sayNotes(session));
    case 'marks':
      return answer(...sayMarks(session));
  }
}

/** What the transcript says once a command has been carried out. */
export function sayDone(
  before: Session,
  after: Session,
  command: Command,
  units: Units = metric,
): readonly Line[] {
  switch (command.do) {
    case 'confirm':
      return doneLines(before, after);
    case 'back':
      return answer(
        say`Taken back: ${sayPlace(after)}`,
        ...sayCounted(before, after, command.do),
        ...sayChanged(before, after, units),
        ...sayCannotUndo(before, after),
      );
    case 'redo':
      return answer(
        say`Done again: ${sayPlace(after)}`,
        ...sayCounted(before, after, command.do),
        ...sayChanged(before, after, units),
      );
    case 'go':
      return answer(say`Jumped: ${sayPlace(after)}`, ...sayWhere(after).slice(1));
    case 'note':
      return answer(say`Noted: ${command.text}`);
    case 'weigh':
      return answer(sayWeighed(after, command.yarn, units));
    case 'measured':
      return answer(...sayMeasured(after, units));
    case 'cord-measured':
      return answer(sayCord(after, units));
    case 'rip':
      return answer(say`Ripped back: ${sayPlace(after)}`, ...sayWhere(after).slice(1));
    case 'mend':
      return answer(say`Set right: ${sayPlace(after)}`, ...sayWhere(after).slice(1));
    case 'replan':
      return answer(say`Planned anew: ${sayPlanned(after, units)}.`, say`Now ${sayPlace(after)}`);
    case 'mark':
      return answer(say`Marked this place as ${command.name}.`);
  }
}

function doneLines({ done, job }: Session, after: Session): readonly Line[] {
  const last = after.done;
  const text =
    last === done + 1
      ? `${last} ${sayStep(job.plan, stepAt(job, last))}`
      : say`${done + 1} to ${last}: ${last - done} steps confirmed`;
  return [{ tone: 'done', text }];
}
