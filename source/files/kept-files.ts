/**
 * What is kept beside the bags: briefs, the shelf, the party that is on, and the log that was thrown away last, until the next
 * one is. Shelf and party are replaced whole or not at all, and only where what lies there can be read.
 */

import { renameSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import type { BriefFile } from '../planning/brief.ts';
import { readBriefFile } from '../planning/parse-brief.ts';
import { emptyShelf, readShelf, type Shelf, shelfJson } from '../planning/shelf.ts';
import { fail, jsonIn, type Result, succeed } from '../shared/result.ts';
import { namesIn, systemDisk, writeFault } from './disk.ts';
import { inUse, lockOf, releaseLock, takeLock } from './lock.ts';
import { slugOf } from './log-list.ts';
import { readBytes } from './read-file.ts';
import { writeDraftFile, writeNumbered, writeText } from './write-whole.ts';

const mostBytes = 4 * 1024 * 1024;

export type ShelfFault = FileFault | { readonly code: 'shelf/damaged'; readonly path: string };
export type PartyFault = FileFault | { readonly code: 'party/damaged'; readonly path: string };

/** Empty where there is none yet. */
export const loadShelf = (path: string): Result<Shelf, ShelfFault> =>
  load(path, 'shelf/damaged', emptyShelf, readShelf);

export const saveShelf = (path: string, shelf: Shelf): Result<null, FileFault> =>
  save(path, shelfJson(shelf));

/** None where none is planned. */
export const loadParty = (path: string): Result<readonly BriefFile[], PartyFault> =>
  load(path, 'party/damaged', [], readParty);

export const saveParty = (path: string, bags: readonly BriefFile[]): Result<null, FileFault> =>
  save(
    path,
    bags.map(({ json }) => json),
  );

function readParty(stored: unknown): readonly BriefFile[] | null {
  if (!Array.isArray(stored)) return null;
  const briefs = stored.flatMap((json) => {
    const file = readBriefFile(json);
    return file.ok ? [file.value] : [];
  });
  return briefs.length === stored.length ? briefs : null;
}

/** `read` gives null for what is not of its kind. */
function load<Kept, Code>(
  path: string,
  damaged: Code,
  none: Kept,
  read: (stored: unknown) => Kept | null,
): Result<Kept, FileFault | { readonly code: Code; readonly path: string }> {
  const bytes = readBytes(path, mostBytes);
  if (!bytes.ok) return bytes.fault.code === 'files/missing' ? succeed(none) : bytes;
  const kept = read(jsonIn(bytes.value));
  return kept === null ? fail({ code: damaged, path }) : succeed(kept);
}

const save = (path: string, json: unknown): Result<null, FileFault> =>
  writeDraftFile(path, `${JSON.stringify(json, null, 2)}\n`);

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
