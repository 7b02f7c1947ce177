import type { DiskTrouble, FileFault, SaveStatus } from '../../journal/file-fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { forShell } from '../../shared/for-shell.ts';
import { say } from '../../shared/say.ts';
import { currentWords } from '../../wording/current.ts';

const troubles: Readonly<Record<DiskTrouble, () => string>> = {
  'disk-full': () => say`the disk is full`,
  'read-only': () => say`the disk can only be read`,
  'no-permission': () => say`there is no permission`,
  gone: () => say`the file or its folder is gone`,
  'in-use': () => say`another Slantwise has the log open`,
  changed: () => say`the file was changed by something else`,
  'no-answer': () => say`the disk does not answer`,
  'disk-error': () => say`the disk reports an error`,
};

/** Why a file cannot be read or written, and what to do about it. */
export function formatFileFault(fault: FileFault): string {
  switch (fault.code) {
    case 'files/missing':
      return say`${fault.path} does not exist. Check the name.`;
    case 'files/no-folder':
      return say`The folder of ${fault.path} does not exist. Make it, or choose another.`;
    case 'files/not-a-folder':
      return currentWords().logs.notAFolder(fault.path);
    case 'files/is-folder':
      return say`${fault.path} is a folder. Name a file in it.`;
    case 'files/exists':
      return say`${fault.path} exists already and is left as it is. Choose another name.`;
    case 'files/too-large':
      return say`${fault.path} is larger than ${fault.mostBytes / 1024} KiB, which no brief and no log is. Check the name.`;
    case 'files/not-text':
      return say`${fault.path} is not text in UTF-8. Save it again as UTF-8.`;
    case 'files/in-use':
      return fault.host
        ? say`${fault.path} is open in another Slantwise (process ${fault.pid} on ${fault.host}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY`
        : say`${fault.path} is open in another Slantwise (process ${fault.pid}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY`;
    case 'files/trouble':
      return `${fault.path}: ${troubles[fault.trouble]()} (${fault.detail}).`;
    default:
      return exhaustive(fault);
  }
}

/** A line for the screen while something is not on disk; null while everything is. */
export const formatSaveStatus = (status: SaveStatus): string | null =>
  status.state === 'saved'
    ? null
    : say`Not saved: ${troubles[status.trouble]()}. The work goes on in memory and ${sayWaiting(status.waiting)} to be written; saving is tried every few seconds.`;

const sayWaiting = (lines: number): string => (lines === 1 ? say`1 line waits` : say`${lines} lines wait`);

/** Leaving would lose something; null where it would not. Leaving again does all the same. */
export function formatLoss(status: SaveStatus): string | null {
  const missing = sayMissing(status);
  return missing === null
    ? null
    : `${missing} ${say`Type save and a file elsewhere, such as save ../bag.jsonl, or leave again without it.`}`;
}

/** Said once the maker has left all the same. */
export function formatLost(status: SaveStatus): string | null {
  const missing = sayMissing(status);
  return missing === null ? null : say`Left without saving. ${missing}`;
}

function sayMissing(status: SaveStatus): string | null {
  if (status.state === 'saved') return null;
  const trouble = troubles[status.trouble]();
  if (status.trouble === 'gone') return say`The log is not on disk: ${trouble}.`;
  return status.waiting === 1
    ? say`1 line of the log is not on disk: ${trouble}.`
    : say`${status.waiting} lines of the log are not on disk: ${trouble}.`;
}

/** The log was written to another file. */
export const saySavedElsewhere = (path: string): string =>
  say`The whole log is in ${path}, and the work goes on there. Next time: slantwise --log ${forShell(path)}`;

/** To be said once. */
export const formatSlowFlush = (ms: number): string =>
  say`The disk is slow: it took ${Math.round(ms)} ms to save a press. Each press waits for it, but not longer than a second.`;

/** Said last of all, when a disk keeps the process from ending. */
export const sayDiskHolds = (): string =>
  say`The disk may hold this terminal until it answers. The window can be closed; nothing more is lost by it.`;
