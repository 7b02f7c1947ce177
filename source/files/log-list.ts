import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { type Tally, tallyLog } from '../journal/check.ts';
import type { JournalFault } from '../journal/fault.ts';
import type { FileFault } from '../journal/file-fault.ts';
import { readLog } from '../journal/read-log.ts';
import type { Result } from '../shared/result.ts';
import { errorCode } from './disk.ts';
import { mostLogBytes, readBytes } from './read-file.ts';

export interface ListedLog {
  readonly path: string;
  readonly lastUsed: Date;
  /** What is in it, or why it cannot be read. */
  readonly tally: Result<Tally, JournalFault | FileFault>;
}

/** The logs in a folder, the one used last first. None where there is no such folder. Reads each of them whole. */
export function listLogs(folder: string): readonly ListedLog[] {
  return namesIn(folder)
    .filter((name) => name.endsWith('.jsonl'))
    .map((name) => listed(join(folder, name)))
    .sort((a, b) => b.lastUsed.getTime() - a.lastUsed.getTime());
}

function listed(path: string): ListedLog {
  const bytes = readBytes(path, mostLogBytes);
  const lastUsed = statSync(path, { throwIfNoEntry: false })?.mtime ?? new Date(0);
  return { path, lastUsed, tally: bytes.ok ? tallyLog(readLog(bytes.value)) : bytes };
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    errorCode(error);
    return [];
  }
}

const longestSlug = 40;

/** A free name for the log of a new bag: `dice-bag-2031-03-04.jsonl`. */
export function newLogPath(folder: string, name: string, day: Date): string {
  const slug =
    name
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu)
      ?.join('-')
      .slice(0, longestSlug) ?? 'bag';
  const stem = join(folder, `${slug}-${day.toISOString().slice(0, 10)}`);
  let path = `${stem}.jsonl`;
  for (let number = 2; existsSync(path); number++) path = `${stem}-${number}.jsonl`;
  return path;
}
