import type { DiskTrouble, FileFault, SaveStatus } from '../../journal/file-fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { forShell } from '../../shared/for-shell.ts';
import type { Words } from '../../wording/words.ts';

const troubles: Readonly<Record<DiskTrouble, (words: Words) => string>> = {
  'disk-full': (words: Words) => words.say`the disk is full`,
  'read-only': (words: Words) => words.say`the disk can only be read`,
  'no-permission': (words: Words) => words.say`there is no permission`,
  gone: (words: Words) => words.say`the file or its folder is gone`,
  'in-use': (words: Words) => words.say`another Slantwise has the log open`,
  changed: (words: Words) => words.say`the file was changed by something else`,
  'no-answer': (words: Words) => words.say`the disk does not answer`,
  'disk-error': (words: Words) => words.say`the disk reports an error`,
};

/** Why a file cannot be read or written, and what to do about it. */
export function formatFileFault(fault: FileFault, words: Words): string {
  switch (fault.code) {
    case 'files/missing':
      return words.say`${fault.path} does not exist. Check the name.`;
    case 'files/no-folder':
      return words.say`The folder of ${fault.path} does not exist. Make it, or choose another.`;
    case 'files/not-a-folder':
      return words.logs.notAFolder(fault.path);
    case 'files/is-folder':
      return words.say`${fault.path} is a folder. Name a file in it.`;
    case 'files/exists':
      return words.say`${fault.path} exists already and is left as it is. Choose another name.`;
    case 'files/too-large':
      return words.say`${fault.path} is larger than ${fault.mostBytes / 1024} KiB, which no brief and no log is. Check the name.`;
    case 'files/not-text':
      return words.say`${fault.path} is not text in UTF-8. Save it again as UTF-8.`;
    case 'files/in-use':
      return fault.host
        ? words.say`${fault.path} is open in another Slantwise (process ${fault.pid} on ${fault.host}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY`
        : words.say`${fault.path} is open in another Slantwise (process ${fault.pid}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY`;
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
    : words.say`Not saved: ${troubles[status.trouble](words)}. The work goes on in memory and ${sayWaiting(status.waiting, words)} to be written; saving is tried every few seconds.`;

const sayWaiting = (lines: number, words: Words): string =>
  lines === 1 ? words.say`1 line waits` : words.say`${lines} lines wait`;

/** Leaving would lose something; null where it would not. Leaving again does all the same. */
export function formatLoss(status: SaveStatus, words: Words): string | null {
  const missing = sayMissing(status, words);
  return missing === null
    ? null
    : `${missing} ${words.say`Type save and a file elsewhere, such as save ../bag.jsonl, or leave again without it.`}`;
}

/** Said once the maker has left all the same. */
export function formatLost(status: SaveStatus, words: Words): string | null {
  const missing = sayMissing(status, words);
  return missing === null ? null : words.say`Left without saving. ${missing}`;
}

function sayMissing(status: SaveStatus, words: Words): string | null {
  if (status.state === 'saved') return null;
  const trouble = troubles[status.trouble](words);
  if (status.trouble === 'gone') return words.say`The log is not on disk: ${trouble}.`;
  return status.waiting === 1
    ? words.say`1 line of the log is not on disk: ${trouble}.`
    : words.say`${status.waiting} lines of the log are not on disk: ${trouble}.`;
}

/** The log was written to another file. */
export const saySavedElsewhere = (path: string, words: Words): string =>
  words.say`The whole log is in ${path}, and the work goes on there. Next time: slantwise --log ${forShell(path)}`;

/** To be said once. */
export const formatSlowFlush = (ms: number, words: Words): string =>
  words.say`The disk is slow: it took ${Math.round(ms)} ms to save a press. Each press waits for it, but not longer than a second.`;

/** Said last of all, when a disk keeps the process from ending. */
export const sayDiskHolds = (words: Words): string =>
  words.say`The disk may hold this terminal until it answers. The window can be closed; nothing more is lost by it.`;
