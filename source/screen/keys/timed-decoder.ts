import { createKeyDecoder, type Waiting } from './decode-keys.ts';
import type { Arrival, Key } from './key.ts';

export type SetTimer = (action: () => void, waitMs: number) => () => void;
export type WaitsMs = Readonly<Record<Exclude<Waiting, 'nothing'>, number>>;
export type TimedDecoder = {
  readonly feed: (chunk: string, came: Arrival) => void;
  readonly stop: () => void;
};

// Timers are served before input that is already there: look at the input once more before giving up.
export const patientTimer: SetTimer = (action, waitMs) => {
  let look: NodeJS.Immediate | undefined;
  const timer = setTimeout(() => {
    look = setImmediate(action);
  }, waitMs);
  return () => {
    clearTimeout(timer);
    clearImmediate(look);
  };
};

/**
 * The key decoder with a clock: gives up waiting after `waitsMs`. Each key comes with the time its input
 * arrived, a lone Escape with that of the Escape.
 */
export function createTimedDecoder(
  onKey: (key: Key, came: Arrival) => void,
  waitsMs: WaitsMs,
  setTimer: SetTimer,
): TimedDecoder {
  const decoder = createKeyDecoder();
  let waiting: Waiting = 'nothing';
  let cancelTimer = (): void => {};
  let isStopped = false;

  const deliver = (keys: readonly Key[], came: Arrival): void => {
    for (const key of keys) if (!isStopped) onKey(key, came);
  };
  const giveUp = (came: Arrival) => (): void => {
    waiting = 'nothing';
    deliver(decoder.flush(), came);
  };
  const keepTime = (came: Arrival): void => {
    const before = waiting;
    waiting = decoder.waitingFor();
    // Typing on does not keep a broken sequence alive.
    if (waiting === 'sequence' && before === 'sequence') return;
    cancelTimer();
    cancelTimer = waiting === 'nothing' ? () => {} : setTimer(giveUp(came), waitsMs[waiting]);
  };
  return {
    feed(chunk, came) {
      const keys = decoder.push(chunk);
      keepTime(came);
      deliver(keys, came);
    },
    stop() {
      isStopped = true;
      cancelTimer();
    },
  };
}
