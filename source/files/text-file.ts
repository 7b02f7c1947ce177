import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemDisk, writeNewFile } from './disk.ts';
import { writeFault } from './disk-trouble.ts';
import { linkInPlace } from './link-in-place.ts';

/** Writes text to a new file, private to the user, whole or not at all. What is there already is left alone. */
export function writeText(path: string, text: string): Result<null, FileFault> {
  const bytes = new TextEncoder().encode(text);
  try {
    const made = linkInPlace(systemDisk, path, bytes);
    if (made === 'no-links') writeNewFile(systemDisk, path, bytes);
    return made === 'taken' ? fail({ code: 'files/exists', path }) : succeed(null);
  } catch (error) {
    return fail(writeFault(path, error));
  }
}
