/** What time and keys make of a player, without a screen or a clock. */
import { describe, expect, it } from 'vitest';
import { keyNamed } from '../../../test/fixtures/bench-in-memory.ts';
import { confirm, type SampleLine, writeLog } from '../../../test/fixtures/sample-log.ts';
import { valueIn } from '../../../test/tools/result.ts';
import { startPlayer, viewPlayer } from '../../journal/player.ts';
import { readRecording } from '../../journal/read-log.ts';
import { englishWords } from '../../wording/words.ts';
import type { KeyKind } from '../keys/key.ts';
import {
  type PlayerEffect,
  type PlayerMessage,
  type PlayerState,
  startPlayerState,
  updatePlayerScreen,
} from './update-player.ts';

/** Shown at 2, 5, 6 and 10 seconds; it stops at the mark. */
const lines: readonly SampleLine[] = [
  confirm(1, 2000),
  confirm(4, 3000),
  { event: { do: 'mark', name: 'edge' }, afterMs: 1000 },
  confirm(1, 4000),
];

/** A player that began at second 100 by the viewer's clock. */
function open() {
  const player = startPlayer(valueIn(readRecording(writeLog(lines).bytes)));
  let state: PlayerState = startPlayerState({ player, seenMs: 100_000, words: englishWords });
  let nowMs = 100_000;
  const tell = (message: DistributedOmit<PlayerMessage>): readonly PlayerEffect[] => {
    const [next, effects] = updatePlayerScreen(state, { ...message, nowMs });
    state = next;
    return effects;
  };
  const key = (name: string, kind: KeyKind = 'press'): readonly PlayerEffect[] =>
    tell({ is: 'key', key: { ...keyNamed(name), kind }, came: { since: nowMs, at: nowMs } });
  return {
    key,
    type: (text: string): readonly PlayerEffect[] => {
      for (const letter of text) key(letter === ' ' ? 'space' : letter);
      return key('enter');
    },
    wait(ms: number): readonly PlayerEffect[] {
      nowMs += ms;
      return tell({ is: 'tick' });
    },
    tell,
    at: (): number => viewPlayer(state.player).session.done,
    isPlaying: (): boolean => state.player.playing,
    state: (): PlayerState => state,
  };
}

type DistributedOmit<Message> = Message extends unknown ? Omit<Message, 'nowMs'> : never;

const asleep = [{ do: 'wake', afterMs: null }];

describe('time', () => {
  it('moves the player on, which wants to be woken for the bar, or sooner for what comes', () => {
    const { wait, at } = open();
    expect(wait(1000)).toEqual([{ do: 'wake', afterMs: 250 }]);
    expect(at()).toBe(0);
    expect(wait(900)).toEqual([{ do: 'wake', afterMs: 100 }]);
    expect(wait(100)).toEqual([{ do: 'wake', afterMs: 250 }]);
    expect(at()).toBe(1);
  });

  it('lets a drawing stand for a sixtieth of a second at least', () => {
    expect(open().wait(1999)).toEqual([{ do: 'wake', afterMs: 16 }]);
  });

  it('stops at a mark, and the player sleeps', () => {
    const { wait, at, isPlaying } = open();
    expect(wait(60_000)).toEqual(asleep);
    expect([at(), isPlaying()]).toEqual([5, false]);
    expect(wait(60_000)).toEqual(asleep);
    expect(at()).toBe(5);
  });

  it('that went by before a key counts', () => {
    const { wait, key, at, isPlaying } = open();
    wait(2000);
    expect(key('space')).toEqual(asleep);
    expect([at(), isPlaying()]).toEqual([1, false]);
    wait(5000);
    expect(key('space')).toEqual([{ do: 'wake', afterMs: 250 }]);
    expect(at()).toBe(1);
  });
});

describe('on an empty prompt', () => {
  it.each([
    ['right', 1],
    ['n', 5],
    ['e', 6],
    ['end', 6],
    ['E', 6],
  ])('%s goes to step %i', (name, step) => {
    const { key, at } = open();
    key(name);
    expect(at()).toBe(step);
  });

  it('left goes back, + and - change the pace', () => {
    const { key, at, state } = open();
    key('right');
    key('right');
    key('left');
    expect(at()).toBe(1);
    key('+');
    expect(state().player.speed).toBeGreaterThan(1);
    key('-');
    key('-');
    expect(state().player.speed).toBeLessThan(1);
  });

  it('q leaves, and a release does nothing', () => {
    const { key, state } = open();
    key('q', 'release');
    expect(state().end).toBeNull();
    expect(key('q')).toEqual(asleep);
    expect(state().end).toBe('left');
  });

  it('leaves as it is told to', () => {
    const { tell, state } = open();
    expect(tell({ is: 'quit', how: 'interrupted' })).toEqual(asleep);
    expect(state().end).toBe('interrupted');
  });
});

describe('what is typed', () => {
  it('wakes nothing again, and its letters are letters once something is typed', () => {
    const { key, state, isPlaying } = open();
    expect(key('g')).toEqual([]);
    for (const letter of ['n', 'e', 'q', 'space']) expect(key(letter)).toEqual([]);
    expect(state().prompt.line.text).toBe('gneq ');
    expect([isPlaying(), state().end]).toEqual([true, null]);
  });

  it('is carried out by Enter, or answered where it cannot be', () => {
    const { type, key, state, at } = open();
    type('go stripe 3');
    expect(state().message).toEqual({ fault: { code: 'player/stripe-not-reached', stripe: 3 } });
    expect(state().prompt.line.text).toBe('');
    type('go nowhere');
    expect(state().message).toEqual({ fault: { code: 'player/cannot-go-there' } });
    key('right');
    expect([state().message, at()]).toEqual([null, 1]);
  });
});
