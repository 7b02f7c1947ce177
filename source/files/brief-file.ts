import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { readBytes } from './read-file.ts';
import { writeText } from './text-file.ts';

const mostBriefBytes = 1024 * 1024;

/** The text of a brief file, without a byte order mark. */
export function readBriefFile(path: string): Result<string, FileFault> {
  const bytes = readBytes(path, mostBriefBytes);
  if (!bytes.ok) return bytes;
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    return fail({ code: 'files/not-text', path });
  }
}

/** Writes a brief to a new file, private to the user. What is there already is left alone. */
export const writeBriefFile = (path: string, brief: unknown): Result<null, FileFault> =>
  writeText(path, `${JSON.stringify(brief, null, 2)}\n`);
