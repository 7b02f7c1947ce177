import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';

/** Who holds a lock. Process numbers are used again, so where the system tells it the moment of the start is kept too. */
export interface Holder {
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

export function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
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
