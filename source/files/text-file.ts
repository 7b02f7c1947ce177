import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemDisk, writeNewFile } from './disk.ts';
import { writeFault } from './disk-trouble.ts';

/** Writes text to a new file, private to the user. What is there already is left alone. */
export function writeText(path: string, text: string): Result<null, FileFault> {
  try {
    writeNewFile(systemDisk, path, new TextEncoder().encode(text));
    return succeed(null);
  } catch (error) {
    return fail(writeFault(path, error));
  }
}
