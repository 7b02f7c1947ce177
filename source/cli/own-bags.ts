/** What the maker's own finished bags tell. */
import { logFolder } from '../files/data-folders.ts';
import { soundLogs } from '../files/log-list.ts';
import { outcomeOf } from '../journal/match.ts';
import { type Pace, paceOf } from '../journal/pace.ts';
import { type Recording, readRecording } from '../journal/read-log.ts';
import type { Brief, BriefFile } from '../planning/brief.ts';
import { type CameOut, learn, swatchKey } from '../planning/learned.ts';

/** Bags made longest ago tell least about the hands of today. */
const mostBags = 10;

export const ownPace = (): Pace => paceOf(finishedBags(mostBags));

/** The brief with what measured bags of its swatch tell, unless it says so itself. */
export function withLearned(file: BriefFile): BriefFile {
  const learned = file.brief.learned ?? learn(outcomesLike(file.brief));
  const json = file.json as Readonly<Record<string, unknown>>;
  return learned ? { json: { ...json, learned }, brief: { ...file.brief, learned } } : file;
}

/** Of the bags of the same swatch used last. */
function outcomesLike(brief: Brief): readonly CameOut[] {
  const key = swatchKey(brief);
  const outcomes: CameOut[] = [];
  for (const { state } of soundLogs(logFolder())) {
    const { session } = state;
    const outcome = swatchKey(session.job.plan.brief) === key ? outcomeOf(session) : null;
    if (outcome) outcomes.push(outcome);
    if (outcomes.length === mostBags) break;
  }
  return outcomes;
}

/** The finished bags used last. */
function finishedBags(most: number): readonly Recording[] {
  const finished: Recording[] = [];
  for (const { state, bytes } of soundLogs(logFolder())) {
    const recording = state.finished ? readRecording(bytes) : null;
    if (recording?.ok) finished.push(recording.value);
    if (finished.length === most) break;
  }
  return finished;
}
