import { answer } from '../../chat/line.ts';
import { formatSlowFlush } from '../../chat/wording/file-faults.ts';
import type { SaveStatus } from '../../journal/file-fault.ts';
import type { BenchStore } from './bench-state.ts';

/** Tells the maker, once, why presses take long to answer. */
export function tellOfSlowDisk(
  status: () => SaveStatus,
  { subscribe, say }: Pick<BenchStore, 'subscribe' | 'say'>,
): void {
  const forget = subscribe(() => {
    const { slowFlushMs } = status();
    if (slowFlushMs === null) return;
    forget();
    say(answer(formatSlowFlush(slowFlushMs)));
  });
}
