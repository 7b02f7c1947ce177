import { type Disk, errorCode, removeIfThere, writeNewFile } from './disk.ts';

/** Drives that know no links. */
const noLinks: ReadonlySet<string> = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/**
 * Makes a new file under another name and links it to its own, so that nobody ever sees half of it. Tells where the name is
 * taken, and where the drive knows no links: then nothing has been made.
 */
export function linkInPlace(disk: Disk, path: string, bytes: Uint8Array): 'made' | 'taken' | 'no-links' {
  const draft = `${path}-${process.pid}`;
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
