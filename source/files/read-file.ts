import { closeSync, openSync, readSync } from 'node:fs';
import type { FileFault } from '../journal/file-fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { fileFault } from './disk-trouble.ts';

/** About four million presses; no bag takes so many. */
export const mostLogBytes = 256 * 1024 * 1024;

const chunkBytes = 256 * 1024;

/** The bytes of a file, a pipe or a device, but never more than `mostBytes`. */
export function readBytes(path: string, mostBytes: number): Result<Uint8Array, FileFault> {
  let file: number | null = null;
  try {
    file = openSync(path, 'r');
    const bytes = readAll(file, mostBytes);
    return bytes ? succeed(bytes) : fail({ code: 'files/too-large', path, mostBytes });
  } catch (error) {
    return fail(fileFault(path, error));
  } finally {
    if (file !== null) closeSync(file);
  }
}

function readAll(file: number, mostBytes: number): Uint8Array | null {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const chunk = new Uint8Array(chunkBytes);
    const read = readSync(file, chunk);
    if (read === 0) return Buffer.concat(chunks, length);
    chunks.push(chunk.subarray(0, read));
    length += read;
    if (length > mostBytes) return null;
  }
}
