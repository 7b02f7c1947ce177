/**
 * Since when an event may have waited to be read. A read alone does not tell: while the program draws, waits for the disk or
 * for a processor, a switch bounces unseen, and what it sent comes to hand when a second press would. So the input is
 * looked at again and again for a while after each read.
 */

import type { SetTimer } from './decode-keys.ts';
import type { Arrival } from './key.ts';

/** Runs the action when all input that is there has been read: an immediate alone comes before the next look at it. */
export const afterLookAtInput = (action: () => void): void => {
  setImmediate(() => setImmediate(action));
};

interface InputWatch {
  /** To be called as input is read. */
  readonly read: () => Arrival;
  readonly stop: () => void;
}

/** As long as any window of a switch, or the wait of a held key for its first repeat. */
const watchMs = 1000;
const shortestMs = 10;
/** The longer ago the last event, the less the time of the next has to be known. */
const lookEveryMs = (sinceReadMs: number): number => Math.max(shortestMs, sinceReadMs / 10);

/** Both must run their actions after a look at the input. */
export function watchInput(
  now: () => number,
  setTimer: SetTimer,
  afterLook: (action: () => void) => void = afterLookAtInput,
): InputWatch {
  let readAt = Number.NEGATIVE_INFINITY;
  let emptyAt = readAt;
  let reads = 0;
  let cancel = (): void => {};

  const look = (): void => {
    emptyAt = now();
    const sinceReadMs = emptyAt - readAt;
    if (sinceReadMs < watchMs) cancel = setTimer(look, lookEveryMs(sinceReadMs));
  };
  const cameSince = (at: number): number => {
    const isWatched = emptyAt - readAt < watchMs;
    const isLate = at - emptyAt > 2 * lookEveryMs(emptyAt - readAt);
    return isWatched && isLate ? emptyAt : at;
  };
  return {
    read() {
      const at = now();
      const since = cameSince(at);
      readAt = at;
      emptyAt = at;
      cancel();
      cancel = () => {};
      const number = ++reads;
      afterLook(() => number === reads && look());
      return { since, at };
    },
    stop() {
      reads++;
      cancel();
    },
  };
}
