import { type Disk, systemDisk } from '../../source/files/disk.ts';

type Operation = keyof Disk;

export interface TroubledDisk {
  readonly disk: Disk;
  /** From now on these operations fail with this code. */
  readonly fail: (code: string, ...operations: readonly Operation[]) => void;
  /** Writes come to this many bytes at a time. */
  readonly writeAtMost: (bytes: number) => void;
  /** The disk takes this many bytes more, then it is full. */
  readonly fillAfter: (bytes: number) => void;
  readonly mend: () => void;
  readonly calls: Operation[];
}

/** The real disk, with troubles on demand. */
export function troubledDisk(onFlush: () => void = () => {}): TroubledDisk {
  const failing = new Map<Operation, string>();
  const calls: Operation[] = [];
  let most = Number.POSITIVE_INFINITY;
  let room = Number.POSITIVE_INFINITY;
  const guarded = Object.fromEntries(
    Object.entries(systemDisk).map(([operation, perform]) => [
      operation,
      (...given: unknown[]) => {
        calls.push(operation as Operation);
        const code = failing.get(operation as Operation);
        if (code) throw diskError(code);
        return (perform as (...given: unknown[]) => unknown)(...given);
      },
    ]),
  ) as unknown as Disk;
  const write: Disk['write'] = (file, bytes) => {
    const taken = Math.min(bytes.length, most, room);
    if (taken === 0) throw diskError('ENOSPC');
    room -= taken;
    return guarded.write(file, bytes.subarray(0, taken));
  };
  const flush: Disk['flush'] = (file) => {
    onFlush();
    guarded.flush(file);
  };
  return {
    disk: { ...guarded, write, flush },
    fail: (code, ...operations) => {
      for (const operation of operations) failing.set(operation, code);
    },
    writeAtMost: (bytes) => {
      most = bytes;
    },
    fillAfter: (bytes) => {
      room = bytes;
    },
    mend: () => {
      failing.clear();
      most = room = Number.POSITIVE_INFINITY;
    },
    calls,
  };
}

const diskError = (code: string): Error => Object.assign(new Error(`${code}: as asked for`), { code });
