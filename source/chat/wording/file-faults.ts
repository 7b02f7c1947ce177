import type { DiskTrouble, FileFault, SaveStatus } from '../../journal/file-fault.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count } from './numbers.ts';

const troubles: Readonly<Record<DiskTrouble, string>> = {
  'disk-full': 'the disk is full',
  'read-only': 'the disk can only be read',
  'no-permission': 'there is no permission',
  gone: 'the file or its folder is gone',
  'in-use': 'another Slantwise has the log open',
  changed: 'the file was changed by something else',
  'disk-error': 'the disk reports an error',
};

/** Why a file cannot be read or written, and what to do about it. */
export function formatFileFault(fault: FileFault): string {
  switch (fault.code) {
    case 'files/missing':
      return `${fault.path} does not exist. Check the name.`;
    case 'files/no-folder':
      return `The folder of ${fault.path} does not exist. Make it, or choose another.`;
    case 'files/is-folder':
      return `${fault.path} is a folder. Name a file in it.`;
    case 'files/exists':
      return `${fault.path} exists already and is left as it is. Choose another name.`;
    case 'files/too-large':
      return `${fault.path} is larger than ${fault.mostBytes / 1024} KiB, which no brief is. Check the name.`;
    case 'files/not-text':
      return `${fault.path} is not text in UTF-8. Save it again as UTF-8.`;
    case 'files/in-use':
      return `${fault.path} is open in another Slantwise (process ${fault.pid}${fault.host ? ` on ${fault.host}` : ''}): leave that one, or only look. If there is none, delete ${fault.lockPath}.`;
    case 'files/trouble':
      return `${fault.path}: ${troubles[fault.trouble]} (${fault.detail}).`;
    default:
      return exhaustive(fault);
  }
}

/** A line for the screen while something is not on disk; null while everything is. */
export const formatSaveStatus = (status: SaveStatus): string | null =>
  status.state === 'saved'
    ? null
    : `Not saved: ${troubles[status.trouble]}. The work goes on and ${count(status.waiting, 'line')} wait${status.waiting === 1 ? 's' : ''} to be written; saving is tried at each press.`;

/** Leaving would lose something; null where it would not. Leaving again does all the same. */
export function formatLoss(status: SaveStatus): string | null {
  const missing = sayMissing(status);
  return missing === null
    ? null
    : `${missing} Type save and a file elsewhere, such as save ../bag.jsonl, or leave again without it.`;
}

/** Said once the maker has left all the same. */
export function formatLost(status: SaveStatus): string | null {
  const missing = sayMissing(status);
  return missing === null ? null : `Left without saving. ${missing}`;
}

function sayMissing(status: SaveStatus): string | null {
  if (status.state === 'saved') return null;
  const { trouble, waiting } = status;
  const lines = `${count(waiting, 'line')} of the log ${waiting === 1 ? 'is' : 'are'}`;
  return `${trouble === 'gone' ? 'The log is' : lines} not on disk: ${troubles[trouble]}.`;
}

/** The log was written to another file. */
export const saySavedElsewhere = (path: string): string =>
  `The whole log is in ${path}, and the work goes on there. Next time: slantwise --log ${path}`;

/** To be said once. */
export const formatSlowFlush = (ms: number): string =>
  `The disk is slow: it took ${Math.round(ms)} ms to save a press. Each press waits until it is saved.`;
