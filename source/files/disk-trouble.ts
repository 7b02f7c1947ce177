import type { DiskTrouble, FileFault } from '../journal/fault.ts';
import { errorCode } from './disk.ts';
import { type Holder, thisProcess } from './process-identity.ts';

const byCode: Readonly<Record<string, DiskTrouble>> = {
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EFBIG: 'disk-full',
  EROFS: 'read-only',
  EACCES: 'no-permission',
  EPERM: 'no-permission',
  ENOENT: 'gone',
  ENOTDIR: 'gone',
  ESTALE: 'gone',
  ENODEV: 'gone',
  ENXIO: 'gone',
  ETIMEDOUT: 'no-answer',
  EHOSTDOWN: 'no-answer',
  EHOSTUNREACH: 'no-answer',
};

/** Thrown by our own checks where the disk itself has no complaint. */
export class TroubleError extends Error {
  readonly trouble: DiskTrouble;
  constructor(trouble: DiskTrouble) {
    super(trouble);
    this.trouble = trouble;
  }
}

/** What an error from the disk comes down to. Throws it again where it is none. */
export const troubleOf = (error: unknown): DiskTrouble =>
  error instanceof TroubleError ? error.trouble : (byCode[errorCode(error)] ?? 'disk-error');

/** An error from the disk as a fault that names the file. */
export function fileFault(path: string, error: unknown): FileFault {
  if (error instanceof TroubleError) {
    return { code: 'files/trouble', path, trouble: error.trouble, detail: error.trouble };
  }
  const detail = errorCode(error);
  if (detail === 'ENOENT' || detail === 'ENOTDIR') return { code: 'files/missing', path };
  if (detail === 'EISDIR') return { code: 'files/is-folder', path };
  if (detail === 'EEXIST') return { code: 'files/exists', path };
  return { code: 'files/trouble', path, trouble: troubleOf(error), detail };
}

/** The same for a file that was to be written again, where what is missing is its folder. */
export function writeFault(path: string, error: unknown): FileFault {
  const fault = fileFault(path, error);
  if (fault.code !== 'files/missing') return fault;
  return { code: errorCode(error) === 'ENOTDIR' ? 'files/not-a-folder' : 'files/no-folder', path };
}

export const inUse = (path: string, { pid, host }: Holder): FileFault => ({
  code: 'files/in-use',
  path,
  pid,
  host: host === thisProcess().host ? null : host,
});
