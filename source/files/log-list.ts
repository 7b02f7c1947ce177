/** The logs in a folder: what is in each, which was used last, and a bag among them as a maker names it. */
import { accessSync, constants, existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { FileFault, JournalFault } from '../journal/fault.ts';
import type { LogState } from '../journal/log-state.ts';
import { type LogReading, readLog, type Tally, tallyLog } from '../journal/read-log.ts';
import { instantOf } from '../shared/numbers.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';
import { logFolder } from './data-folders.ts';
import { errorCode, fileFault, namesIn } from './disk.ts';
import { mostLogBytes, readBytes } from './read-file.ts';

export interface ListedLog {
  readonly path: string;
  readonly lastUsed: Date;
  /** What is in it, or why it cannot be read. */
  readonly tally: Result<Tally, JournalFault | FileFault>;
}

/** The logs in a folder, the one used last first. None where there is no such folder. Reads each of them whole. */
export const listLogs = (folder: string): readonly ListedLog[] =>
  byLastUse(folder).map(({ path, lastUsed, mayNotEnd }) => {
    const found = mayNotEnd ? fail(noFile(path)) : readLogFile(path);
    return { path, lastUsed, tally: found.ok ? tallyLog(found.value.reading) : found };
  });

/** A log as it was read, and what was understood of it. */
export interface FoundLog {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly reading: LogReading;
}

/** A log that is there and cannot be used as it is. */
interface DamagedLog {
  readonly path: string;
  readonly fault: JournalFault | FileFault;
  /** How far it could be read, where the file can be. */
  readonly read: FoundLog | null;
}

interface FoundLogs {
  readonly found: FoundLog | null;
  /** The log used last of all, where that is damaged: it may have been meant. */
  readonly damaged: DamagedLog | null;
}

export function readLogFile(path: string): Result<FoundLog, FileFault> {
  const bytes = readBytes(path, mostLogBytes);
  return bytes.ok ? succeed({ path, bytes: bytes.value, reading: readLog(bytes.value) }) : bytes;
}

/** The sound logs in a folder as they were read, the one used last first. */
export function* soundLogs(folder: string): Generator<FoundLog & { readonly state: LogState }> {
  for (const { path, mayNotEnd } of byLastUse(folder)) {
    const read = mayNotEnd ? fail(noFile(path)) : readLogFile(path);
    if (!read.ok) continue;
    const { state, fault } = read.value.reading;
    if (state && !fault) yield { ...read.value, state };
  }
}

/** The log used last of those that are sound and `wanted`. Those used before it are not read. */
export function findLog(folder: string, wanted: (tally: Tally) => boolean): FoundLogs {
  let damaged: DamagedLog | null = null;
  for (const [i, { path, mayNotEnd }] of byLastUse(folder).entries()) {
    if (mayNotEnd) continue;
    const read = readLogFile(path);
    const tally = read.ok ? tallyLog(read.value.reading) : read;
    if (read.ok && tally.ok && wanted(tally.value)) return { found: read.value, damaged };
    if (i === 0 && !tally.ok && !isNoLog.has(tally.fault.code))
      damaged = { path, fault: tally.fault, read: read.ok ? read.value : null };
  }
  return { found: null, damaged };
}

/** Nothing was ever recorded in these. */
const isNoLog: ReadonlySet<string> = new Set([
  'journal/not-a-log',
  'journal/no-header',
  'files/is-folder',
  'files/missing',
]);

/** Why what is in a folder cannot be told; null where it can, or where there is no such folder. */
export function folderFault(folder: string): FileFault | null {
  try {
    readdirSync(folder);
    accessSync(folder, constants.X_OK);
    return null;
  } catch (error) {
    const fault = fileFault(folder, error);
    return fault.code === 'files/missing' ? null : fault;
  }
}

interface NamedBag {
  readonly path: string;
  readonly lastUsed: Date;
  /** A pipe, a socket or a device: reading it might never end. */
  readonly mayNotEnd: boolean;
}

const noFile = (path: string): FileFault => ({
  code: 'files/trouble',
  path,
  trouble: 'disk-error',
  detail: 'ENXIO',
});

const byLastUse = (folder: string): readonly NamedBag[] =>
  namesIn(folder)
    .filter((name) => name.endsWith('.jsonl'))
    .map((name) => join(folder, name))
    .map(named)
    .sort((a, b) => b.lastUsed.getTime() - a.lastUsed.getTime());

/** What cannot even be looked at, such as a loop of links, counts as used last of all. */
function named(path: string): NamedBag {
  try {
    const found = statSync(path);
    return { path, lastUsed: found.mtime, mayNotEnd: !found.isFile() && !found.isDirectory() };
  } catch (error) {
    errorCode(error);
    return { path, lastUsed: new Date(0), mayNotEnd: false };
  }
}

const longestSlug = 40;

/** The name of a bag as that of a file: `dice-bag`. */
export const slugOf = (name: string): string =>
  name
    .toLowerCase()
    .match(/[\p{L}\p{M}\p{N}]+/gu)
    ?.join('-')
    .match(new RegExp(`^.{0,${longestSlug}}`, 'u'))?.[0] ?? 'bag';

/** A free name for the log of a new bag: `dice-bag-2031-03-04.jsonl`. */
export function newLogPath(folder: string, name: string, day: Date): string {
  const stem = join(folder, `${slugOf(name)}-${instantOf(day.getTime()).slice(0, 10)}`);
  let path = `${stem}.jsonl`;
  for (let number = 2; existsSync(path); number++) path = `${stem}-${number}.jsonl`;
  return path;
}

type FoundBag =
  | { readonly is: 'one'; readonly bag: ListedLog }
  | { readonly is: 'none' }
  | { readonly is: 'several'; readonly names: readonly string[] };

/** By number in the list, by whole name, or by a part of a name that only one has. Of bags of one name the one used last. */
function findBag(logs: readonly ListedLog[], wanted: string): FoundBag {
  const numbered = /^\d+$/.test(wanted) ? logs[Number(wanted) - 1] : undefined;
  if (numbered) return { is: 'one', bag: numbered };
  const slug = slugOf(wanted);
  const named = logs.flatMap((bag) => (bag.tally.ok ? [{ bag, name: bag.tally.value.name }] : []));
  const whole = named.find(({ name }) => slugOf(name) === slug);
  if (whole) return { is: 'one', bag: whole.bag };
  const partly = named.filter(({ name }) => slugOf(name).includes(slug));
  const names = [...new Set(partly.map(({ name }) => name))];
  if (names.length > 1) return { is: 'several', names };
  return partly[0] ? { is: 'one', bag: partly[0].bag } : { is: 'none' };
}

/** The bag that a maker names, or why there is none, in a sentence. */
export function bagNamed(wanted: string, { logs: say }: Words): Result<ListedLog, string> {
  const logs = listLogs(logFolder());
  const found = findBag(logs, wanted);
  if (found.is === 'none') return fail(say.noSuchBag(wanted, logs.length));
  return found.is === 'several' ? fail(say.severalBags(wanted, found.names)) : succeed(found.bag);
}

/** The log of the bag to go on with. `open`: the log that is open now, which a name that another has too does not mean. */
export function bagToOpen(wanted: string, open: string | null, words: Words): Result<string, string> {
  const found = bagNamed(wanted, words);
  if (!found.ok) return found;
  const bag = found.value.path === open ? namesake(wanted, found.value) : found.value;
  if (!bag.tally.ok) return fail(words.logs.cannotOpen(bag.path));
  return bag.path === open ? fail(words.logs.openAlready(bag.tally.value.name)) : succeed(bag.path);
}

/** Another bag of the same name where there is one; a number means one bag alone. */
function namesake(wanted: string, bag: ListedLog): ListedLog {
  if (/^\d+$/.test(wanted)) return bag;
  const found = findBag(
    listLogs(logFolder()).filter(({ path }) => path !== bag.path),
    wanted,
  );
  return found.is === 'one' ? found.bag : bag;
}

/** A log by its file; where there is no such file, by the number or name of its bag. */
export function logNamed(file: string, words: Words): string {
  if (existsSync(file)) return file;
  const found = bagNamed(file, words);
  return found.ok ? found.value.path : file;
}
