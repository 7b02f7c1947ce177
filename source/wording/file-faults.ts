import type { FileFault, JournalFault, SaveStatus } from '../journal/fault.ts';
import type { LessonFault } from '../journal/teaching.ts';
import type { SessionFault } from '../session/command.ts';
import { type SayingsBy, sayBy } from './by-kind.ts';
import type { Words } from './words.ts';

/** Why a file cannot be read or written, and what to do about it. */
export function formatFileFault(fault: FileFault, words: Words): string {
  return sayBy('code', fileFaults, fault, words);
}

const fileFaults: SayingsBy<'code', FileFault, [words: Words]> = {
  'files/missing': ({ path }, words) => words.files.missing(path),
  'files/no-folder': ({ path }, words) => words.files.noFolder(path),
  'files/not-a-folder': ({ path }, words) => words.logs.notAFolder(path),
  'files/is-folder': ({ path }, words) => words.files.isFolder(path),
  'files/exists': ({ path }, words) => words.files.exists(path),
  'files/too-large': ({ path, mostBytes }, words) => words.files.tooLarge(path, mostBytes / 1024),
  'files/not-text': ({ path }, words) => words.files.notText(path),
  'files/in-use': ({ host, path, pid }, words) =>
    host ? words.files.inUseElsewhere(path, pid, host) : words.files.inUse(path, pid),
  'files/trouble': ({ path, trouble, detail }, words) => `${path}: ${words.files.disk[trouble]} (${detail}).`,
};

/** A line for the screen while something is not on disk; null while everything is. */
export const formatSaveStatus = (status: SaveStatus, words: Words): string | null =>
  status.state === 'saved'
    ? null
    : words.files.notSaved(words.files.disk[status.trouble], sayWaiting(status.waiting, words));

const sayWaiting = (lines: number, words: Words): string =>
  lines === 1 ? words.files.lineWaits : words.files.linesWait(lines);

/** Leaving would lose something; null where it would not. Leaving again does all the same. */
export function formatLoss(status: SaveStatus, words: Words): string | null {
  const missing = sayMissing(status, words);
  return missing === null ? null : `${missing} ${words.files.saveElsewhere}`;
}

/** Said once the maker has left all the same. */
export function formatLost(status: SaveStatus, words: Words): string | null {
  const missing = sayMissing(status, words);
  return missing === null ? null : words.files.leftWithout(missing);
}

function sayMissing(status: SaveStatus, words: Words): string | null {
  if (status.state === 'saved') return null;
  const trouble = words.files.disk[status.trouble];
  if (status.trouble === 'gone') return words.files.logNotOnDisk(trouble);
  return status.waiting === 1
    ? words.files.lineNotOnDisk(trouble)
    : words.files.linesNotOnDisk(status.waiting, trouble);
}

/** Why a log cannot be read to its end, and what to do about it. */
export function formatJournalFault(fault: JournalFault, words: Words): string {
  return sayBy('code', journalFaults, fault, words);
}

const journalFaults: SayingsBy<'code', JournalFault, [words: Words]> = {
  'journal/not-a-log': (_, words) => words.files.notALog,
  'journal/no-header': (_, words) => words.files.noHeader,
  'journal/newer-version': ({ version, known }, words) => words.files.newerVersion(version, known),
  'journal/damaged-line': ({ line, reason, laterStep }, words) =>
    `${words.files.damagedLine(line, words.files.line[reason])} ${soundPart(line, words, laterStep !== null)}${sayLater(laterStep, words)}`,
  'journal/step-differs': ({ line, recorded, reached }, words) =>
    words.files.stepDiffers(line, recorded, reached, soundPart(line, words)),
  'journal/command-refused': ({ line, fault }, words) =>
    words.files.commandRefused(line, fault.code, soundPart(line, words)),
  'journal/unknown-event': ({ line, name }, words) => words.files.unknownEvent(line, name),
  'journal/brief': ({ fault, program }, words) => words.files.brief(fault.code, program),
  'journal/plan-differs': ({ figure, planned, recorded, program }, words) =>
    words.files.planDiffers(figure, planned, recorded, program),
};

function soundPart(line: number, words: Words, hasMore = false): string {
  if (line === 1) return hasMore ? words.logs.needsBrief : words.files.nothingAfter;
  return line === 2 ? words.files.lineOneSound : words.files.linesSound(line - 1);
}

const sayLater = (step: number | null, words: Words): string =>
  step === null ? '' : ` ${words.files.laterLines(step)}`;

/** Why a lesson cannot be made. */
export function formatLessonFault(fault: Exclude<LessonFault, SessionFault>, words: Words): string {
  return words.files.noSuchEvent(fault.after, fault.events);
}
