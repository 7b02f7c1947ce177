import { basename, dirname, join } from 'node:path';
import { crc32, formatSum } from '../journal/line.ts';

/** As file systems have it, in bytes. */
const longestName = 255;
/** For the ending, and for what is put behind it while the file is made. */
const room = 64;

/** `bag` of `bag.jsonl`. */
export const withoutEnding = (path: string): string => path.replace(/\.jsonl$/, '');

/** A file beside `path`: its name with an ending. One that leaves no room for it is cut, its sum in place of the rest. */
export function beside(path: string, ending: string): string {
  const name = basename(path);
  const bytes = Buffer.from(name);
  if (bytes.length <= longestName - room) return path + ending;
  const kept = [...name].reduce(
    (text, sign) => (Buffer.byteLength(text + sign) <= longestName - room - 9 ? text + sign : text),
    '',
  );
  return join(dirname(path), `${kept}-${formatSum(crc32(bytes))}${ending}`);
}
