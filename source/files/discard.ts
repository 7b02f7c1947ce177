/** Logs that were thrown away: each is moved aside, and kept there until the next one is. */
import { renameSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { namesIn, systemDisk, writeFault } from './disk.ts';
import { inUse, lockOf, releaseLock, takeLock } from './lock.ts';

/** What was thrown away before is gone once this one lies there. A log that is open somewhere is left alone. */
export function discardLog(path: string, folder: string): Result<null, FileFault> {
  try {
    const lock = lockOf(path);
    const taken = takeLock(systemDisk, lock);
    if (!taken.ok) return fail(inUse(path, taken.fault));
    try {
      systemDisk.makeFolder(folder);
      const before = discardedIn(folder);
      const aside = join(folder, basename(path));
      renameSync(path, aside);
      for (const old of before) if (old !== aside) rmSync(old, { force: true });
    } finally {
      releaseLock(systemDisk, lock);
    }
    return succeed(null);
  } catch (error) {
    return fail(writeFault(path, error));
  }
}

/** Brings back what was thrown away last, and says where it lies; null where there is nothing. */
export function restoreLog(folder: string, to: string): Result<string | null, FileFault> {
  const [aside] = discardedIn(folder);
  if (aside === undefined) return succeed(null);
  const path = join(to, basename(aside));
  try {
    systemDisk.makeFolder(to);
    // Linked, not moved: a bag that has taken the name meanwhile stays.
    systemDisk.link(aside, path);
    rmSync(aside);
    return succeed(path);
  } catch (error) {
    return fail(writeFault(path, error));
  }
}

const discardedIn = (folder: string): readonly string[] =>
  namesIn(folder)
    .filter((name) => name.endsWith('.jsonl'))
    .map((name) => join(folder, name));
