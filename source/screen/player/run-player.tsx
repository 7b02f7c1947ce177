import type { Player } from '../../journal/player.ts';
import type { Units } from '../../shared/units.ts';
import { holdScreen } from '../parts/hold-screen.ts';
import { PlayerApp } from './player-app.tsx';
import { type PlayerClock, systemPlayerClock } from './player-clock.ts';
import { createPlayerKeys } from './player-keys.ts';
import { createPlayerStore } from './player-store.ts';

export interface PlayerScreen {
  readonly units: Units;
  /** Said at the beginning. */
  readonly message?: string;
  readonly clock?: PlayerClock;
}

/** Shows a player in the terminal until the viewer leaves. Rejects when drawing fails. */
export async function runPlayer(
  player: Player,
  { units, message, clock = systemPlayerClock }: PlayerScreen,
): Promise<'left' | 'interrupted'> {
  const store = createPlayerStore(player, clock, message);
  try {
    return await holdScreen<'left' | 'interrupted'>(({ leave, suspend, field }) => {
      const keys = createPlayerKeys({ store, leave, suspend });
      return {
        onKey: keys.onKey,
        screen: <PlayerApp store={store} keys={keys} field={field} units={units} />,
      };
    }, 'interrupted');
  } finally {
    store.stop();
  }
}
