/**
 * One writer to a log: a file beside it says who. It is made under another name and linked, so that nobody ever sees
 * half of it. No two locks ever hold the same text. A lock whose holder is dead is broken under a second one named after
 * its text, so that of several who find it only one does, and never breaks what was made in its place meanwhile.
 */

import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import type { FileFault } from '../journal/fault.ts';
import { crc32, formatSum } from '../journal/line.ts';
import { fail, jsonIn, type Result, succeed } from '../shared/result.ts';
import { type Disk, errorCode, removeIfThere } from './disk.ts';
import { beside, isRunning, linkInPlace, writeWithoutLink } from './write-whole.ts';

export interface Lock {
  readonly path: string;
  readonly text: string;
}

/** Somebody else is breaking the same lock, or writing one: that takes no time, so ask again, but not for ever. */
const mostAttempts = 200;
const waitMs = 5;
/** A lock without a name is half made where the drive knows no links, or was emptied by a power cut: that shows by now. */
const attemptsForAName = 100;

let locksMade = 0;

/** The lock that one use of a log by this process takes. */
export const lockOf = (logPath: string): Lock => makeLock(beside(logPath, '.lock'));

const makeLock = (path: string): Lock => ({
  path,
  text: `${JSON.stringify({ ...thisProcess(), use: ++locksMade })}\n`,
});

/** Takes a lock, or sees that it is taken already. Gives who else has it. Throws where the disk will not have it. */
export function takeLock(disk: Disk, lock: Lock): Result<Lock, Holder> {
  let holder: Holder | null = null;
  for (let attempt = 0; attempt < mostAttempts; attempt++) {
    // Asked before one is made: a full disk takes no new lock, but may well hold somebody's.
    const text = readText(disk, lock.path);
    if (text === lock.text) return succeed(lock);
    holder = readHolder(text ?? '');
    if (holder && mayBeAlive(holder)) return fail(holder);
    if (text === null && make(disk, lock)) return succeed(lock);
    breakIfDead(disk, lock.path, attempt);
  }
  return fail(holder ?? thisProcess());
}

/** Lets go of a lock, if it is held. One that the disk keeps names a process that will have ended, which shows. */
export function releaseLock(disk: Disk, lock: Lock): void {
  try {
    if (holdsLock(disk, lock)) removeIfThere(disk, lock.path);
  } catch (error) {
    errorCode(error);
  }
}

const holdsLock = (disk: Disk, { path, text }: Lock): boolean => readText(disk, path) === text;

/** False where the lock is there already. */
function make(disk: Disk, { path, text }: Lock): boolean {
  const bytes = new TextEncoder().encode(text);
  const made = linkInPlace(disk, path, bytes);
  return made === 'no-links' ? writeWithoutLink(disk, path, bytes) : made === 'made';
}

function breakIfDead(disk: Disk, path: string, attempt: number): void {
  const text = readText(disk, path);
  if (text === null) return;
  const holder = readHolder(text);
  if (holder ? mayBeAlive(holder) : attempt < attemptsForAName) pause();
  else breakLock(disk, path, text, attempt);
}

/** Takes away the lock that says `dead`, and no other. Whoever is at it already may have died of it. */
function breakLock(disk: Disk, path: string, dead: string, attempt: number): void {
  const guard = makeLock(`${path}-${formatSum(crc32(new TextEncoder().encode(dead)))}`);
  if (!make(disk, guard)) return breakIfDead(disk, guard.path, attempt);
  if (readText(disk, path) === dead) removeIfThere(disk, path);
  removeIfThere(disk, guard.path);
}

const pause = (): unknown => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, waitMs);

/** Null for one that a power cut has emptied. */
function readHolder(text: string): Holder | null {
  const found = jsonIn(text);
  if (typeof found !== 'object' || found === null) return null;
  const { pid, host, started } = found as Partial<Holder>;
  if (typeof pid !== 'number' || pid < 1 || typeof host !== 'string') return null;
  return { pid, host, started: typeof started === 'string' ? started : null };
}

function readText(disk: Disk, path: string): string | null {
  try {
    return new TextDecoder().decode(disk.read(path));
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  }
}

export const inUse = (path: string, { pid, host }: Holder): FileFault => ({
  code: 'files/in-use',
  path,
  pid,
  host: host === thisProcess().host ? null : host,
});

/** Who holds a lock. Process numbers are used again, so where the system tells it the moment of the start is kept too. */
interface Holder {
  readonly pid: number;
  readonly host: string;
  /** Boot and start time of the process; null where the system does not tell. */
  readonly started: string | null;
}

export const thisProcess = (): Holder => ({
  pid: process.pid,
  host: hostname(),
  started: startOf(process.pid)?.started ?? null,
});

/** Whether the holder may still be running. On another computer that cannot be known, so it may. */
export function mayBeAlive({ pid, host, started }: Holder): boolean {
  if (host !== hostname()) return true;
  if (!isRunning(pid)) return false;
  const found = startOf(pid);
  // What the system no longer tells of may have ended since the line before.
  if (!found) return isRunning(pid);
  if (started === null) return true;
  return found.started === started && !found.dead;
}

/** From Linux's /proc: the 3rd field of `stat` is the state and the 22nd the start in clock ticks (proc(5)). */
function startOf(pid: number): { readonly started: string; readonly dead: boolean } | null {
  try {
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return { started: `${boot}/${fields[19]}`, dead: fields[0] === 'Z' || fields[0] === 'X' };
  } catch {
    return null;
  }
}
