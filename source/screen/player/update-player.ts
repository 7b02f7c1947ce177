/** What a message makes of a player: time and keys move it. On an empty prompt a few keys act at once, all others type. */
import { parsePlayerLine } from '../../chat/grammar/parse-place.ts';
import { advancePlayer } from '../../journal/player.ts';
import { type PlayerAction, updatePlayer } from '../../journal/player-actions.ts';
import { type Key, keyId } from '../keys/key.ts';
import { isEmpty, typeKey } from '../parts/prompt.ts';
import { type PlayerEffect, type PlayerMessage, type PlayerState, waitOf } from './player-state.ts';

export function updatePlayerScreen(
  before: PlayerState,
  message: PlayerMessage,
): readonly [PlayerState, readonly PlayerEffect[]] {
  const present = advanced(before, message.nowMs);
  const state = react(present, message);
  const isTyping = state.player === present.player && message.is === 'key';
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
