/** What a session writes its log to. */
import type { FileFault, SaveStatus } from '../journal/fault.ts';
import type { Result } from '../shared/result.ts';
import type { Lock } from './lock.ts';

export interface LogFile {
  readonly path: string;
  /** How it stands with all lines added so far: waits for those of which nothing has been heard yet. */
  readonly status: SaveStatus;
  /** Where a torn last line was moved to; null where there was none. */
  readonly tornPath: string | null;
  /** Adds a line, and has it saved with whatever was waiting. When `status` is then `saved`, it is on disk. */
  readonly append: (line: string) => void;
  /** Tries to bring what is waiting to disk. */
  readonly save: () => SaveStatus;
  /** Writes the whole log to a new file, to go on there; this one stays open. */
  readonly copyTo: (path: string) => Result<LogFile, FileFault>;
  /** Lets go of the file and of its lock. */
  readonly close: () => void;
}

/** A log between two that write it: plain data, so that it can go to another thread. */
export interface HeldLog {
  readonly path: string;
  readonly lock: Lock;
  readonly ownFolder: boolean;
  /** All that the file should hold. */
  readonly content: Uint8Array;
  /** How much of that is on disk; the rest is `waiting` lines. */
  readonly savedLength: number;
  readonly waiting: number;
  /** A torn last line behind what the file holds, and where it was moved to. */
  readonly torn: Uint8Array;
  readonly tornPath: string | null;
  readonly status: SaveStatus;
}
