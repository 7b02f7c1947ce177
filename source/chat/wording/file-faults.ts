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

/** To be said once. */
export const formatSlowFlush = (ms: number): string =>
  `The disk is slow: it took ${Math.round(ms)} ms to save a press. Each press waits until it is saved.`;
