import { type Disk, errorCode, removeIfThere, writeNewFile } from './disk.ts';
import { clearDraftsBeside, draftOf } from './drafts.ts';

/** Drives that know no links. */
const noLinks: ReadonlySet<string> = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/**
 * Makes a new file under another name and links it to its own, so that nobody ever sees half of it. Tells where the name is
 * taken, and where the drive knows no links: then nothing has been made.
 */
export function linkInPlace(disk: Disk, path: string, bytes: Uint8Array): 'made' | 'taken' | 'no-links' {
  const draft = draftOf(path);
  clearDraftsBeside(path);
  removeIfThere(disk, draft);
  try {
    writeNewFile(disk, draft, bytes);
    disk.link(draft, path);
    return 'made';
  } catch (error) {
    const code = errorCode(error);
    if (code === 'EEXIST') return 'taken';
    if (noLinks.has(code)) return 'no-links';
    throw error;
  } finally {
    removeIfThere(disk, draft);
  }
}

/** A new file, whole or not at all; false where the name is taken. */
export function writeWhole(disk: Disk, path: string, bytes: Uint8Array): boolean {
  const made = linkInPlace(disk, path, bytes);
  if (made === 'made') disk.flushFolderOf(path);
  return made === 'no-links' ? writeWithoutLink(disk, path, bytes) : made === 'made';
}

/** For drives that know no links. */
export function writeWithoutLink(disk: Disk, path: string, bytes: Uint8Array): boolean {
  try {
    writeNewFile(disk, path, bytes);
    return true;
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    throw error;
  }
}

/** A new file at the first of the names for 1, 2, 3 … that is free; gives the name. */
export function writeNumbered(disk: Disk, nameOf: (number: number) => string, bytes: Uint8Array): string {
  let number = 1;
  while (!writeWhole(disk, nameOf(number), bytes)) number++;
  return nameOf(number);
}
