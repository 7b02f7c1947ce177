/** Time, handed to whoever needs it. */
export interface Clock {
  /** Milliseconds from some moment on; never runs backwards. */
  readonly elapsedMs: () => number;
  readonly now: () => Date;
}

export const systemClock: Clock = { elapsedMs: () => performance.now(), now: () => new Date() };
