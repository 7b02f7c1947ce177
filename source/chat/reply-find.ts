/** Takes up what is seen at the bench with what was said before: facts add up until a line answers no question any more. */
import type { Question } from '../session/diagnose/question.ts';
import { looksAt } from '../session/locate/looks-of.ts';
import { checkSeen, type Look, type SeenFault, yarnsSeen } from '../session/locate/seen.ts';
import type { Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { rowAt } from '../steps/job.ts';
import type { Words } from '../wording/words.ts';
import { answerTo } from './answer-find.ts';
import { type ChatFault, type Intent, saysSomething, type Told } from './grammar/intent.ts';
import { offer, type Reply, stillHolds, type Talk } from './talk.ts';
import { answer } from './transcript.ts';

type FindIntent = Extract<Intent, { readonly kind: 'find' }>;

export function replyToFind(
  session: Session,
  intent: FindIntent,
  before: Talk,
  words: Words,
): Result<Reply, ChatFault | SeenFault> {
  const { told } = intent;
  const holds = before.seen !== null && stillHolds(before, session);
  const isMomentAlone = told.moment !== null && Object.keys(told.seen).length === 0;
  if ((intent.more || isMomentAlone) && !holds) return fail({ code: 'chat/nothing-found-before' });
  const goesOn = holds && (intent.more || isMomentAlone || answers(told, before.asked));
  const said = saysSomething(told);
  if (!said && told.leftOut.length > 0)
    return fail({ code: 'chat/nothing-seen', words: told.leftOut, yarns: yarnsSeen(session.job) });
  const seen = withRow(
    session,
    { ...(goesOn ? before.seen : {}), ...spelt(session, told.seen) },
    told.askRow,
  );
  const moment = told.moment ?? (goesOn ? before.moment : null);
  const asks = intent.unsure && before.asked ? [before.asked] : [];
  const unsure = goesOn ? [...before.unsure, ...asks] : [];
  const { looseEdgeLoop: _, ...plain } = seen;
  const checked = checkSeen(session.job, plain);
  if (!checked.ok) return checked;
  const look: Look = { ...checked.value, looseEdgeLoop: seen.looseEdgeLoop };
  const found = answerTo(session, look, moment, unsure, words);
  if (!found.ok) return found;
  const { slips } = words;
  const isOpen = told.askRow !== null && seen.rowCounter === undefined;
  const lines = [
    ...(told.leftOut.length === 0 ? [] : [slips.leftOut(told.leftOut)]),
    ...(told.ladder ? [slips.ladder] : []),
    ...(isNewestOrFed(session, look) ? [slips.takenAsNewest(look.lastColour ?? '')] : []),
    ...(isOpen ? [slips.rowOfWhat(told.askRow ?? 0)] : []),
    ...(isOpen ? [] : found.value.lines),
  ];
  return succeed(
    offer(session, answer(...lines), {
      seen,
      moment,
      unsure,
      asked: isOpen ? null : (found.value.asked ?? null),
      question: isOpen ? { about: 'row-of-what', row: told.askRow ?? 0 } : (found.value.question ?? null),
      offers: isOpen ? [] : found.value.offers,
    }),
  );
}

/** A yarn said by its name alone is that of the newest row; just after a change it may well be meant as the one in the feeder. */
function isNewestOrFed({ job, done }: Session, { lastColour, feeder }: Look): boolean {
  if (!lastColour || feeder !== undefined) return false;
  const due = looksAt(job, done);
  return due.feeder === lastColour && due.lastColour !== lastColour;
}

/** The question that stands is answered, and nothing else is said: what was seen before still holds. */
function answers({ seen, moment, askRow }: Told, asked: Question | null): boolean {
  const said = Object.keys(seen);
  if (asked === 'moment' || asked === 'row') return moment !== null && said.length === 0;
  if (moment !== null || said.length > 1) return false;
  if (asked === 'loose') return seen.looseEdgeLoop !== undefined;
  return asked !== null && (said[0] === asked || (asked === 'rowCounter' && askRow !== null));
}

/** A small row is the counter's while the work is in its first rows anyway; later it must be asked. */
function withRow({ job, done }: Session, seen: Look, row: number | null): Look {
  if (row === null) return seen;
  const isEarly = Math.abs(rowAt(job, done) - row) <= 2;
  return isEarly ? { ...seen, rowCounter: row } : seen;
}

/** Yarns in the spelling of the brief. */
function spelt({ job }: Session, look: Look): Look {
  const known = yarnsSeen(job);
  const spell = (yarn: string): string =>
    known.find((one) => one.toLowerCase() === yarn.toLowerCase()) ??
    (yarn === 'waste' ? job.plan.brief.waste.yarn : yarn);
  const { lastColour, feeder } = look;
  return {
    ...look,
    ...(lastColour ? { lastColour: spell(lastColour) } : {}),
    ...(feeder ? { feeder: spell(feeder) } : {}),
  };
}
