import type { BriefFault, PlanFault } from '../planning/fault.ts';
import type { SessionFault } from '../session/command.ts';

/** What is wrong with a line by itself. A lost line shows as the `checksum` of the next one, as a changed line does. */
export type LineFault =
  | 'not-text'
  | 'not-json'
  | 'no-checksum'
  | 'checksum'
  | 'wrong-fields'
  /** The mark of a finished bag where the bag is not finished. */
  | 'out-of-place';

/** Why a log cannot be read to its end. Lines count from 1, the header being the first. */
export type JournalFault =
  | { readonly code: 'journal/not-a-log' }
  /** Empty, or cut off inside its first line: nothing was recorded yet. */
  | { readonly code: 'journal/no-header' }
  | { readonly code: 'journal/newer-version'; readonly version: number; readonly known: number }
  | {
      readonly code: 'journal/damaged-line';
      readonly line: number;
      readonly reason: LineFault;
      /** Where the last sound line is found further on, how many steps it says were done; null where there is none. */
      readonly laterStep: number | null;
    }
  | {
      readonly code: 'journal/step-differs';
      readonly line: number;
      readonly recorded: number;
      readonly reached: number;
    }
  | { readonly code: 'journal/command-refused'; readonly line: number; readonly fault: SessionFault }
  /** A kind of event that this program does not know, and that moved the place. */
  | { readonly code: 'journal/unknown-event'; readonly line: number; readonly name: string }
  | { readonly code: 'journal/brief'; readonly program: string; readonly fault: BriefFault | PlanFault }
  | {
      readonly code: 'journal/plan-differs';
      readonly program: string;
      readonly figure: string;
      readonly recorded: string;
      readonly planned: string;
    };

/** What can go wrong with a disk, told apart as far as a maker can do something about it. */
export type DiskTrouble =
  | 'disk-full'
  | 'read-only'
  | 'no-permission'
  /** The file, its folder or the drive is no longer there. */
  | 'gone'
  /** Another program has the log open. */
  | 'in-use'
  /** The file is no longer what was written to it. */
  | 'changed'
  /** A drive in the network, mostly, that neither does what it is asked nor refuses. */
  | 'no-answer'
  | 'disk-error';

/** Why a file cannot be read or written. */
export type FileFault =
  | { readonly code: 'files/missing'; readonly path: string }
  | { readonly code: 'files/no-folder'; readonly path: string }
  /** What stands where its folder should be is a file. */
  | { readonly code: 'files/not-a-folder'; readonly path: string }
  | { readonly code: 'files/is-folder'; readonly path: string }
  | { readonly code: 'files/exists'; readonly path: string }
  | { readonly code: 'files/too-large'; readonly path: string; readonly mostBytes: number }
  | { readonly code: 'files/not-text'; readonly path: string }
  | {
      readonly code: 'files/in-use';
      readonly path: string;
      readonly pid: number;
      /** The computer that has it open; null where it is this one. */
      readonly host: string | null;
    }
  | {
      readonly code: 'files/trouble';
      readonly path: string;
      readonly trouble: DiskTrouble;
      readonly detail: string;
    };

/** The log is open elsewhere. */
export type InUse = Extract<FileFault, { readonly code: 'files/in-use' }>;

/** Whether what was confirmed is on disk. */
export type SaveStatus = {
  /** How long a flush took the first time it took long; null while none has. Worth one mention. */
  readonly slowFlushMs: number | null;
} & (
  | { readonly state: 'saved' }
  | {
      readonly state: 'unsaved';
      /** Lines in memory that are not on disk. */
      readonly waiting: number;
      readonly trouble: DiskTrouble;
    }
);
