/** The player outside React: time and keys move it, and whoever subscribes hears of it. It has no way to a file. */
import { parsePlayerLine } from '../../chat/player-line.ts';
import { formatPlayerFault } from '../../chat/wording/journal-faults.ts';
import { formatPlayerLineFault } from '../../chat/wording/player.ts';
import { advancePlayer, type Player, untilNextMs } from '../../journal/player.ts';
import { type PlayerAction, updatePlayer } from '../../journal/player-actions.ts';
import { createListeners } from '../parts/listeners.ts';
import type { PlayerClock } from './player-clock.ts';

export interface PlayerState {
  readonly player: Player;
  /** An answer to what was last asked for; null where the screen answers. */
  readonly message: string | null;
}

export interface PlayerStore {
  readonly get: () => PlayerState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly act: (action: PlayerAction) => void;
  /** Carries out a typed line. */
  readonly submit: (text: string) => void;
  readonly stop: () => void;
}

/** So often the bar moves while nothing happens, and so long at least a drawing stands. */
const refreshMs = 250;
const leastMs = 16;

export function createPlayerStore(
  player: Player,
  clock: PlayerClock,
  message: string | null = null,
): PlayerStore {
  let state: PlayerState = { player, message };
  let seenMs = clock.elapsedMs();
  let cancel = (): void => undefined;
  const { subscribe, tellAll } = createListeners();

  const publish = (next: PlayerState): void => {
    state = next;
    plan();
    tellAll();
  };

  /** The player as it is by now. */
  const present = (): Player => {
    const nowMs = clock.elapsedMs();
    const now = advancePlayer(state.player, nowMs - seenMs);
    seenMs = nowMs;
    return now;
  };

  const tick = (): void => publish({ ...state, player: present() });

  const plan = (): void => {
    cancel();
    if (!state.player.playing) return;
    const waitMs = untilNextMs(state.player) ?? 0;
    cancel = clock.wake(tick, Math.max(leastMs, Math.min(refreshMs, waitMs)));
  };

  const act = (action: PlayerAction): void => {
    const now = present();
    const after = updatePlayer(now, action);
    publish(
      after.ok
        ? { player: after.value, message: null }
        : { player: now, message: formatPlayerFault(after.fault) },
    );
  };

  const submit = (text: string): void => {
    const action = parsePlayerLine(text);
    if (action.ok) act(action.value);
    else publish({ player: present(), message: formatPlayerLineFault(action.fault) });
  };

  plan();
  return {
    get: () => state,
    subscribe,
    act,
    submit,
    stop: () => cancel(),
  };
}
