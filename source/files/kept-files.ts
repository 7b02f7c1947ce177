/** What is kept beside the bags: the shelf, and the party that is on. Replaced whole or not at all, and only where what lies there can be read. */
import type { FileFault } from '../journal/fault.ts';
import type { BriefFile } from '../planning/brief.ts';
import { readBrief } from '../planning/parse-brief.ts';
import { emptyShelf, readShelf, type Shelf, shelfJson } from '../planning/shelf.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { readBytes } from './read-file.ts';
import { writeDraftFile } from './write-whole.ts';

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
    const brief = readBrief(json);
    return brief.ok ? [{ json, brief: brief.value }] : [];
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
  const kept = parse(bytes.value, read);
  return kept === null ? fail({ code: damaged, path }) : succeed(kept);
}

function parse<Kept>(bytes: Uint8Array, read: (stored: unknown) => Kept | null): Kept | null {
  try {
    return read(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
  } catch {
    return null;
  }
}

const save = (path: string, json: unknown): Result<null, FileFault> =>
  writeDraftFile(path, `${JSON.stringify(json, null, 2)}\n`);
