/** The disk: the few things that logs need of it, and what can go wrong with it. */
import {
  closeSync,
  constants,
  existsSync,
  fdatasyncSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  type Stats,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';
import type { DiskTrouble, FileFault } from '../journal/fault.ts';

export interface FileState {
  readonly length: number;
  /** When it was last written to or renamed, on the disk's own clock; a copy that keeps times cannot set it. */
  readonly changedMs: number;
}

/** The few things that logs need of a disk; every one throws as `node:fs` does. */
export interface Disk {
  readonly read: (path: string) => Uint8Array;
  /** Opens a file for appending that must not be there yet; private to the user. */
  readonly create: (path: string) => number;
  /** Opens a file for appending that must be there. */
  readonly open: (path: string) => number;
  /** How many bytes were written: perhaps fewer than were given. */
  readonly write: (file: number, bytes: Uint8Array) => number;
  readonly flush: (file: number) => void;
  readonly cut: (file: number, length: number) => void;
  /** What the open file is like now; null once its name is gone, or is that of another file. */
  readonly stateOf: (file: number, path: string) => FileState | null;
  readonly close: (file: number) => void;
  /** Gives a file a second name; fails where the name is taken. */
  readonly link: (path: string, name: string) => void;
  /** Gives a file another name, in place of any that has it. */
  readonly rename: (path: string, name: string) => void;
  readonly remove: (path: string) => void;
  /** Makes a folder private to the user where it is not there yet. */
  readonly makeFolder: (path: string) => void;
  /** Makes sure that the file's name is on disk, not only what it holds. */
  readonly flushFolderOf: (path: string) => void;
}

const append = constants.O_WRONLY | constants.O_APPEND;

export const systemDisk: Disk = {
  read: (path) => readFileSync(path),
  create: (path) => openSync(path, append | constants.O_CREAT | constants.O_EXCL, 0o600),
  open: (path) => openSync(path, append),
  write: (file, bytes) => writeSync(file, bytes),
  flush: fdatasyncSync,
  cut: ftruncateSync,
  stateOf: (file, path) => {
    const { ino, dev, size, ctimeMs } = fstatSync(file);
    const named = statIfThere(path);
    return named?.ino === ino && named.dev === dev ? { length: size, changedMs: ctimeMs } : null;
  },
  close: closeSync,
  link: linkSync,
  rename: renameSync,
  remove: unlinkSync,
  makeFolder,
  flushFolderOf,
};

function statIfThere(path: string): Stats | null {
  try {
    return statSync(path);
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error;
    return null;
  }
}

/** Node's own way of making the folders above too never ends where a folder is there that takes none, such as /proc. */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  const above = dirname(path);
  if (above !== path) makeFolder(above);
  try {
    mkdirSync(path, { mode: 0o700 });
  } catch (error) {
    // Another process may have made it meanwhile.
    if (errorCode(error) !== 'EEXIST') throw error;
  }
}

function flushFolderOf(path: string): void {
  // Windows has no such thing.
  if (process.platform === 'win32') return;
  const folder = openSync(dirname(path), constants.O_RDONLY);
  try {
    fsyncSync(folder);
  } catch (error) {
    // Some network drives do not know it either.
    if (errorCode(error) !== 'EINVAL') throw error;
  } finally {
    closeSync(folder);
  }
}

/** `ENOSPC` and the like; the error itself where it has no such code, since then it is our own. */
export function errorCode(error: unknown): string {
  const code = (error as NodeJS.ErrnoException)?.code;
  if (typeof code !== 'string' || !/^E[A-Z0-9]+$/.test(code)) throw error;
  return code;
}

/** Writes all of `bytes`, however many calls it takes. */
export function writeAll(disk: Disk, file: number, bytes: Uint8Array): void {
  let rest = bytes;
  while (rest.length > 0) rest = rest.subarray(disk.write(file, rest));
}

/** A new file with this content, flushed. Fails where the name is taken; leaves nothing when it fails. */
export function writeNewFile(disk: Disk, path: string, bytes: Uint8Array): void {
  const file = disk.create(path);
  try {
    writeAll(disk, file, bytes);
    disk.flush(file);
    disk.flushFolderOf(path);
  } catch (error) {
    disk.remove(path);
    throw error;
  } finally {
    disk.close(file);
  }
}

/** None where there is no such folder, or it cannot be read. */
export function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    errorCode(error);
    return [];
  }
}

export function removeIfThere(disk: Disk, path: string): void {
  try {
    disk.remove(path);
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error;
  }
}

const byCode: Readonly<Record<string, DiskTrouble>> = {
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EFBIG: 'disk-full',
  EROFS: 'read-only',
  EACCES: 'no-permission',
  EPERM: 'no-permission',
  ENOENT: 'gone',
  ENOTDIR: 'gone',
  ESTALE: 'gone',
  ENODEV: 'gone',
  ENXIO: 'gone',
  ETIMEDOUT: 'no-answer',
  EHOSTDOWN: 'no-answer',
  EHOSTUNREACH: 'no-answer',
};

/** Thrown by our own checks where the disk itself has no complaint. */
export class TroubleError extends Error {
  readonly trouble: DiskTrouble;
  constructor(trouble: DiskTrouble) {
    super(trouble);
    this.trouble = trouble;
  }
}

/** What an error from the disk comes down to. Throws it again where it is none. */
export const troubleOf = (error: unknown): DiskTrouble =>
  error instanceof TroubleError ? error.trouble : (byCode[errorCode(error)] ?? 'disk-error');

/** An error from the disk as a fault that names the file. */
export function fileFault(path: string, error: unknown): FileFault {
  if (error instanceof TroubleError) {
    return { code: 'files/trouble', path, trouble: error.trouble, detail: error.trouble };
  }
  const detail = errorCode(error);
  if (detail === 'ENOENT' || detail === 'ENOTDIR') return { code: 'files/missing', path };
  if (detail === 'EISDIR') return { code: 'files/is-folder', path };
  if (detail === 'EEXIST') return { code: 'files/exists', path };
  return { code: 'files/trouble', path, trouble: troubleOf(error), detail };
}

/** The same for a file that was to be written again, where what is missing is its folder. */
export function writeFault(path: string, error: unknown): FileFault {
  const fault = fileFault(path, error);
  if (fault.code !== 'files/missing') return fault;
  return { code: errorCode(error) === 'ENOTDIR' ? 'files/not-a-folder' : 'files/no-folder', path };
}
