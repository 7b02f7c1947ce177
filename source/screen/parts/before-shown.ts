/** Things to be seen to before anything more is shown: a press is on disk by then, and meanwhile its screen is drawn. */
import { afterLookAtInput } from '../keys/input-watch.ts';

export interface BeforeShown {
  /** Does the action when the input has been looked at once more, at the latest before anything is shown. */
  readonly later: (action: () => void) => void;
  /** Does at once all that waits. */
  readonly now: () => void;
}

export function createBeforeShown(): BeforeShown {
  const waiting: (() => void)[] = [];
  const now = (): void => {
    for (const action of waiting.splice(0)) action();
  };
  return {
    later(action) {
      if (waiting.push(action) === 1) afterLookAtInput(now);
    },
    now,
  };
}

/** Where there is no screen all is done at once. */
export const atOnce: BeforeShown = { later: (action) => action(), now: () => undefined };
