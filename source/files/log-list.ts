import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { JournalFault } from '../journal/fault.ts';
import type { FileFault } from '../journal/file-fault.ts';
import { type LogReading, readLog, type Tally, tallyLog } from '../journal/read-log.ts';
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
export const listLogs = (folder: string): readonly ListedLog[] =>
  byLastUse(folder).map(({ path, lastUsed }) => {
    const bytes = readBytes(path, mostLogBytes);
    return { path, lastUsed, tally: bytes.ok ? tallyLog(readLog(bytes.value)) : bytes };
  });

/** A log as it was read, and what was understood of it. */
export interface FoundLog {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly reading: LogReading;
}

/** The log used last of those that are sound and `wanted`. Those used before it are not read. */
export function findLog(folder: string, wanted: (tally: Tally) => boolean): FoundLog | null {
  for (const { path } of byLastUse(folder)) {
    const bytes = readBytes(path, mostLogBytes);
    if (!bytes.ok) continue;
    const reading = readLog(bytes.value);
    const tally = tallyLog(reading);
    if (tally.ok && wanted(tally.value)) return { path, bytes: bytes.value, reading };
  }
  return null;
}

const byLastUse = (folder: string): readonly Pick<ListedLog, 'path' | 'lastUsed'>[] =>
  namesIn(folder)
    .filter((name) => name.endsWith('.jsonl'))
    .map((name) => join(folder, name))
    .map((path) => ({ path, lastUsed: statSync(path, { throwIfNoEntry: false })?.mtime ?? new Date(0) }))
    .sort((a, b) => b.lastUsed.getTime() - a.lastUsed.getTime());

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    errorCode(error);
    return [];
  }
}

const longestSlug = 40;

/** The name of a bag as that of a file: `dice-bag`. */
export const slugOf = (name: string): string =>
  name
    .toLowerCase()
    .match(/[\p{L}\p{M}\p{N}]+/gu)
    ?.join('-')
    .slice(0, longestSlug) ?? 'bag';

/** A free name for the log of a new bag: `dice-bag-2031-03-04.jsonl`. */
export function newLogPath(folder: string, name: string, day: Date): string {
  const stem = join(folder, `${slugOf(name)}-${day.toISOString().slice(0, 10)}`);
  let path = `${stem}.jsonl`;
  for (let number = 2; existsSync(path); number++) path = `${stem}-${number}.jsonl`;
  return path;
}
