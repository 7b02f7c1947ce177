/** The answers of a bag that is being planned, kept from one start to the next. They are replaced whole or not at all. */
import { readFileSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemDisk, writeNewFile } from './disk.ts';
import { writeFault } from './disk-trouble.ts';
import { clearDraftsBeside, draftOf } from './drafts.ts';

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
