/** Briefs and logs as they are read for a command, each or one sentence that says why not; and what the maker's own bags tell of a brief. */
import { logFolder } from '../files/data-folders.ts';
import { readBriefText } from '../files/kept-files.ts';
import { soundLogs } from '../files/log-list.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import type { FileFault, JournalFault } from '../journal/fault.ts';
import { outcomeOf, turnColours } from '../journal/match.ts';
import { type Pace, paceOf } from '../journal/pace.ts';
import { type Recording, readRecording } from '../journal/read-log.ts';
import type { Brief, BriefFile } from '../planning/brief.ts';
import type { PlanFault } from '../planning/fault.ts';
import { type BagFromYarn, planFromYarn } from '../planning/from-yarn.ts';
import { type CameOut, learn, swatchKey } from '../planning/learned.ts';
import { parseBrief, readBriefFile } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import { fail, isOf, type Result } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault, formatJournalFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { ownShelf } from './own-shelf.ts';

/** The plan of a brief file, its colours turned so many places, or one sentence that names the file and what is wrong in it. */
export const readPlan = (path: string, words: Words, places = 0): Result<Plan, string> =>
  planFile(path, planBag, words, places);

/** The largest bag of the brief's shape that its weighed yarns allow, or the sentence. */
export const readBagFromYarn = (path: string, words: Words): Result<BagFromYarn, string> =>
  planFile(path, planFromYarn, words);

function planFile<Bag>(
  path: string,
  plan: (brief: Brief) => Result<Bag, PlanFault>,
  words: Words,
  places = 0,
): Result<Bag, string> {
  const read = readBriefAt(path, words);
  const file = read.ok && places > 0 ? turnedFile(read.value, places) : read;
  if (!file.ok) return file;
  const planned = plan(withLearned(file.value).brief);
  return planned.ok ? planned : fail(`${path}: ${formatFault(planned.fault, words)}`);
}

/** Its yarns in other places: still a sound brief. */
function turnedFile({ json }: BriefFile, places: number): Result<BriefFile, never> {
  const other = readBriefFile(turnColours(json, places));
  if (!other.ok) throw new Error(other.fault.code);
  return other;
}

/** The brief in a file, or one sentence that names the file and what is wrong in it. */
export function readBriefAt(
  path: string,
  words: Words,
  explain = formatFileFault,
): Result<BriefFile, string> {
  const text = readBriefText(path);
  if (!text.ok) return fail(explain(text.fault, words));
  const brief = parseBrief(text.value, ownShelf);
  return brief.ok ? brief : fail(`${path}: ${formatFault(brief.fault, words)}`);
}

/** The recording in a log, or one sentence that names the file and what is wrong in it. */
export function openRecording(path: string, words: Words): Result<Recording, string> {
  const bytes = readBytes(path, mostLogBytes);
  const recording = bytes.ok ? readRecording(bytes.value) : bytes;
  return recording.ok ? recording : fail(sayLogFault(path, recording.fault, words));
}

/** Why a log cannot be used. */
export const sayLogFault = (path: string, fault: JournalFault | FileFault, words: Words): string =>
  isOf(fault, 'files') ? formatFileFault(fault, words) : `${path}: ${formatJournalFault(fault, words)}`;

/** That a last line was cut off, where it was. The header is line 1. */
export const sayCutOff = (path: string, tornBytes: number, events: number, words: Words): string | null =>
  tornBytes === 0 ? null : `${path}: ${words.files.cutOff(events + 2)}`;

/** Bags made longest ago tell least about the hands of today. */
const mostBags = 10;

export const ownPace = (): Pace => paceOf(finishedBags(mostBags));

/** The brief with what measured bags of its swatch tell, unless it says so itself. */
export function withLearned(file: BriefFile): BriefFile {
  const learned = file.brief.learned ?? learn(outcomesLike(file.brief));
  return learned ? { json: { ...file.json, learned }, brief: { ...file.brief, learned } } : file;
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
