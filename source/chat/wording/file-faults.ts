import type { DiskTrouble, FileFault, SaveStatus } from '../../journal/file-fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { forShell } from '../../shared/for-shell.ts';
import type { Words } from '../../wording/words.ts';

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
