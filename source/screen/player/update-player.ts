/**
 * What a player knows, is told, and wants done; it has no way to a file. Time and keys move it: on an empty prompt a few
 * keys act at once, all others type.
 */
import { parsePlayerLine } from '../../chat/grammar/parse-place.ts';
import {
  advancePlayer,
  type Player,
  type PlayerAction,
  type PlayerFault,
  untilNextMs,
  updatePlayer,
} from '../../journal/player.ts';
import type { Words } from '../../wording/words.ts';
import { type Key, keyId } from '../keys/key.ts';
import { emptyPrompt, isEmpty, typeKey } from '../parts/prompt.ts';
import type { ScreenMessage, ScreenState, Store } from '../parts/store.ts';

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

export function updatePlayerScreen(
  before: PlayerState,
  message: PlayerMessage,
): readonly [PlayerState, readonly PlayerEffect[]] {
  const present = advanced(before, message.nowMs);
  const state = react(present, message);
  const isTyping = state.player === present.player && message.is === 'key' && state.end === null;
  return [state, isTyping ? [] : [{ do: 'wake', afterMs: state.end === null ? waitOf(state.player) : null }]];
}

/** The player as it is by now. */
const advanced = (state: PlayerState, nowMs: number): PlayerState => ({
  ...state,
  player: advancePlayer(state.player, nowMs - state.seenMs),
  seenMs: nowMs,
});

function react(state: PlayerState, message: PlayerMessage): PlayerState {
  switch (message.is) {
    case 'tick':
      return state;
    case 'quit':
      return { ...state, end: message.how };
    case 'key':
      return message.key.kind === 'release' ? state : takeKey(state, message.key);
  }
}

type PlayerKey =
  | Exclude<PlayerAction['do'], 'to-phase' | 'to-stripe' | 'play' | 'pause'>
  | 'play-or-pause'
  | 'quit';

/** What they do on an empty prompt. */
export const playerKeys: ReadonlyMap<string, PlayerKey> = new Map([
  ['space', 'play-or-pause'],
  ['enter', 'play-or-pause'],
  ['right', 'step-on'],
  ['left', 'step-back'],
  ['+', 'faster'],
  ['-', 'slower'],
  ['n', 'next-mark'],
  ['e', 'to-end'],
  ['end', 'to-end'],
  ['q', 'quit'],
]);

function takeKey(state: PlayerState, key: Key): PlayerState {
  // A capital letter is the same key.
  const id = keyId({ ...key, shift: false });
  if (isEmpty(state.prompt)) {
    const action = playerKeys.get(id);
    if (action === 'play-or-pause') return act(state, { do: state.player.playing ? 'pause' : 'play' });
    if (action === 'quit') return { ...state, end: 'left' };
    if (action) return act(state, { do: action });
  }
  const { prompt, line } = typeKey(state.prompt, key);
  const typed = { ...state, prompt };
  return line === null ? typed : takeLine(typed, line);
}

function takeLine(state: PlayerState, line: string): PlayerState {
  const action = parsePlayerLine(line, state.words);
  return action.ok ? act(state, action.value) : { ...state, message: { fault: action.fault } };
}

function act(state: PlayerState, action: PlayerAction): PlayerState {
  const after = updatePlayer(state.player, action);
  return after.ok
    ? { ...state, player: after.value, message: null }
    : { ...state, message: { fault: after.fault } };
}
