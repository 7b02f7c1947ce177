/** A session whose every accepted command is on disk before it is answered. What a bench holds while a bag is made. */
import { basename } from 'node:path';
import type { FileFault, SaveStatus } from '../journal/fault.ts';
import { type LogState, recordEvent } from '../journal/log-state.ts';
import type { Occurrence } from '../journal/notation.ts';
import type { ForeignSign } from '../journal/read-log.ts';
import type { Command, SessionFault } from '../session/command.ts';
import { isFinished, type Session } from '../session/session.ts';
import { instantOf } from '../shared/numbers.ts';
import { type Result, succeed } from '../shared/result.ts';
import type { Clock } from './clock.ts';
import { JournalFile } from './journal-file.ts';
import type { LogFile } from './log-file.ts';
import { beside, withoutEnding } from './write-whole.ts';

const isTakenOver = (status: SaveStatus): boolean =>
  status.state === 'unsaved' && (status.trouble === 'changed' || status.trouble === 'in-use');

const isTaken: ReadonlySet<FileFault['code']> = new Set(['files/exists', 'files/in-use']);

export class SessionLog {
  #file: LogFile;
  readonly #clock: Clock;
  readonly #beganMs: number;
  #lastMs = 0;
  #left = false;
  #takenOver: string | null = null;
  #state: LogState;

  /** What other programs had put into the file when it was opened. */
  readonly foreign: readonly ForeignSign[];

  /** Made by `startSessionLog` and `openSessionLog`. */
  constructor(file: LogFile, state: LogState, clock: Clock, foreign: readonly ForeignSign[] = []) {
    this.foreign = foreign;
    this.#file = file;
    this.#clock = clock;
    this.#beganMs = clock.elapsedMs();
    this.#state = state;
  }

  get session(): Session {
    return this.#state.session;
  }

  get state(): LogState {
    return this.#state;
  }

  get path(): string {
    return this.#file.path;
  }

  get status(): SaveStatus {
    return this.#file.status;
  }

  /** Name of the file that a torn last line was moved to when the log was opened; null where there was none. */
  get tornKeptAs(): string | null {
    return this.#file.tornPath && basename(this.#file.tornPath);
  }

  /**
   * Carries out a command. When this returns and `status` is `saved`, the command is on disk; when it is `unsaved`, the
   * session has moved on all the same. Costs the same at any length of the log.
   */
  readonly append = (command: Command): Result<Session, SessionFault> => {
    const done = this.begin(command);
    this.settle();
    return done;
  };

  /** Carries out a command, and has it written while other things are done; `settle` tells what came of that. */
  begin(command: Command): Result<Session, SessionFault> {
    const done = this.#record(command);
    if (!done.ok) return done;
    this.#markFinished();
    return succeed(this.session);
  }

  /** Waits for all that was begun. */
  settle(): SaveStatus {
    this.#saveBeside();
    return this.status;
  }

  /** Tries again to save what is waiting. */
  retry(): SaveStatus {
    if (this.status.state === 'saved') return this.status;
    this.#file.save();
    this.#saveBeside();
    return this.status;
  }

  /** Where the log was that something else has taken over since this was asked last: it is left as it is, and the work goes on at `path`. */
  tellTakenOver(): string | null {
    const from = this.#takenOver;
    this.#takenOver = null;
    return from;
  }

  /** Writes the whole log to a new file and goes on there. */
  saveElsewhere(path: string): Result<SaveStatus, FileFault> {
    const copy = this.#file.copyTo(path);
    if (!copy.ok) return copy;
    this.#file.close();
    this.#file = copy.value;
    return succeed(this.status);
  }

  /** Leaves the disk to another thread from now on, so that a press need not wait for it without end. */
  saveIn(thread: (file: JournalFile) => LogFile): void {
    if (!this.#left && this.#file instanceof JournalFile) this.#file = thread(this.#file);
  }

  /** Begins a new sitting. */
  resume(): void {
    this.#record({ do: 'resume', at: instantOf(this.#clock.now().getTime()) });
    this.#markFinished();
    this.settle();
  }

  /** Ends the sitting. `unsaved` means that something would be lost: then nothing is let go of yet, so save elsewhere first, or `close`. */
  leave(): SaveStatus {
    if (!this.#left) this.#record({ do: 'quit' });
    this.#left = true;
    if (this.retry().state === 'saved') this.close();
    return this.status;
  }

  /** Lets go of file and lock, saved or not. */
  close(): void {
    this.#file.close();
  }

  #record(event: Command | Occurrence): Result<Session, SessionFault> {
    const nowMs = Math.round(this.#clock.elapsedMs() - this.#beganMs);
    const written = recordEvent(this.#state, event, Math.max(0, nowMs - this.#lastMs));
    if (!written.ok) return written;
    this.#lastMs = nowMs;
    this.#state = written.value.state;
    this.#file.append(written.value.line);
    return succeed(this.session);
  }

  /** Waiting does not give back a file that something else writes to, so all of it is written beside that. */
  #saveBeside(): void {
    const from = this.path;
    for (let number = 1; isTakenOver(this.status); number++) {
      const saved = this.saveElsewhere(beside(withoutEnding(from), `-kept-${number}.jsonl`));
      if (!saved.ok && !isTaken.has(saved.fault.code)) return;
      if (saved.ok) this.#takenOver = from;
    }
  }

  #markFinished(): void {
    if (isFinished(this.session) && !this.#state.finished) this.#record({ do: 'finished' });
  }
}
