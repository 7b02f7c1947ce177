/** The viewer's clock: what the player is told of time. */
export interface PlayerClock {
  readonly elapsedMs: () => number;
  /** Runs the action after so long; what it returns cancels it. */
  readonly wake: (action: () => void, afterMs: number) => () => void;
}

export const systemPlayerClock: PlayerClock = {
  elapsedMs: () => performance.now(),
  wake: (action, afterMs) => {
    const timer = setTimeout(action, afterMs);
    return () => clearTimeout(timer);
  },
};
