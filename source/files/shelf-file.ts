/** The shelf on disk: replaced whole or not at all, and never where what lies there cannot be read. */
import type { FileFault } from '../journal/fault.ts';
import { emptyShelf, readShelf, type Shelf, shelfJson } from '../planning/shelf.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { writeDraftFile } from './drafts.ts';
import { readBytes } from './read-file.ts';

const mostBytes = 1024 * 1024;

export type ShelfFault = FileFault | { readonly code: 'shelf/damaged'; readonly path: string };

/** Empty where there is none yet. */
export function loadShelf(path: string): Result<Shelf, ShelfFault> {
  const bytes = readBytes(path, mostBytes);
  if (!bytes.ok) return bytes.fault.code === 'files/missing' ? succeed(emptyShelf) : bytes;
  const shelf = parse(bytes.value);
  return shelf ? succeed(shelf) : fail({ code: 'shelf/damaged', path });
}

function parse(bytes: Uint8Array): Shelf | null {
  try {
    return readShelf(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
  } catch {
    return null;
  }
}

export const saveShelf = (path: string, shelf: Shelf): Result<null, FileFault> =>
  writeDraftFile(path, `${JSON.stringify(shelfJson(shelf), null, 2)}\n`);
