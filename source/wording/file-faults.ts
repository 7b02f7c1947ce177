import type { DiskTrouble, FileFault, JournalFault, LineFault, SaveStatus } from '../journal/fault.ts';
import type { LessonFault } from '../journal/lesson.ts';
import type { SessionFault } from '../session/command.ts';
import { forShell } from '../shared/plain-text.ts';
import { exhaustive } from '../shared/result.ts';
import type { Words } from './words.ts';

const troubles: Readonly<Record<DiskTrouble, (words: Words) => string>> = {
  'disk-full': (words: Words) => words.files.disk.full,
  'read-only': (words: Words) => words.files.disk.readOnly,
  'no-permission': (words: Words) => words.files.disk.noPermission,
  gone: (words: Words) => words.files.disk.gone,
  'in-use': (words: Words) => words.files.disk.inUse,
  changed: (words: Words) => words.files.disk.changed,
  'no-answer': (words: Words) => words.files.disk.noAnswer,
  'disk-error': (words: Words) => words.files.disk.error,
};

/** Why a file cannot be read or written, and what to do about it. */
export function formatFileFault(fault: FileFault, words: Words): string {
  switch (fault.code) {
    case 'files/missing':
      return words.files.missing(fault.path);
    case 'files/no-folder':
      return words.files.noFolder(fault.path);
    case 'files/not-a-folder':
      return words.logs.notAFolder(fault.path);
    case 'files/is-folder':
      return words.files.isFolder(fault.path);
    case 'files/exists':
      return words.files.exists(fault.path);
    case 'files/too-large':
      return words.files.tooLarge(fault.path, fault.mostBytes / 1024);
    case 'files/not-text':
      return words.files.notText(fault.path);
    case 'files/in-use':
      return fault.host
        ? words.files.inUseElsewhere(fault.path, fault.pid, fault.host)
        : words.files.inUse(fault.path, fault.pid);
    case 'files/trouble':
      return `${fault.path}: ${troubles[fault.trouble](words)} (${fault.detail}).`;
    default:
      return exhaustive(fault);
  }
}

/** A line for the screen while something is not on disk; null while everything is. */
export const formatSaveStatus = (status: SaveStatus, words: Words): string | null =>
  status.state === 'saved'
    ? null
    : words.files.notSaved(troubles[status.trouble](words), sayWaiting(status.waiting, words));

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
  const trouble = troubles[status.trouble](words);
  if (status.trouble === 'gone') return words.files.logNotOnDisk(trouble);
  return status.waiting === 1
    ? words.files.lineNotOnDisk(trouble)
    : words.files.linesNotOnDisk(status.waiting, trouble);
}

/** The log was written to another file. */
export const saySavedElsewhere = (path: string, words: Words): string =>
  words.files.savedElsewhere(path, forShell(path));

/** To be said once. */
export const formatSlowFlush = (ms: number, words: Words): string => words.files.slow(Math.round(ms));

/** Said last of all, when a disk keeps the process from ending. */
export const sayDiskHolds = (words: Words): string => words.files.holds;

const lineFaults: Readonly<Record<LineFault, (words: Words) => string>> = {
  'not-text': (words: Words) => words.files.line.notText,
  'not-json': (words: Words) => words.files.line.notJson,
  'no-checksum': (words: Words) => words.files.line.noChecksum,
  checksum: (words: Words) => words.files.line.checksum,
  'wrong-fields': (words: Words) => words.files.line.wrongFields,
  'out-of-place': (words: Words) => words.files.line.outOfPlace,
};

/** Why a log cannot be read to its end, and what to do about it. */
export function formatJournalFault(fault: JournalFault, words: Words): string {
  switch (fault.code) {
    case 'journal/not-a-log':
      return words.files.notALog;
    case 'journal/no-header':
      return words.files.noHeader;
    case 'journal/newer-version':
      return words.files.newerVersion(fault.version, fault.known);
    case 'journal/damaged-line':
      return `${words.files.damagedLine(fault.line, lineFaults[fault.reason](words))} ${soundPart(fault.line, words, fault.laterStep !== null)}${laterStep(fault.laterStep, words)}`;
    case 'journal/step-differs':
      return words.files.stepDiffers(fault.line, fault.recorded, fault.reached, soundPart(fault.line, words));
    case 'journal/command-refused':
      return words.files.commandRefused(fault.line, fault.fault.code, soundPart(fault.line, words));
    case 'journal/unknown-event':
      return words.files.unknownEvent(fault.line, fault.name);
    case 'journal/brief':
      return words.files.brief(fault.fault.code, fault.program);
    case 'journal/plan-differs':
      return words.files.planDiffers(fault.figure, fault.planned, fault.recorded, fault.program);
    default:
      return exhaustive(fault);
  }
}

function soundPart(line: number, words: Words, hasMore = false): string {
  if (line === 1) return hasMore ? words.logs.needsBrief : words.files.nothingAfter;
  return line === 2 ? words.files.lineOneSound : words.files.linesSound(line - 1);
}

const laterStep = (step: number | null, words: Words): string =>
  step === null ? '' : ` ${words.files.laterLines(step)}`;

/** The last line was being written when the program or the machine stopped: what became of it. */
export const formatTornTail = (keptAs: string, words: Words): string => words.files.tornTail(keptAs);

/** The same, where the log is only looked at. */
export const formatCutOff = (line: number, words: Words): string => words.files.cutOff(line);

/** Why a lesson cannot be made. */
export function formatLessonFault(fault: Exclude<LessonFault, SessionFault>, words: Words): string {
  return words.files.noSuchEvent(fault.after, fault.events);
}
