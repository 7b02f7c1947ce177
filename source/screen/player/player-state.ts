/** What a player knows, what it is told, and what it wants done. It has no way to a file. */
import { type Player, untilNextMs } from '../../journal/player.ts';
import type { PlayerFault } from '../../journal/player-actions.ts';
import type { Words } from '../../wording/words.ts';
import { emptyPrompt } from '../parts/prompt.ts';
import type { ScreenMessage, ScreenState } from '../parts/screen-state.ts';
import type { Store } from '../parts/store.ts';

export type PlayerEnd = 'left' | 'interrupted';

export interface PlayerState extends ScreenState<PlayerEnd> {
  readonly player: Player;
  /** Up to when the player has been moved on, by the viewer's clock. */
  readonly seenMs: number;
  readonly words: Words;
  /** An answer to what was last asked for; null where the screen answers. */
  readonly message: PlayerMessageLine | null;
}

/** What a line under the player says: told by whoever opened it, or what could not be done. */
export type PlayerMessageLine =
  | { readonly told: string }
  | { readonly fault: PlayerFault | { readonly code: 'player/cannot-go-there' } };

/** Every message comes with the viewer's time. */
export type PlayerMessage = (ScreenMessage | { readonly is: 'tick' }) & { readonly nowMs: number };

/** Wakes the player with a `tick` after so long, instead of what it wanted before; null lets it sleep. */
export interface PlayerEffect {
  readonly do: 'wake';
  readonly afterMs: number | null;
}

export type PlayerStore = Store<PlayerState, PlayerMessage>;

export const startPlayerState = (
  given: Pick<PlayerState, 'player' | 'seenMs' | 'words'> & Partial<PlayerState>,
): PlayerState => ({ prompt: emptyPrompt, message: null, end: null, ...given });

/** So often the bar moves while nothing happens, and so long at least a drawing stands. */
const refreshMs = 250;
const leastMs = 16;

/** Until the player next has something to show; null while it stands. */
export const waitOf = (player: Player): number | null =>
  player.playing ? Math.max(leastMs, Math.min(refreshMs, untilNextMs(player) ?? 0)) : null;
