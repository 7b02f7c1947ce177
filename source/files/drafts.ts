/**
 * Files under another name until they are whole. What a kill leaves of one is cleared when the next is made in its folder.
 * The answers of a bag that is being planned are kept so from one start to the next.
 */
import { readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { dirname, join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import { crc32, formatSum } from '../journal/line.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { beside } from './beside.ts';
import { errorCode, systemDisk, writeNewFile } from './disk.ts';
import { writeFault } from './disk-trouble.ts';
import { isRunning } from './process-identity.ts';

/** Names the computer too: of a process elsewhere nobody here can tell whether it has ended. */
export const draftOf = (path: string): string => beside(path, `.draft-${here()}-${process.pid}`);

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
      remove(join(folder, name));
  }
}

function isLeft(name: string): boolean {
  const [, where, pid] = draftName.exec(name) ?? [];
  return where === here() && !isRunning(Number(pid));
}

function isOld(path: string): boolean {
  try {
    return Date.now() - statSync(path).mtimeMs > settledMs;
  } catch (error) {
    errorCode(error);
    return false;
  }
}

export const clearDraftsBeside = (path: string): void => clearDrafts(dirname(path));

function remove(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    errorCode(error);
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    errorCode(error);
    return [];
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
  const fresh = draftOf(path);
  try {
    systemDisk.makeFolder(dirname(path));
    clearDraftsBeside(path);
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
  } catch {}
}
