import type { Player } from '../../journal/player.ts';
import type { Words } from '../../wording/words.ts';
import { holdScreen } from '../parts/hold-screen.ts';
import { createStore, type Store } from '../parts/store.ts';
import { BigEnough } from '../parts/window-size.tsx';
import { PlayerApp } from './player-app.tsx';
import {
  type PlayerEffect,
  type PlayerEnd,
  type PlayerMessage,
  type PlayerState,
  startPlayerState,
  updatePlayerScreen,
  waitOf,
} from './update-player.ts';

/** The viewer's clock: what the player is told of time. */
export interface PlayerClock {
  readonly elapsedMs: () => number;
  /** Runs the action after so long; what it returns cancels it. */
  readonly wake: (action: () => void, afterMs: number) => () => void;
}

const systemPlayerClock: PlayerClock = {
  elapsedMs: () => performance.now(),
  wake: (action, afterMs) => {
    const timer = setTimeout(action, afterMs);
    return () => clearTimeout(timer);
  },
};

export interface PlayerScreen {
  readonly words: Words;
  /** Said at the beginning. */
  readonly message?: string;
  readonly clock?: PlayerClock;
}

/** Shows a player in the terminal until the viewer leaves. Rejects when drawing fails. */
export async function runPlayer(
  player: Player,
  { words, message, clock = systemPlayerClock }: PlayerScreen,
): Promise<PlayerEnd> {
  let cancel = (): void => undefined;
  const wakeAfter = (afterMs: number | null): void => {
    cancel();
    if (afterMs !== null)
      cancel = clock.wake(() => store.send({ is: 'tick', nowMs: clock.elapsedMs() }), afterMs);
  };
  const store: Store<PlayerState, PlayerMessage> = createStore<PlayerState, PlayerMessage, PlayerEffect>(
    startPlayerState({
      player,
      words,
      seenMs: clock.elapsedMs(),
      message: message === undefined ? null : { told: message },
    }),
    updatePlayerScreen,
    { wake: ({ afterMs }) => wakeAfter(afterMs) },
  );
  wakeAfter(waitOf(player));
  try {
    return await holdScreen<PlayerEnd, PlayerState>({
      store: { ...store, send: (told) => store.send({ ...told, nowMs: clock.elapsedMs() }) },
      screen: (
        <BigEnough tooSmall={words.bench.tooSmall}>
          <PlayerApp store={store} />
        </BigEnough>
      ),
      interrupted: 'interrupted',
    });
  } finally {
    wakeAfter(null);
  }
}
