import { readBriefText } from '../files/brief-file.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import { turnColours } from '../journal/match.ts';
import { type Recording, readRecording } from '../journal/read-log.ts';
import type { Brief, BriefFile } from '../planning/brief.ts';
import type { PlanFault } from '../planning/fault.ts';
import { type BagFromYarn, planFromYarn } from '../planning/from-yarn.ts';
import { parseBrief, readBrief } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault, formatJournalFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { withLearned } from './own-bags.ts';
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
function turnedFile({ json }: BriefFile, places: number): Result<BriefFile, string> {
  const other = turnColours(json as Readonly<Record<string, unknown>>, places);
  const brief = readBrief(other);
  if (!brief.ok) throw new Error(brief.fault.code);
  return succeed({ json: other, brief: brief.value });
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
  if (!bytes.ok) return fail(formatFileFault(bytes.fault, words));
  const recording = readRecording(bytes.value);
  return recording.ok
    ? succeed(recording.value)
    : fail(`${path}: ${formatJournalFault(recording.fault, words)}`);
}
