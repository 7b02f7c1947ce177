/** What a session writes its log to. */

import type { FileFault, SaveStatus } from '../journal/fault.ts';
import type { Result } from '../shared/result.ts';
import type { Lock } from './lock.ts';

/** All that a log's file should hold, kept in memory. Adding to it costs what is added, on the average. */
export class HeldBytes {
  /** With room to grow; the first `#length` bytes count. */
  #room: Uint8Array;
  #length: number;

  constructor(content: Uint8Array) {
    this.#room = content;
    this.#length = content.length;
  }

  get length(): number {
    return this.#length;
  }

  add(bytes: Uint8Array): void {
    const length = this.#length + bytes.length;
    if (length > this.#room.length) {
      const roomier = new Uint8Array(Math.max(4096, length * 2));
      roomier.set(this.part(0));
      this.#room = roomier;
    }
    this.#room.set(bytes, this.#length);
    this.#length = length;
  }

  part(from: number, through = this.#length): Uint8Array {
    return this.#room.subarray(from, through);
  }

  beginsWith(bytes: Uint8Array): boolean {
    return bytes.length <= this.#length && Buffer.compare(bytes, this.part(0, bytes.length)) === 0;
  }
}

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
