import { join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemDisk } from './disk.ts';
import { writeFault } from './disk-trouble.ts';
import { slugOf } from './log-list.ts';
import { readBytes } from './read-file.ts';
import { writeNumbered, writeText } from './write-whole.ts';

const mostBriefBytes = 1024 * 1024;

/** The text of a brief file, without a byte order mark. */
export function readBriefText(path: string): Result<string, FileFault> {
  const bytes = readBytes(path, mostBriefBytes);
  if (!bytes.ok) return bytes;
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    return fail({ code: 'files/not-text', path });
  }
}

const textOf = (brief: unknown): string => `${JSON.stringify(brief, null, 2)}\n`;

/** Writes a brief to a new file, private to the user. What is there already is left alone. */
export const writeBriefFile = (path: string, brief: unknown): Result<null, FileFault> =>
  writeText(path, textOf(brief));

/** Writes a brief into a folder of ours under the bag's name, with a number where that is taken; gives the path. */
export function writeBriefIn(folder: string, name: string, brief: unknown): Result<string, FileFault> {
  const stem = join(folder, slugOf(name));
  const pathOf = (number: number): string => (number === 1 ? `${stem}.json` : `${stem}-${number}.json`);
  try {
    systemDisk.makeFolder(folder);
    return succeed(writeNumbered(systemDisk, pathOf, new TextEncoder().encode(textOf(brief))));
  } catch (error) {
    return fail(writeFault(pathOf(1), error));
  }
}
