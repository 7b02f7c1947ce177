import type { SaveStatus } from '../../journal/file-fault.ts';
import type { BenchStore } from './bench-state.ts';

/** Often enough that a drive which is back is noticed, seldom enough to cost nothing (a rule of thumb). */
const retryMs = 2000;

interface Saving {
  readonly status: () => SaveStatus;
  readonly retry: () => SaveStatus;
}

/** While something is not on disk, tries again every few seconds and says how it stands. Gives how to stop. */
export function keepSaving({ status, retry }: Saving, { say }: Pick<BenchStore, 'say'>): () => void {
  const timer = setInterval(() => {
    if (status().state === 'saved') return;
    retry();
    say([]);
  }, retryMs);
  timer.unref();
  return () => clearInterval(timer);
}
