import type { FileFault } from '../journal/file-fault.ts';
import { readLog } from '../journal/read-log.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Disk, systemDisk, writeNumbered } from './disk.ts';
import { fileFault } from './disk-trouble.ts';
import { mostLogBytes, readBytes } from './read-file.ts';

export interface SoundPart {
  readonly path: string;
  readonly lines: number;
  /** Steps confirmed in it. */
  readonly step: number;
}

/**
 * Saves the sound lines of a damaged log beside it as a log of its own, `NAME-sound-1.jsonl`, to go on with; the
 * damaged one stays as it is. Asked again, it gives the one it made before. Null where not even the first line is sound.
 */
export function saveSoundPart(path: string, disk: Disk = systemDisk): Result<SoundPart | null, FileFault> {
  const bytes = readBytes(path, mostLogBytes);
  if (!bytes.ok) return bytes;
  const { state, soundBytes } = readLog(bytes.value);
  if (!state) return succeed(null);
  const sound = bytes.value.subarray(0, soundBytes);
  const nameOf = (number: number): string => `${path.replace(/\.jsonl$/, '')}-sound-${number}.jsonl`;
  try {
    const saved = findSaved(nameOf, sound) ?? writeNumbered(disk, nameOf, sound);
    return succeed({ path: saved, lines: state.events + 1, step: state.session.done });
  } catch (error) {
    return fail(fileFault(path, error));
  }
}

function findSaved(nameOf: (number: number) => string, sound: Uint8Array): string | null {
  for (let number = 1; ; number++) {
    const there = readBytes(nameOf(number), mostLogBytes);
    if (!there.ok) return null;
    if (Buffer.compare(there.value.subarray(0, sound.length), sound) === 0) return nameOf(number);
  }
}
