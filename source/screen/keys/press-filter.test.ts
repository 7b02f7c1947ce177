import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tries } from '../../../test/tools/tries.ts';
import { type KeyKind, makeKey } from './key.ts';
import { filterPress, noPresses, type PressAct, pressTiming } from './press-filter.ts';

type Event = readonly [at: number, name?: string, kind?: KeyKind, since?: number];

function acts(events: readonly Event[], timing = pressTiming): PressAct[] {
  let state = noPresses;
  return events.map(([at, name = 'b', kind = 'press', since = at]) => {
    const result = filterPress(state, makeKey(name, { kind }), { since, at }, timing);
    state = result.state;
    return result.act;
  });
}
const count = (all: readonly PressAct[], act: PressAct): number => all.filter((each) => each === act).length;
const counted = (events: readonly Event[], timing = pressTiming): number =>
  count(acts(events, timing), 'press') - count(acts(events, timing), 'withdraw');
const at = (...times: number[]): Event[] => times.map((time) => [time]);
/** A key held from `downMs`: its press, the first repeat and then one each `everyMs`. */
const holdTimes = (downMs: number, delayMs: number, everyMs: number, repeats: number): number[] => [
  downMs,
  ...Array.from({ length: repeats }, (_, place) => downMs + delayMs + place * everyMs),
];

describe('by time alone', () => {
  test('a bounce is no press', () => {
    expect(acts(at(0, 6, 11))).toEqual(['press', 'ignore', 'ignore']);
  });

  test('each event starts the window again', () => {
    expect(acts(at(0, 90, 180, 270))).toEqual(['press', 'ignore', 'ignore', 'ignore']);
  });

  test('a second press after the window counts, and is not doubted when nothing follows', () => {
    expect(acts(at(0, 100, 350, 1000))).toEqual(['press', 'press', 'press', 'press']);
  });

  test('a bounce of the second press does not make a hold of the two', () => {
    expect(acts(at(0, 300, 312))).toEqual(['press', 'press', 'ignore']);
  });

  test('a held key is one press: its first repeat is withdrawn when the second comes', () => {
    expect(acts(at(0, 500, 533, 566))).toEqual(['press', 'press', 'withdraw', 'ignore']);
  });

  test('a press begun soon after another is held just as well', () => {
    expect(acts(at(0, 300, 800, 833, 866))).toEqual(['press', 'press', 'press', 'withdraw', 'ignore']);
  });

  test('a hold of a second is said once', () => {
    const all = acts(at(...holdTimes(0, 500, 33, 60)));
    expect(count(all, 'held')).toBe(1);
    // 500 + 16 × 33 = 1028 is the first repeat after a second.
    expect(all.indexOf('held')).toBe(17);
  });

  test('repeats that come late do not make a new press of a hold, nor say it twice', () => {
    const all = acts(at(...holdTimes(0, 500, 33, 20), 1400, 1433, 1466, 2600));
    expect(all.slice(-4)).toEqual(['press', 'withdraw', 'ignore', 'press']);
    expect(count(all, 'held')).toBe(1);
  });

  test('what may have come within the window is no press, however late it is read', () => {
    expect(acts([[0], [400, 'b', 'press', 5], [401]])).toEqual(['press', 'ignore', 'ignore']);
    expect(acts([[0], [400, 'b', 'press', 100]])).toEqual(['press', 'press']);
  });

  test('the first repeat of a hold is in doubt though it is read late', () => {
    expect(acts([[0], [900, 'b', 'press', 480], [900, 'b', 'press', 480], [933]])).toEqual([
      ...['press', 'press', 'ignore', 'withdraw'],
    ]);
  });

  test('a press right after a hold counts', () => {
    expect(acts(at(0, 500, 533, 566, 700)).at(-1)).toBe('press');
  });

  test('keys do not touch one another', () => {
    expect(acts([[0], [10, 'f13'], [15], [20, 'f13'], [120, 'f13']])).toEqual([
      ...['press', 'press', 'ignore', 'ignore', 'press'],
    ]);
  });

  test('a clock set back swallows nothing', () => {
    expect(acts(at(5000, 0))).toEqual(['press', 'press']);
  });
});

describe('with kinds told', () => {
  test('repeats and releases are no presses, and a quick second press counts', () => {
    expect(
      acts([
        ...([[0], [60, 'b', 'release'], [85], [130, 'b', 'release']] as const),
        ...([[200], [700, 'b', 'repeat'], [733, 'b', 'repeat'], [760, 'b', 'release']] as const),
      ]),
    ).toEqual(['press', 'ignore', 'press', 'ignore', 'press', 'ignore', 'ignore', 'ignore']);
  });

  test('a bounce on release is no press', () => {
    expect(acts([[0], [80, 'b', 'release'], [84], [88, 'b', 'release'], [300]])).toEqual([
      ...['press', 'ignore', 'ignore', 'ignore', 'press'],
    ]);
  });

  test('a hold is said at the repeat after a second, or at the release where nothing repeats', () => {
    expect(acts([[0], [990, 'b', 'repeat'], [1020, 'b', 'repeat'], [1400, 'b', 'release']])).toEqual([
      ...['press', 'ignore', 'held', 'ignore'],
    ]);
    expect(acts([[0], [1400, 'b', 'release']])).toEqual(['press', 'held']);
  });

  test('what comes after a release is none of a hold, however long ago the press was', () => {
    expect(acts([[0], [60, 'b', 'release'], [5000, 'b', 'release'], [5100, 'b', 'repeat']])).toEqual([
      ...['press', 'ignore', 'ignore', 'ignore'],
    ]);
  });

  test('a press that bounces is held as well as another', () => {
    expect(acts([[0], [5, 'b', 'release'], [10], [1400, 'b', 'release']])).toEqual([
      ...['press', 'ignore', 'ignore', 'held'],
    ]);
  });

  test('a key that went down before anyone listened does nothing', () => {
    expect(
      acts([
        [0, 'b', 'repeat'],
        [1500, 'b', 'repeat'],
        [1600, 'b', 'release'],
      ]),
    ).toEqual([...['ignore', 'ignore', 'ignore']]);
  });
});

// Twenty a second is 50 ms apart, which time alone cannot tell from repeats of 30 to 50 ms at the usual
// window. It needs kinds, or two switches taking turns, or a window set below it.
describe('10,000 presses at twenty a second all count', () => {
  const times = Array.from({ length: 10_000 }, (_, place) => place * 50);

  test('where releases are told', () => {
    expect(counted(times.flatMap((time): Event[] => [[time], [time + 25, 'b', 'release']]))).toBe(10_000);
  });

  test('by time, from switches taking turns', () => {
    const names = ['b', 'f13', 'space'];
    expect(counted(times.map((time, place): Event => [time, names[place % 3] ?? '']))).toBe(10_000);
  });

  test('by time, from one switch with a window of 40 ms', () => {
    expect(counted(at(...times), { ...pressTiming, windowMs: 40 })).toBe(10_000);
  });
});

describe('any working rhythm', () => {
  const gapMs = fc.integer({ min: pressTiming.windowMs, max: 2500 });
  const bounce = fc.array(fc.integer({ min: 1, max: 6 }), { maxLength: 3 });
  const hold = fc.record({
    delayMs: fc.integer({ min: 200, max: 680 }),
    everyMs: fc.integer({ min: 25, max: 95 }),
    repeats: fc.integer({ min: 2, max: 60 }),
  });
  const gesture = fc.record({ gapMs, bounce, hold: fc.option(hold) });

  /** The events of the gestures one after the other, and how many of them were held for a second. */
  function play(gestures: readonly (typeof gesture extends fc.Arbitrary<infer T> ? T : never)[]) {
    const times: number[] = [];
    let holds = 0;
    for (const { gapMs: gap, bounce: bounces, hold: held } of gestures) {
      const down = (times.at(-1) ?? 0) + gap;
      let last = down;
      const bounced = bounces.map((ms) => {
        last += ms;
        return last;
      });
      const repeats = held ? holdTimes(down, held.delayMs, held.everyMs, held.repeats).slice(1) : [];
      times.push(down, ...bounced, ...repeats);
      if ((repeats.at(-1) ?? 0) - down >= pressTiming.heldMs) holds++;
    }
    return { times, holds };
  }

  test('counts each tap and each hold once, bounces and repeats not at all', () => {
    fc.assert(
      fc.property(fc.array(gesture, { maxLength: 40 }), (gestures) => {
        const { times, holds } = play(gestures);
        expect(counted(at(...times))).toBe(gestures.length);
        expect(count(acts(at(...times)), 'held')).toBe(holds);
      }),
      { numRuns: tries(1000) },
    );
  });

  test('counts every event that comes after the window, whatever came before', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 1 }), (gaps) => {
        const times = gaps.map((_, place) => gaps.slice(0, place + 1).reduce((sum, gap) => sum + gap));
        const all = acts(at(...times));
        const late = all.filter((_, place) => place > 0 && (gaps[place] ?? 0) >= pressTiming.windowMs);
        expect(late.every((act) => act === 'press')).toBe(true);
        expect(all[0]).toBe('press');
        expect(count(all, 'withdraw')).toBeLessThanOrEqual(Math.max(0, count(all, 'press') - 1));
      }),
    );
  });

  test('counts each press once where kinds are told, held or not', () => {
    const press = fc.record({
      downMs: fc.integer({ min: 20, max: 1500 }),
      upMs: fc.integer({ min: 20, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(press, { minLength: 1 }), (presses) => {
        let time = 0;
        const events = presses.flatMap(({ downMs, upMs }): Event[] => {
          const down = time + upMs;
          const repeats = Array.from({ length: Math.floor(downMs / 33) }, (_, place) => down + place * 33);
          time = down + downMs;
          return [[down], ...repeats.map((each): Event => [each, 'b', 'repeat']), [time, 'b', 'release']];
        });
        expect(counted(events)).toBe(presses.length);
        expect(count(acts(events), 'held')).toBe(presses.filter(({ downMs }) => downMs >= 1000).length);
      }),
    );
  });
});
