import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { confirm, type SampleLine, writeLog } from '../../test/fixtures/sample-log.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import { englishWords } from '../wording/words.ts';
import {
  advancePlayer,
  type Player,
  type PlayerAction,
  type PlayerOptions,
  startPlayer,
  untilNextMs,
  updatePlayer,
  viewPlayer,
} from './player.ts';
import { readRecording } from './read-log.ts';

/** Shown at 2, 5, 5, 6, 16 and 17 seconds, the ten minutes before the fifth shortened to ten seconds. */
const lines: readonly SampleLine[] = [
  confirm(1, 2000),
  confirm(4, 3000),
  { event: { do: 'say', text: 'Look at the left edge.' }, afterMs: 0 },
  { event: { do: 'mark', name: 'edge' }, afterMs: 1000 },
  confirm(5, 600_000),
  confirm(1, 1000),
];

function playerOf(
  some: readonly SampleLine[] = lines,
  options: PlayerOptions = { longestGapMs: 10_000 },
): Player {
  const recording = valueIn(readRecording(writeLog(some).bytes));
  return startPlayer(recording, options);
}

function having(player: Player, ...actions: readonly PlayerAction[]): Player {
  let now = player;
  for (const action of actions) {
    now = valueIn(updatePlayer(now, action));
  }
  return now;
}

const place = (player: Player): readonly number[] => {
  const { session, elapsedMs } = viewPlayer(player);
  return [session.done, elapsedMs];
};

describe('a player', () => {
  it('shows each event at its time', () => {
    const start = playerOf();
    expect(viewPlayer(start)).toMatchObject({ last: null, elapsedMs: 0, totalMs: 17_000, playing: true });
    expect([1999, 2000, 4999, 5000].map((ms) => place(advancePlayer(start, ms))[0])).toEqual([0, 1, 1, 5]);
    expect(untilNextMs(advancePlayer(start, 500))).toBe(1500);
  });

  it('plays at a speed', () => {
    const twice = playerOf(lines, { speed: 2, longestGapMs: 10_000 });
    expect(place(advancePlayer(twice, 1000))).toEqual([1, 2000]);
    expect(untilNextMs(twice)).toBe(1000);
    const faster = having(twice, { do: 'faster' });
    expect(place(advancePlayer(faster, 1000))).toEqual([1, 4000]);
    expect(viewPlayer(having(faster, { do: 'slower' }, { do: 'slower' })).speed).toBe(1);
  });

  it('keeps its place while it stands, in the middle of a gap too', () => {
    const paused = having(advancePlayer(playerOf(), 3500), { do: 'pause' });
    expect(place(advancePlayer(paused, 60_000))).toEqual([1, 3500]);
    expect(untilNextMs(paused)).toBeNull();
    expect(place(advancePlayer(having(paused, { do: 'play' }), 1500))).toEqual([5, 5000]);
  });

  it('stops at a mark, then goes on from it', () => {
    const stopped = advancePlayer(playerOf(), 60_000);
    expect(viewPlayer(stopped)).toMatchObject({
      playing: false,
      elapsedMs: 6000,
      saying: 'Look at the left edge.',
    });
    expect(place(advancePlayer(having(stopped, { do: 'play' }), 10_000))).toEqual([10, 16_000]);
  });

  it('stops where a teacher put a pause', () => {
    const paused = playerOf([confirm(), { event: { do: 'pause' }, afterMs: 0 }, confirm()]);
    expect(viewPlayer(advancePlayer(paused, 9000))).toMatchObject({ playing: false, elapsedMs: 1000 });
  });

  it('stops at the end', () => {
    const end = advancePlayer(having(playerOf(), { do: 'next-mark' }, { do: 'play' }), 99_000);
    expect(viewPlayer(end)).toMatchObject({ ended: true, playing: false, elapsedMs: 17_000 });
    expect(updatePlayer(end, { do: 'play' })).toEqual({ ok: false, fault: { code: 'player/at-end' } });
  });

  it('forgets what was said once the place changes', () => {
    const marked = having(playerOf(), { do: 'next-mark' });
    expect(viewPlayer(marked).saying).not.toBeNull();
    expect(viewPlayer(having(marked, { do: 'step-on' })).saying).toBeNull();
  });

  it('steps on and back over what can be seen, and stands', () => {
    const unseen: SampleLine = { event: { do: 'quit' }, afterMs: 500 };
    const start = playerOf([confirm(), unseen, confirm()]);
    const on = having(start, { do: 'step-on' }, { do: 'step-on' });
    expect([place(on), viewPlayer(on).playing]).toEqual([[2, 2500], false]);
    expect(place(having(on, { do: 'step-back' }))).toEqual([1, 1500]);
    expect(place(having(on, { do: 'step-back' }, { do: 'step-back' }))).toEqual([0, 0]);
  });

  it('goes to a phase, a stripe or the end, running or standing as before', () => {
    const stripes = having(playerOf(), { do: 'to-phase', phase: 'stripes' });
    // Nine steps of casting on: the stripes are reached by the presses that confirm 10 steps in all.
    expect([place(stripes), viewPlayer(stripes).playing]).toEqual([[10, 16_000], true]);
    expect(place(having(stripes, { do: 'to-phase', phase: 'cast-on' }))).toEqual([0, 0]);
    expect(place(having(playerOf(), { do: 'to-stripe', stripe: 1 }))).toEqual([10, 16_000]);
    expect(viewPlayer(having(playerOf(), { do: 'to-end' })).ended).toBe(true);
  });

  it.each<[string, Player, PlayerAction]>([
    ['player/at-start', playerOf(), { do: 'step-back' }],
    ['player/at-end', having(playerOf(), { do: 'to-end' }), { do: 'step-on' }],
    ['player/no-more-marks', having(playerOf(), { do: 'next-mark' }), { do: 'next-mark' }],
    ['player/fastest', playerOf(lines, { speed: 64 }), { do: 'faster' }],
    ['player/slowest', playerOf(lines, { speed: 0.25 }), { do: 'slower' }],
    ['player/phase-not-reached', playerOf(), { do: 'to-phase', phase: 'cord' }],
    ['player/stripe-not-reached', playerOf(), { do: 'to-stripe', stripe: 2 }],
  ])('answers %s', (code, player, action) => {
    const fault = faultIn(updatePlayer(player, action));
    expect(fault.code).toBe(code);
    expect(englishWords.player.fault(fault)).toMatch(/^[A-Z0-9].*\.$/);
  });

  it('is in the same place however the time is cut up', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 4000 }), { maxLength: 12 }), (parts) => {
        const whole = parts.reduce((sum, ms) => sum + ms, 0);
        const inParts = parts.reduce(advancePlayer, playerOf());
        expect(place(inParts)).toEqual(place(advancePlayer(playerOf(), whole)));
      }),
    );
  });
});
