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
import { answerTo } from './answer-find.ts';
import { type ChatFault, type Intent, saysSomething, type Told } from './grammar/intent.ts';
import { answer, offer, type Reply, stillHolds, type Talk } from './talk.ts';

type FindIntent = Extract<Intent, { readonly kind: 'find' }>;

export function replyToFind(
  session: Session,
  intent: FindIntent,
  before: Talk,
  words: Words,
): Result<Reply, ChatFault | SeenFault> {
  const heard = takeUp(session, intent, before);
  if (!heard.ok) return heard;
  const { seen, look, moments, unsure, bareYarn } = heard.value;
  const { told } = intent;
  const reply = (lines: readonly string[], talk: Partial<Talk>): Result<Reply, never> =>
    succeed(
      offer(session, answer(...remarks(told, words), ...lines), { seen, bareYarn, moments, unsure, ...talk }),
    );
  const ask = (question: OpenQuestion, known: Look): Result<Reply, never> =>
    reply([sayAsked(question, words)], { question, seen: known });
  if (told.askRow !== null && look.rowCounter === undefined)
    return ask({ about: 'row-of-what', row: told.askRow }, seen);
  const yarn = bareYarn && look.feeder === undefined ? look.lastColour : null;
  const askYarn = (named: string) =>
    ask({ about: 'yarn-where', yarn: named }, { ...seen, lastColour: undefined });
  if (yarn && isJustFed(session, yarn)) return askYarn(yarn);
  const found = answerTo(session, look, moments, unsure, words);
  if (!found.ok) return found;
  const { lines, asked = null, question = null, offers, tellsSlips } = found.value;
  if (yarn && tellsSlips && isSoundIfFed(session, look, yarn)) return askYarn(yarn);
  return reply(lines, { asked, question, offers });
}

interface Heard extends Pick<Talk, 'moments' | 'unsure' | 'bareYarn'> {
  readonly seen: Look;
  /** The same, with needles as the program spells them. */
  readonly look: Look;
}

/** What a line says, with what was said before where it goes on from that. */
function takeUp(
  session: Session,
  { told, more, unsure }: FindIntent,
  before: Talk,
): Result<Heard, ChatFault | SeenFault> {
  const holds = before.seen !== null && stillHolds(before, session);
  const isMomentAlone = told.moment !== null && Object.keys(told.seen).length === 0;
  if ((more || isMomentAlone) && !holds) return fail({ code: 'chat/nothing-found-before' });
  if (!saysSomething(told) && told.leftOut.length > 0)
    return fail({ code: 'chat/nothing-seen', words: told.leftOut, yarns: yarnsSeen(session.job) });
  const last = holds && (more || isMomentAlone || answers(told, before)) ? before : null;
  const said = { ...last?.seen, ...spelt(session, asAsked(told, last)) };
  const seen = withRow(session, said, told.askRow);
  const checked = checkSeen(session.job, plainly(seen));
  if (!checked.ok) return checked;
  return succeed({
    seen,
    look: { ...seen, ...checked.value },
    moments: [...(last?.moments ?? []), ...(told.moment === null ? [] : [told.moment])],
    unsure: [...(last?.unsure ?? []), ...(unsure && last?.asked ? [last.asked] : [])],
    bareYarn: isBare(told, last),
  });
}

/** Until it is said where the yarn is; who was asked and says its name again means the newest row. */
function isBare({ bareYarn, seen }: Told, before: Talk | null): boolean {
  if (seen.lastColour || seen.feeder) return bareYarn && before?.question?.about !== 'yarn-where';
  return before?.bareYarn === true && before.question?.about !== 'yarn-where';
}

const remarks = ({ leftOut, ladder }: Told, { slips }: Words): readonly string[] => [
  ...(leftOut.length === 0 ? [] : [slips.leftOut(leftOut)]),
  ...(ladder ? [slips.ladder] : []),
];

/** Just after a change a yarn may hang in no row yet. */
function isJustFed({ job, done }: Session, yarn: string): boolean {
  const due = looksAt(job, done);
  return due.feeder === yarn && due.lastColour !== yarn;
}

/** Nothing is wrong with the work if the yarn is only in the feeder. */
function isSoundIfFed({ job }: Session, look: Look, yarn: string): boolean {
  const found = locate(job, { ...plainly(look), lastColour: undefined, feeder: yarn });
  return found.ok && found.value.found !== 'none';
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
  if (asked === 'which-edge') return seen.edgeStep !== undefined;
  if (asked === 'before-move') return seen.beforeMove !== undefined;
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
