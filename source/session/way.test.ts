/** A way that the hands are on, and what the session takes meanwhile; the bag is invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import type { Command } from './command.ts';
import { type Session, startSession, stepsStanding } from './session.ts';
import { updateSession } from './update-session.ts';

const job = jobOf(stripedBrief(20, 24, 60));

const having = (session: Session, ...commands: readonly Command[]): Session =>
  commands.reduce((now, command) => valueIn(updateSession(now, command)), session);

const at = (done: number): Session => having(startSession(job), { do: 'go', done });

const refused = (session: Session, command: Command): unknown => faultIn(updateSession(session, command));

const onTheWay = { do: 'on-the-way' } as const;

/** Every place on the way to its end, this one first. */
function walk(session: Session): readonly Session[] {
  return session.way ? [session, ...walk(having(session, onTheWay))] : [session];
}

// After step 40 twelve rows are knitted and the comb is off; step 34 is the decrease after row 10.
const back = having(at(40), { do: 'rip', done: 34 });

describe('a way back', () => {
  it('is gone step by step, the comb hung again first, and ends at its place', () => {
    const all = walk(back);
    expect(all.map(({ way, done }) => [way?.at ?? 'there', done])).toEqual([
      [0, 40],
      [1, 40],
      [2, 38],
      [3, 37],
      [4, 36],
      [5, 35],
      [6, 34],
      ['there', 34],
    ]);
    expect(all.at(-1)?.mends).toEqual([]);
  });

  it('holds what is planned until it is gone or left', () => {
    const halfway = having(back, onTheWay, onTheWay);
    for (const command of [
      { do: 'confirm', count: 1 },
      { do: 'go', done: 3 },
      { do: 'rip', done: 3 },
    ] as const)
      expect(refused(halfway, command)).toEqual({ code: 'way/on-the-way', back: true, at: 3, of: 7 });
    expect(having(halfway, { do: 'stop' }, { do: 'confirm', count: 1 }).done).toBe(39);
  });

  it('left before its first step leaves the work where it was, and later where it stands', () => {
    expect(having(back, { do: 'stop' })).toMatchObject({ way: null, adrift: null, done: 40 });
    const left = walk(back)
      .filter(({ way }) => way)
      .map((here) => having(here, { do: 'stop' }).done);
    expect(left).toEqual([40, 40, 38, 37, 36, 35, 34]);
  });

  it('is none where nobody is on one', () => {
    expect(refused(at(40), onTheWay)).toEqual({ code: 'way/not-on-one' });
    expect(refused(at(40), { do: 'stop' })).toEqual({ code: 'way/not-on-one' });
  });
});

/** The third decrease, step 24, was forgotten. */
const forgotten = { do: 'mend', mistakes: [{ is: 'decrease-missing', move: 3 }] } as const;
const madeUp = having(at(40), { ...forgotten, place: 40, how: 'make-up', thenDone: 40 }, onTheWay);

describe('a mend', () => {
  it('that takes rows out leaves the work before the slip', () => {
    const all = walk(having(at(40), { ...forgotten, place: 40, how: 'rip', thenDone: 23 }));
    expect(all.length).toBeGreaterThan(10);
    expect(all.at(-1)).toMatchObject({ way: null, done: 23 });
  });

  it('goes on from where the work stands, where that is before the place: step by step, from its first on', () => {
    const all = walk(having(at(42), { ...forgotten, place: 40, how: 'rip', thenDone: 23 }));
    const standing = all.map(stepsStanding);
    expect(standing[0]).toBe(40);
    expect(standing.at(-1)).toBe(23);
    expect(standing).toEqual(standing.toSorted((one, other) => other - one));
    const kept = having(at(42), { ...forgotten, place: 40, how: 'make-up', thenDone: 40 });
    expect(stepsStanding(kept)).toBe(40);
  });

  it('left in the middle lies between places, where nothing but going to one helps', () => {
    const [, , , here] = walk(having(at(40), { ...forgotten, place: 40, how: 'rip', thenDone: 23 }));
    const left = having(here as Session, { do: 'stop' });
    expect(left.adrift).toEqual(here?.way?.bed);
    expect(refused(left, { do: 'confirm', count: 1 })).toEqual({ code: 'way/between-places' });
    expect(refused(left, { do: 'rip', done: 3 })).toEqual({ code: 'way/between-places' });
    expect(having(left, { do: 'go', done: left.done }).adrift).toBeNull();
  });

  it('that makes up for the slip is kept, with what was done in place of the plan', () => {
    expect(madeUp).toMatchObject({ way: null, done: 40 });
    expect(madeUp.mends).toMatchObject([{ how: 'make-up', done: 40, detour: { through: 40 } }]);
    // From before the increase of the same move on: it, the rows without the decrease, and the way out of it.
    const detour = madeUp.mends[0]?.detour;
    expect(detour?.from).toBeLessThan(24);
    expect(detour?.parts[0]?.row).toBe(6);
    expect(new Set(detour?.parts.map(({ row }) => row))).toEqual(new Set([6, 7, 8, 9, 10, 11, 12]));
  });

  it('is gone with the rows in which it was made, and stays with those behind it', () => {
    const later = having(madeUp, { do: 'confirm', count: 5 });
    const ripped = (done: number): Session => walk(having(later, { do: 'rip', done })).at(-1) as Session;
    expect(ripped(42).mends).toHaveLength(1);
    expect(ripped(40).mends).toHaveLength(1);
    expect(ripped(20).mends).toEqual([]);
  });

  it.each([-1, job.stepCount + 1])('is none at %i steps', (place) => {
    expect(refused(at(40), { ...forgotten, place, how: 'rip', thenDone: 23 })).toEqual({
      code: 'way/no-such-mend',
    });
  });

  it('is none that leads elsewhere than it does', () => {
    expect(refused(at(40), { ...forgotten, place: 40, how: 'rip', thenDone: 22 })).toEqual({
      code: 'way/no-such-mend',
    });
    expect(refused(at(40), { ...forgotten, place: 40, how: 'now', thenDone: 23 })).toEqual({
      code: 'way/no-such-mend',
    });
  });
});
