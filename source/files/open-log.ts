import { realpathSync, statSync } from 'node:fs';
import type { FileFault, JournalFault } from '../journal/fault.ts';
import { beginLog, type Rebuilt, rebuildLog } from '../journal/log-state.ts';
import { readLog } from '../journal/read-log.ts';
import type { BriefFile } from '../planning/brief.ts';
import type { PlanFault } from '../planning/fault.ts';
import { isFinished } from '../session/session.ts';
import { instantOf } from '../shared/numbers.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Clock, systemClock } from './clock.ts';
import { type Disk, fileFault, systemDisk, troubleOf } from './disk.ts';
import { JournalFile } from './journal-file.ts';
import { inUse, type Lock, lockOf, releaseLock, takeLock } from './lock.ts';
import type { FoundLog } from './log-list.ts';
import { mostLogBytes, readBytes } from './read-file.ts';
import { SessionLog } from './session-log.ts';
import { beside, withoutEnding, writeNumbered } from './write-whole.ts';

interface LogOptions {
  readonly path: string;
  /** The folder is the program's own: made where it is missing, also when it goes missing while the log is open. */
  readonly ownFolder?: boolean;
  readonly disk?: Disk;
  readonly clock?: Clock;
}

const usual = { ownFolder: false, disk: systemDisk, clock: systemClock };

interface KnownLog extends LogOptions {
  /** The log as it was read a moment ago: it is understood again only where the file holds something else by now. */
  readonly asRead?: Pick<FoundLog, 'bytes' | 'reading'> | undefined;
}

interface NewLog extends LogOptions {
  readonly brief: BriefFile;
  /** Version of this program. */
  readonly program: string;
}

/**
 * Begins a log. The file must not be there, or be empty. Where the disk will not have it the session begins all the
 * same, `unsaved`, unless the folder does not exist.
 */
export function startSessionLog(log: NewLog): Result<SessionLog, PlanFault | FileFault> {
  const { path, brief, program, ownFolder, disk, clock } = { ...usual, ...log };
  const begun = beginLog({ brief, program, startedAt: instantOf(clock.now().getTime()) });
  if (!begun.ok) return begun;
  const there = readBytes(path, mostLogBytes);
  if (there.ok ? there.value.length > 0 : there.fault.code === 'files/too-large') {
    return fail({ code: 'files/exists', path });
  }
  if (!there.ok && there.fault.code === 'files/is-folder') return there;
  const lock = takeLockIfPossible(disk, path);
  if (!lock.ok) return lock;
  const file = new JournalFile(path, { disk, clock, ownFolder, lock: lock.value });
  const status = file.append(begun.value.line);
  if (status.state === 'unsaved' && status.trouble === 'gone' && !ownFolder) {
    return fail({ code: 'files/no-folder', path });
  }
  return succeed(new SessionLog(file, begun.value.state, clock));
}

/**
 * Opens a log to go on with, and begins a new sitting in it. A torn last line is moved to a file of its own beside the
 * log. A log that another process has open is `files/in-use`: it can still be read and looked at.
 */
export function openSessionLog(log: KnownLog): Result<SessionLog, JournalFault | FileFault> {
  const { path, asRead, ownFolder, disk, clock } = { ...usual, ...log };
  const real = realPath(path);
  if (!real.ok) return real;
  const lock = takeLockIfPossible(disk, real.value);
  if (!lock.ok) return lock;
  const opened = openLocked({ path: real.value, ownFolder, disk, clock, lock: lock.value }, asRead);
  if (!opened.ok) releaseLock(disk, lock.value);
  return opened;
}

function openLocked(
  { path, ...options }: Required<LogOptions> & { readonly lock: Lock },
  asRead: KnownLog['asRead'],
): Result<SessionLog, JournalFault | FileFault> {
  const bytes = readBytes(path, mostLogBytes);
  if (!bytes.ok) return bytes;
  const isKnown = asRead !== undefined && Buffer.compare(asRead.bytes, bytes.value) === 0;
  const { state, fault, soundBytes, foreign } = isKnown ? asRead.reading : readLog(bytes.value);
  if (fault || !state) return fail(fault ?? { code: 'journal/no-header' });
  const content = bytes.value.subarray(0, soundBytes);
  const torn = bytes.value.subarray(soundBytes);
  const file = new JournalFile(path, { ...options, content, torn });
  const log = new SessionLog(file, state, options.clock, foreign);
  log.resume();
  return succeed(log);
}

/** The lock, or who has it. Where the disk will not have a lock, nothing is written either, so that shows later. */
function takeLockIfPossible(disk: Disk, path: string): Result<Lock, FileFault> {
  const lock = lockOf(path);
  try {
    const taken = takeLock(disk, lock);
    return taken.ok ? taken : fail(inUse(path, taken.fault));
  } catch (error) {
    troubleOf(error);
    return succeed(lock);
  }
}

/** Two names of one file share one lock. */
function realPath(path: string): Result<string, FileFault> {
  try {
    return succeed(realpathSync(path));
  } catch (error) {
    return fail(fileFault(path, error));
  }
}

/** What a damaged log may be begun again from, where its own first line is damaged. */
type AtHand = Pick<NewLog, 'brief' | 'program'>;

export interface SoundPart {
  readonly path: string;
  readonly lines: number;
  /** Steps confirmed in it. */
  readonly stepsDone: number;
  readonly finished: boolean;
}

/**
 * Saves the sound lines of a damaged log beside it as a log of its own, `NAME-sound-1.jsonl`, to go on with; the
 * damaged one stays as it is. Asked again, it gives the one it made before. Null where not even the first line is sound,
 * unless the brief is at hand.
 */
export function saveSoundPart(
  log: FoundLog,
  atHand: AtHand | null = null,
  disk: Disk = systemDisk,
): Result<SoundPart | null, FileFault> {
  const { path } = log;
  const found = soundPartOf(log, atHand);
  if (!found) return succeed(null);
  const { state, bytes: sound } = found;
  const nameOf = (number: number): string => beside(withoutEnding(path), `-sound-${number}.jsonl`);
  try {
    const saved = findSaved(nameOf, sound) ?? writeNumbered(disk, nameOf, sound);
    const { session, events } = state;
    return succeed({
      path: saved,
      lines: events + 1,
      stepsDone: session.done,
      finished: isFinished(session),
    });
  } catch (error) {
    return fail(fileFault(path, error));
  }
}

/** The file's own time stands for that of the beginning where that cannot be read: it is the same when asked again. */
function soundPartOf({ path, bytes, reading }: FoundLog, atHand: AtHand | null): Rebuilt | null {
  const { state, soundBytes } = reading;
  if (state) return { state, bytes: bytes.subarray(0, soundBytes) };
  return atHand && rebuildLog(bytes, { ...atHand, startedAt: instantOf(statSync(path).mtimeMs) });
}

function findSaved(nameOf: (number: number) => string, sound: Uint8Array): string | null {
  for (let number = 1; ; number++) {
    const there = readBytes(nameOf(number), mostLogBytes);
    if (!there.ok) return null;
    if (Buffer.compare(there.value.subarray(0, sound.length), sound) === 0) return nameOf(number);
  }
}
