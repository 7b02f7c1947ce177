import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemDisk } from './disk.ts';
import { writeFault } from './disk-trouble.ts';
import { writeWhole } from './write-whole.ts';

/** Writes text to a new file, private to the user, whole or not at all. What is there already is left alone. */
export function writeText(path: string, text: string): Result<null, FileFault> {
  try {
    const isMade = writeWhole(systemDisk, path, new TextEncoder().encode(text));
    return isMade ? succeed(null) : fail({ code: 'files/exists', path });
  } catch (error) {
    return fail(writeFault(path, error));
  }
}
