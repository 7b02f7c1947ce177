/** Takes up what is seen at the bench with what was said before: facts add up until a line answers no question any more. */
import type { OpenQuestion } from '../session/diagnose/question.ts';
import { locate } from '../session/locate/locate.ts';
import { looksAt } from '../session/locate/looks-of.ts';
import { checkSeen, type Look, plainly, type SeenFault, yarnsSeen } from '../session/locate/seen.ts';
import type { Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { rowAt } from '../steps/job.ts';
import { sayAsked } from '../wording/finding-answer.ts';
import type { Words } from '../wording/words.ts';
import { type Answer, answerTo } from './answer-find.ts';
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
  const goesOn = holds && (intent.more || isMomentAlone || answers(told, before));
  if (!saysSomething(told) && told.leftOut.length > 0)
    return fail({ code: 'chat/nothing-seen', words: told.leftOut, yarns: yarnsSeen(session.job) });
  const seen = withRow(
    session,
    { ...(goesOn ? before.seen : {}), ...spelt(session, asAsked(told, goesOn ? before : null)) },
    told.askRow,
  );
  const said = toldMoments(told, goesOn ? before.moments : []);
  const asks = intent.unsure && before.asked ? [before.asked] : [];
  const unsure = goesOn ? [...before.unsure, ...asks] : [];
  const checked = checkSeen(session.job, plainly(seen));
  if (!checked.ok) return checked;
  const look: Look = { ...seen, ...checked.value };
  const found = answerTo(session, look, said, unsure, words);
  if (!found.ok) return found;
  const bareYarn = isBare(told, goesOn ? before : null);
  const open = askFirst(session, { ...told, bareYarn }, look, found.value);
  const seenSoFar = open?.about === 'yarn-where' ? { ...seen, lastColour: undefined } : seen;
  return succeed(
    offer(session, answer(...remarks(told, words), ...(open ? [sayAsked(open, words)] : found.value.lines)), {
      seen: seenSoFar,
      bareYarn,
      moments: said,
      unsure,
      asked: open ? null : (found.value.asked ?? null),
      question: open ?? found.value.question ?? null,
      offers: open ? [] : found.value.offers,
    }),
  );
}

/** Until it is said where the yarn is; who was asked and says its name again means the newest row. */
function isBare({ bareYarn, seen }: Told, before: Talk | null): boolean {
  if (seen.lastColour || seen.feeder) return bareYarn && before?.question?.about !== 'yarn-where';
  return before?.bareYarn === true && before.question?.about !== 'yarn-where';
}

const toldMoments = ({ moment }: Told, before: Talk['moments']): Talk['moments'] =>
  moment === null ? before : [...before, moment];

const remarks = ({ leftOut, ladder }: Told, { slips }: Words): readonly string[] => [
  ...(leftOut.length === 0 ? [] : [slips.leftOut(leftOut)]),
  ...(ladder ? [slips.ladder] : []),
];

/** What was said can be meant in two ways, and what follows from it differs: nothing is offered before that is asked. */
function askFirst(session: Session, told: Told, look: Look, found: Answer): OpenQuestion | null {
  if (told.askRow !== null && look.rowCounter === undefined)
    return { about: 'row-of-what', row: told.askRow };
  return told.bareYarn && look.lastColour && isPerhapsFed(session, look, found)
    ? { about: 'yarn-where', yarn: look.lastColour }
    : null;
}

/** Just after a change, and wherever the work is without a fault if the yarn is only in the feeder. */
function isPerhapsFed({ job, done }: Session, look: Look, { tellsSlips }: Answer): boolean {
  const { lastColour, feeder } = look;
  if (!lastColour || feeder !== undefined) return false;
  const due = looksAt(job, done);
  if (due.feeder === lastColour && due.lastColour !== lastColour) return true;
  const fed = locate(job, { ...plainly(look), lastColour: undefined, feeder: lastColour });
  return tellsSlips === true && fed.ok && fed.value.found !== 'none';
}

/** `loose` is said of the column that was asked for, where it was. */
function asAsked({ seen }: Told, before: Talk | null): Look {
  const { looseEdgeLoop, ...others } = seen;
  const isColumn = before?.asked === 'stray' && looseEdgeLoop !== undefined;
  return isColumn ? { ...others, strayColumn: looseEdgeLoop } : seen;
}

/** The question that stands is answered, and nothing else is said: what was seen before still holds. */
function answers({ seen, moment, askRow }: Told, { asked, question }: Talk): boolean {
  const said = Object.keys(seen);
  if (asked === 'moment' || asked === 'row') return moment !== null && said.length === 0;
  if (moment !== null || said.length > 1) return false;
  if (asked === 'loose' || asked === 'stray') return seen.looseEdgeLoop !== undefined;
  if (asked === 'rehung') return seen.rehung !== undefined;
  if (question?.about === 'yarn-where')
    return seen.feeder === question.yarn || seen.lastColour === question.yarn;
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
