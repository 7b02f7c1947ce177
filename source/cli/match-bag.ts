/** A bag to match the one that is open, ready to be begun. */

import { logFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { type MatchWish, matchBrief, nextName } from '../journal/match.ts';
import type { BriefFile } from '../planning/brief.ts';
import type { BriefFault, PlanFault } from '../planning/fault.ts';
import { readBrief } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import type { Another } from '../screen/bench/bench-state.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { notesLike } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import { withLearned } from './own-bags.ts';

/** Or why no such bag can be made, in a sentence. */
export function planAnother(log: SessionLog, wish: MatchWish, words: Words): Result<Another, string> {
  const matching = matchingBag(log, wish);
  if (!matching.ok) return fail(words.bagEnd.cannotMatch(formatFault(matching.fault, words)));
  const { file, plan } = matching.value;
  const { widthCm, depthCm } = plan.size;
  return succeed({
    another: file,
    notes: notesLike(log.session, words),
    told: words.bagEnd.another(file.brief.name, log.session.name, wish.is, widthCm, depthCm),
  });
}

interface Matching {
  readonly file: BriefFile;
  readonly plan: Plan;
}

function matchingBag(
  { session, state }: SessionLog,
  wish: MatchWish,
): Result<Matching, BriefFault | PlanFault> {
  const begun = readBrief(state.header.brief);
  if (!begun.ok) return begun;
  const file = { json: state.header.brief, brief: begun.value };
  const isLearned = withLearned({ ...file, brief: { ...begun.value, learned: null } }).brief.learned !== null;
  const json = matchBrief(file, session, wish, { name: nextName(session.name, takenNames()), isLearned });
  const brief = readBrief(json);
  if (!brief.ok) return brief;
  const matching = withLearned({ json, brief: brief.value });
  const plan = planBag(matching.brief);
  return plan.ok ? succeed({ file: matching, plan: plan.value }) : plan;
}

const takenNames = (): readonly string[] =>
  listLogs(logFolder()).flatMap(({ tally }) => (tally.ok ? [tally.value.name] : []));
