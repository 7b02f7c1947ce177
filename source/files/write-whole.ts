/**
 * Files written whole or not at all: under another name until they are. What a kill leaves of one is cleared when the next is
 * made in its folder. The answers of a bag that is being planned are kept so from one start to the next.
 */

import { readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import { crc32, formatSum } from '../journal/line.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import {
  type Disk,
  errorCode,
  namesIn,
  removeIfThere,
  systemDisk,
  writeFault,
  writeNewFile,
} from './disk.ts';

/** Names the computer too: of a process elsewhere nobody here can tell whether it has ended. */
export const draftBeside = (path: string): string => beside(path, `.draft-${here()}-${process.pid}`);

const here = (): string => formatSum(crc32(Buffer.from(hostname())));

const draftName = /\.draft-([0-9a-f]{8})-(\d{1,10})$/;
/** What the library leaves that writes the settings. */
const settingsDraftName = /^settings\.json\.tmp-\d{10}[0-9a-f]{6}$/;
/** Longer than any writing takes (a rule of thumb). */
const settledMs = 60_000;

/** Removes what processes that have ended left in a folder. What cannot be removed does no harm. */
export function clearDrafts(folder: string): void {
  for (const name of namesIn(folder)) {
    if (isLeft(name) || (settingsDraftName.test(name) && isOld(join(folder, name))))
      removeDraftFile(join(folder, name));
  }
}

function isLeft(name: string): boolean {
  const [, where, pid] = draftName.exec(name) ?? [];
  return where === here() && !isRunning(Number(pid));
}

/** Whether there is a process of this number. */
export function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function isOld(path: string): boolean {
  try {
    return Date.now() - statSync(path).mtimeMs > settledMs;
  } catch (error) {
    errorCode(error);
    return false;
  }
}

/** Empty where there is nothing to read: the questions are asked from the first on. */
export function readDraftFile(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

export function writeDraftFile(path: string, text: string): Result<null, FileFault> {
  const fresh = draftBeside(path);
  try {
    systemDisk.makeFolder(dirname(path));
    clearDrafts(dirname(path));
    rmSync(fresh, { force: true });
    writeNewFile(systemDisk, fresh, new TextEncoder().encode(text));
    renameSync(fresh, path);
    return succeed(null);
  } catch (error) {
    return fail(writeFault(path, error));
  }
}

/** What cannot be removed is asked about again, and does no other harm. */
export function removeDraftFile(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    errorCode(error);
  }
}

/** Drives that know no links. */
const noLinks: ReadonlySet<string> = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/**
 * Makes a new file under another name and links it to its own, so that nobody ever sees half of it. Tells where the name is
 * taken, and where the drive knows no links: then nothing has been made.
 */
export function linkInPlace(disk: Disk, path: string, bytes: Uint8Array): 'made' | 'taken' | 'no-links' {
  const draft = draftBeside(path);
  clearDrafts(dirname(path));
  removeIfThere(disk, draft);
  try {
    writeNewFile(disk, draft, bytes);
    disk.link(draft, path);
    return 'made';
  } catch (error) {
    const code = errorCode(error);
    if (code === 'EEXIST') return 'taken';
    if (noLinks.has(code)) return 'no-links';
    throw error;
  } finally {
    removeIfThere(disk, draft);
  }
}

/** A new file, whole or not at all; false where the name is taken. */
export function writeWhole(disk: Disk, path: string, bytes: Uint8Array): boolean {
  const made = linkInPlace(disk, path, bytes);
  const isMade = made === 'no-links' ? renameInPlace(disk, path, bytes) : made === 'made';
  if (isMade) disk.flushFolderOf(path);
  return isMade;
}

/**
 * For drives that know no links. Renaming would put the file in place of any other, so an empty one takes the name first: that
 * is all that a kill between the two leaves.
 */
function renameInPlace(disk: Disk, path: string, bytes: Uint8Array): boolean {
  const draft = draftBeside(path);
  writeNewFile(disk, draft, bytes);
  let hasName = false;
  try {
    hasName = writeWithoutLink(disk, path, new Uint8Array());
    if (hasName) disk.rename(draft, path);
    return hasName;
  } catch (error) {
    if (hasName) removeIfThere(disk, path);
    throw error;
  } finally {
    removeIfThere(disk, draft);
  }
}

/** A new file under its own name at once, for what is as good as whole as soon as it has the name. */
export function writeWithoutLink(disk: Disk, path: string, bytes: Uint8Array): boolean {
  try {
    writeNewFile(disk, path, bytes);
    return true;
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    throw error;
  }
}

/** A new file at the first of the names for 1, 2, 3 … that is free; gives the name. */
export function writeNumbered(disk: Disk, nameOf: (number: number) => string, bytes: Uint8Array): string {
  let number = 1;
  while (!writeWhole(disk, nameOf(number), bytes)) number++;
  return nameOf(number);
}

/** Writes text to a new file, private to the user, whole or not at all. What is there already is left alone. */
export function writeText(path: string, text: string): Result<null, FileFault> {
  try {
    const isMade = writeWhole(systemDisk, path, new TextEncoder().encode(text));
    return isMade ? succeed(null) : fail({ code: 'files/exists', path });
  } catch (error) {
    return fail(writeFault(path, error));
  }
}

/** As file systems have it, in bytes. */
const longestName = 255;
/** For the ending, and for what is put behind it while the file is made. */
const room = 64;

/** `bag` of `bag.jsonl`. */
export const withoutEnding = (path: string): string => path.replace(/\.jsonl$/, '');

/** A file beside `path`: its name with an ending. One that leaves no room for it is cut, its sum in place of the rest. */
export function beside(path: string, ending: string): string {
  const name = basename(path);
  const bytes = Buffer.from(name);
  if (bytes.length <= longestName - room) return path + ending;
  const kept = [...name].reduce(
    (text, sign) => (Buffer.byteLength(text + sign) <= longestName - room - 9 ? text + sign : text),
    '',
  );
  return join(dirname(path), `${kept}-${formatSum(crc32(bytes))}${ending}`);
}
