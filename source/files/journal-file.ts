/**
 * The file of a log: every line goes to it by one write and one flush before anybody hears that it is saved. All that
 * was ever written is kept in memory too. So when the disk fails, the work goes on; when it comes back, one rule mends
 * everything: if the file is the beginning of what should be in it, write the rest; if it is anything else, leave it.
 */
import { dirname } from 'node:path';
import type { FileFault, SaveStatus } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Clock, systemClock } from './clock.ts';
import {
  type Disk,
  errorCode,
  type FileState,
  systemDisk,
  TroubleError,
  troubleOf,
  writeAll,
  writeFault,
} from './disk.ts';
import { inUse, type Lock, lockOf, releaseLock, takeLock } from './lock.ts';
import { HeldBytes, type HeldLog, type LogFile } from './log-file.ts';
import { beside, writeNumbered, writeWhole } from './write-whole.ts';

/** A press should be saved before the hand is back: of a flush that takes longer the maker is told once (rule of thumb). */
const slowFlushMs = 300;

/** By default a new log that holds nothing, in a folder that is not the program's own. */
interface JournalFileOptions extends Partial<Omit<HeldLog, 'path'>> {
  readonly disk?: Disk;
  readonly clock?: Clock;
}

export class JournalFile implements LogFile {
  readonly #disk: Disk;
  readonly #clock: Clock;
  readonly path: string;
  readonly #lock: Lock;
  /** The folder is made where it is missing, also when it goes missing while the log is open. */
  readonly #ownFolder: boolean;
  #torn: Uint8Array;
  #tornPath: string | null;
  readonly #held: HeldBytes;
  #savedLength: number;
  #waiting: number;
  #file: number | null = null;
  /** As the file was after our last line; null before the first. */
  #leftAs: FileState | null = null;
  /** The file was created and its name may not be on disk yet. */
  #newName = false;
  #status: SaveStatus;

  constructor(path: string, options: JournalFileOptions = {}) {
    const { content = new Uint8Array(), torn = new Uint8Array() } = options;
    this.path = path;
    this.#disk = options.disk ?? systemDisk;
    this.#clock = options.clock ?? systemClock;
    this.#lock = options.lock ?? lockOf(path);
    this.#ownFolder = options.ownFolder ?? false;
    this.#torn = torn;
    this.#tornPath = options.tornPath ?? null;
    this.#held = new HeldBytes(content);
    this.#savedLength = options.savedLength ?? content.length;
    this.#waiting = options.waiting ?? 0;
    this.#status = options.status ?? { state: 'saved', slowFlushMs: null };
  }

  get status(): SaveStatus {
    return this.#status;
  }

  get tornPath(): string | null {
    return this.#tornPath;
  }

  append(line: string): SaveStatus {
    this.#held.add(new TextEncoder().encode(line));
    this.#waiting++;
    return this.save();
  }

  /** Costs what is waiting; after trouble, one reading of the file. */
  save(): SaveStatus {
    const before = this.#status.slowFlushMs;
    try {
      const took = this.#bringToDisk();
      this.#status = { state: 'saved', slowFlushMs: before ?? (took > slowFlushMs ? took : null) };
    } catch (error) {
      const trouble = troubleOf(error);
      this.#letGo();
      this.#status = { state: 'unsaved', waiting: this.#waiting, trouble, slowFlushMs: before };
    }
    return this.#status;
  }

  copyTo(path: string): Result<JournalFile, FileFault> {
    return writeCopy(path, this.#held.part(0), { disk: this.#disk, clock: this.#clock });
  }

  close(): void {
    this.#letGo();
    releaseLock(this.#disk, this.#lock);
  }

  /** Closes the file but keeps its lock: another goes on with the log. */
  handOver(): HeldLog {
    this.#letGo();
    return {
      path: this.path,
      lock: this.#lock,
      ownFolder: this.#ownFolder,
      content: this.#held.part(0),
      savedLength: this.#savedLength,
      waiting: this.#waiting,
      torn: this.#torn,
      tornPath: this.#tornPath,
      status: this.#status,
    };
  }

  /** Milliseconds that the flush took. */
  #bringToDisk(): number {
    if (this.#file !== null && !this.#isAsLeft(this.#file)) this.#letGo();
    const file = this.#file ?? this.#reopen();
    writeAll(this.#disk, file, this.#held.part(this.#savedLength));
    const from = this.#clock.elapsedMs();
    this.#disk.flush(file);
    const took = this.#clock.elapsedMs() - from;
    if (this.#newName) this.#disk.flushFolderOf(this.path);
    this.#newName = false;
    this.#savedLength = this.#held.length;
    this.#leftAs = this.#disk.stateOf(file, this.path);
    this.#waiting = 0;
    return took;
  }

  /** Nobody else has written to the file, cut it, taken it away or put another in its place since our last line. */
  #isAsLeft(file: number): boolean {
    const now = this.#disk.stateOf(file, this.path);
    if (now === null || this.#leftAs === null) return now !== null;
    return now.length === this.#leftAs.length && now.changedMs === this.#leftAs.changedMs;
  }

  #reopen(): number {
    if (this.#ownFolder) this.#disk.makeFolder(dirname(this.path));
    if (!takeLock(this.#disk, this.#lock).ok) throw new TroubleError('in-use');
    const found = this.#readIfThere();
    if (found) this.#checkContent(found);
    else this.#newName = true;
    const file = found ? this.#disk.open(this.path) : this.#disk.create(this.path);
    this.#file = file;
    const length = found?.length ?? 0;
    // What lies beyond is a torn line, or our own unfinished write; a failed flush may have dropped that, so it is
    // written again.
    if (length > this.#savedLength) this.#disk.cut(file, this.#savedLength);
    else this.#savedLength = length;
    this.#torn = new Uint8Array();
    return file;
  }

  #readIfThere(): Uint8Array | null {
    try {
      return this.#disk.read(this.path);
    } catch (error) {
      if (errorCode(error) === 'ENOENT') return null;
      throw error;
    }
  }

  #checkContent(found: Uint8Array): void {
    if (this.#held.beginsWith(found)) return;
    const torn = Buffer.concat([this.#held.part(0, this.#savedLength), this.#torn]);
    if (this.#torn.length === 0 || Buffer.compare(found, torn) !== 0) throw new TroubleError('changed');
    this.#tornPath ??= writeNumbered(
      this.#disk,
      (number) => beside(this.path, `.torn-${number}`),
      this.#torn,
    );
  }

  #letGo(): void {
    const file = this.#file;
    this.#file = null;
    this.#leftAs = null;
    try {
      if (file !== null) this.#disk.close(file);
    } catch (error) {
      // Closing what has failed already may fail as well; nothing hangs on it.
      errorCode(error);
    }
  }
}

/** Writes a whole log to a new file, to go on there. Leaves nothing behind when that fails. */
export function writeCopy(
  path: string,
  content: Uint8Array,
  { disk = systemDisk, lock = lockOf(path), ...options }: JournalFileOptions = {},
): Result<JournalFile, FileFault> {
  try {
    const taken = takeLock(disk, lock);
    if (!taken.ok) return fail(inUse(path, taken.fault));
    if (!writeWhole(disk, path, content)) {
      releaseLock(disk, lock);
      return fail({ code: 'files/exists', path });
    }
  } catch (error) {
    releaseLock(disk, lock);
    return fail(writeFault(path, error));
  }
  const copy = new JournalFile(path, { ...options, disk, lock, content });
  copy.save();
  return succeed(copy);
}
