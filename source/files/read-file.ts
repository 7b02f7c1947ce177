import { closeSync, constants, fstatSync, openSync, readSync, statSync } from 'node:fs';
import type { FileFault } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { errorCode, fileFault, TroubleError } from './disk.ts';

/** About four million presses; no bag takes so many. */
export const mostLogBytes = 256 * 1024 * 1024;

const chunkBytes = 256 * 1024;

/** How long a pipe may keep us waiting in which nobody writes (a rule of thumb). */
const pipePatienceMs = 3000;
const pipeWaitMs = 20;

/** The bytes of a file, a pipe or a device, but never more than `mostBytes`. */
export function readBytes(path: string, mostBytes: number): Result<Uint8Array, FileFault> {
  let file: number | null = null;
  try {
    const isPipe = statSync(path).isFIFO();
    // A pipe that nobody writes to would be waited for without end.
    file = openSync(path, constants.O_RDONLY | (isPipe ? constants.O_NONBLOCK : 0));
    const found = fstatSync(file);
    const isTooLarge = found.isFile() && found.size > mostBytes;
    const bytes = isTooLarge ? null : readAll(file, mostBytes, isPipe);
    return bytes ? succeed(bytes) : fail({ code: 'files/too-large', path, mostBytes });
  } catch (error) {
    return fail(fileFault(path, error));
  } finally {
    if (file !== null) closeSync(file);
  }
}

/** Whether a file is there and holds something; a fault where that cannot be told. */
export function holdsBytes(path: string): Result<boolean, FileFault> {
  try {
    const found = statSync(path);
    return succeed(!found.isFile() || found.size > 0);
  } catch (error) {
    const fault = fileFault(path, error);
    return fault.code === 'files/missing' ? succeed(false) : fail(fault);
  }
}

function readAll(file: number, mostBytes: number, isPipe: boolean): Uint8Array | null {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const chunk = new Uint8Array(chunkBytes);
    const read = isPipe ? readPipe(file, chunk, length > 0) : readSync(file, chunk);
    if (read === 0) return Buffer.concat(chunks, length);
    chunks.push(chunk.subarray(0, read));
    length += read;
    if (length > mostBytes) return null;
  }
}

/** Nothing where the writer has ended. One who has not begun, or pauses, is waited for a little. */
function readPipe(file: number, chunk: Uint8Array, hasBegun: boolean): number {
  for (let waitedMs = 0; waitedMs < pipePatienceMs; waitedMs += pipeWaitMs) {
    const read = readIfReady(file, chunk);
    if (read !== null && (read > 0 || hasBegun)) return read;
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, pipeWaitMs);
  }
  throw new TroubleError('no-answer');
}

function readIfReady(file: number, chunk: Uint8Array): number | null {
  try {
    return readSync(file, chunk);
  } catch (error) {
    if (errorCode(error) !== 'EAGAIN') throw error;
    return null;
  }
}
