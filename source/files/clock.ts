/** Time, handed to whoever needs it. */
import { instantOf } from '../shared/numbers.ts';

export interface Clock {
  /** Milliseconds from some moment on; never runs backwards. */
  readonly elapsedMs: () => number;
  readonly now: () => Date;
}

/** As `2031-03-04`. */
export const today = (): string => instantOf(Date.now()).slice(0, 10);

export const systemClock: Clock = { elapsedMs: () => performance.now(), now: () => new Date() };
