/** Presses of foot switches, with their times given: what counts, what is taken back, what is refused. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type MemoryBench, openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { jobOf } from '../../../test/fixtures/plan-of.ts';
import { isGuarded } from '../../steps/acts.ts';
import { stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { passesCounted } from './press-switch.ts';

const withB = { pedals: { b: 'confirm' } };

/** Key events of a switch held from `downMs`, as terminals send them: the first repeat after 500 ms, then 30 a second. */
function hold(bench: MemoryBench, name: string, downMs: number, lastsMs: number): void {
  bench.key(name, downMs);
  for (let at = downMs + 500; at <= downMs + lastsMs; at += 33) bench.key(name, at);
}

/** The same where the terminal tells repeats and releases. */
function holdTold(bench: MemoryBench, name: string, downMs: number, lastsMs: number): void {
  bench.key(name, downMs);
  for (let at = downMs + 500; at < downMs + lastsMs; at += 33) bench.key(name, at, 'repeat');
  bench.key(name, downMs + lastsMs, 'release');
}

const ways = [
  ['by time', hold],
  ['with kinds told', holdTold],
] as const;

describe('a press', () => {
  // Invented, and long: a strip of 4000 rows has more than 10,000 steps.
  const longBrief = {
    ...JSON.parse(readFileSync('demo/token-pouch.json', 'utf8')),
    bed: { needles: 400, pitchMm: 8 },
    bag: { stitches: 30, rows: 4000 },
  };

  it('counts each of 10,000 times at twenty a second, and no more', () => {
    // Twenty a second are 50 ms apart. A held key repeats every 30 to 50 ms, so within the usual window of 100 ms time alone
    // cannot tell such presses of one key from a hold: the window is set below their distance.
    const bench = openMemoryBench({
      brief: longBrief,
      settings: { ...withB, pedalGapMs: 40, pause: 'short' },
    });
    for (let press = 0; press < 10_000; press++) bench.key('b', press * 50);
    expect(bench.done()).toBe(10_000);
    expect(bench.commands).toHaveLength(10_000);
    expect(bench.commands.every((command) => command.do === 'confirm' && command.count === 1)).toBe(true);
  });

  it('counts each of 10,000 times with the usual window, where releases are told', () => {
    const bench = openMemoryBench({ brief: longBrief, settings: { ...withB, pause: 'short' } });
    for (let press = 0; press < 10_000; press++) {
      bench.key('b', press * 50);
      bench.key('b', press * 50 + 25, 'release');
    }
    expect(bench.done()).toBe(10_000);
    expect(bench.commands).toHaveLength(10_000);
  });

  it('that bounces three times within 40 ms counts once', () => {
    const bench = openMemoryBench({ settings: withB });
    for (const at of [0, 12, 25, 38]) bench.key('b', at);
    expect(bench.done()).toBe(1);
  });

  it('that bounces while the program is busy counts once, and no bounce is typed', () => {
    const bench = openMemoryBench({ settings: withB });
    bench.key('b', 0);
    for (const at of [600, 600, 601]) bench.key('b', at, 'press', 10);
    expect(bench.done()).toBe(1);
    expect(bench.prompt()).toBe('');
  });

  it.each(ways)('that is held for less than a second counts once, %s', (_, holdKey) => {
    const bench = openMemoryBench({ settings: withB });
    holdKey(bench, 'b', 0, 900);
    expect(bench.done()).toBe(1);
  });

  it('can be told from a bounce by a window of the maker', () => {
    const bench = openMemoryBench({ settings: withB });
    bench.type('pedal gap 300', 0);
    expect(bench.kept).toEqual([{ name: 'pedalGapMs', value: 300 }]);
    bench.key('b', 1000);
    bench.key('b', 1250);
    bench.key('b', 1550);
    expect(bench.done()).toBe(2);
    bench.type('pedal gap 5', 2000);
    expect(bench.said(1)).toBe('5 is not a whole number from 20 to 1000.');
  });
});

describe('a hold of a second', () => {
  it.each(ways)('takes back the press it began with and one more step, %s', (_, holdKey) => {
    const bench = openMemoryBench({ settings: withB });
    for (let press = 0; press < 5; press++) bench.key('b', press * 800);
    expect(bench.done()).toBe(5);
    holdKey(bench, 'b', 5000, 1500);
    expect(bench.done()).toBe(4);
    bench.key('b', 8000);
    expect(bench.done()).toBe(5);
  });

  it('goes back one step when its own press was refused', () => {
    const bench = openMemoryBench({ settings: { ...withB, pause: 'long' } });
    bench.goTo({ at: 'row', number: 3 });
    bench.key('b', 0);
    const atPass = bench.done();
    // A pass with a new yarn, 800 ms after the press that brought it onto the screen.
    holdTold(bench, 'b', 800, 1100);
    expect(bench.commands.at(-1)).toEqual({ do: 'back' });
    expect(bench.done()).toBe(atPass - 1);
  });

  it('goes back one step from a finished bag', () => {
    const bench = openMemoryBench({ settings: withB });
    const { stepCount } = bench.store.get().session.job;
    bench.perform({ do: 'confirm', count: stepCount - 1 });
    bench.key('b', 0);
    expect(bench.done()).toBe(stepCount);
    holdTold(bench, 'b', 5000, 1200);
    expect(bench.done()).toBe(stepCount - 1);
  });

  it('does nothing when it is of the Enter that sent a line, or of the press that was assigned', () => {
    const bench = openMemoryBench();
    bench.perform({ do: 'confirm', count: 10 });
    for (const letter of 'where') bench.key(letter, 0);
    hold(bench, 'enter', 0, 1500);
    expect(bench.done()).toBe(10);
    bench.type('pedal confirm', 10_000);
    hold(bench, 'b', 12_000, 1500);
    expect(bench.done()).toBe(10);
    expect(bench.store.get().settings.pedals).toEqual({ b: 'confirm' });
  });

  it('of a key that takes back takes back once', () => {
    const bench = openMemoryBench();
    bench.perform({ do: 'confirm', count: 10 });
    bench.perform({ do: 'confirm', count: 1 });
    hold(bench, 'left', 0, 1500);
    expect(bench.done()).toBe(10);
  });
});

describe('a step that must not be trodden past', () => {
  it.each([
    ['usual', 599, 600],
    ['long', 1499, 1500],
  ])('with a %s pause takes no press before %i ms', (pause, tooSoonMs, enoughMs) => {
    const bench = openMemoryBench({ settings: { pedals: { b: 'confirm', c: 'confirm' }, pause } });
    bench.goTo({ at: 'row', number: 3 });
    bench.key('b', 0);
    const atPass = bench.done();
    bench.key('c', tooSoonMs);
    expect(bench.said(1)).toContain('Look at this step first');
    expect(bench.done()).toBe(atPass);
    bench.key('b', enoughMs);
    expect(bench.done()).toBe(atPass + 1);
  });

  it('with a short pause takes the next press that is none of the same', () => {
    const bench = openMemoryBench({ settings: { ...withB, pause: 'short' } });
    bench.goTo({ at: 'row', number: 3 });
    bench.key('b', 0);
    const atPass = bench.done();
    bench.key('b', 120);
    expect(bench.done()).toBe(atPass + 1);
  });

  it('takes none that may have been sent before it was shown, though it is read long after', () => {
    const bench = openMemoryBench({ settings: { pedals: { b: 'confirm', c: 'confirm' } } });
    bench.goTo({ at: 'row', number: 3 });
    bench.key('b', 0);
    const atPass = bench.done();
    bench.key('c', 5000, 'press', 50);
    expect(bench.done()).toBe(atPass);
  });

  it('is not taken back by the end of a hold that never confirmed it', () => {
    const bench = openMemoryBench({ settings: withB });
    bench.goTo({ at: 'row', number: 3 });
    const before = bench.done();
    // The first repeat, after 500 ms, looks like a press and is refused: nothing is there to withdraw.
    hold(bench, 'b', 0, 800);
    expect(bench.done()).toBe(before + 1);
    expect(bench.commands.filter((command) => command.do === 'back')).toEqual([]);
  });

  it('asks for a look after a typed line, too', () => {
    const bench = openMemoryBench({ settings: withB });
    bench.type('go row 3', 0);
    bench.type('next', 1000);
    const atPass = bench.done();
    bench.key('b', 1200);
    expect(bench.done()).toBe(atPass);
    bench.key('b', 9000);
    expect(bench.done()).toBe(atPass + 1);
  });

  it('is each first pass after a yarn went into the feeder, each hanging again, and the closing row', () => {
    for (const name of ['dice-bag', 'rulebook-bag', 'leftovers-bag']) {
      const job = jobOf(readFileSync(`demo/${name}.json`, 'utf8'));
      const due: Step[] = [];
      let isFresh = false;
      for (let number = 1; number <= job.stepCount; number++) {
        const step = stepAt(job, number);
        const moves = step.moves.map(({ move }) => move);
        const isDue =
          (isFresh && moves.includes('knit') && step.act.kind !== 'rounds') ||
          moves.includes('take-off') ||
          moves.includes('rehang') ||
          step.act.kind === 'closing-pass';
        if (isDue) due.push(step);
        isFresh = moves.includes('feed') || (isFresh && !moves.includes('knit'));
      }
      expect(due.length).toBeGreaterThan(job.plan.hangings.length);
      expect(due.filter((step) => !isGuarded(step))).toEqual([]);
    }
  });

  it('lets ordinary steps pass as fast as they come', () => {
    const bench = openMemoryBench({ settings: { ...withB, pause: 'long' } });
    bench.key('b', 0);
    bench.key('b', 120);
    bench.key('b', 240);
    expect(bench.done()).toBe(3);
  });
});

describe('a switch at the carriage', () => {
  const withPass = { settings: { pedals: { p: 'pass' } } };

  it('confirms passes and warns where none is due', () => {
    const bench = openMemoryBench(withPass);
    bench.goTo({ at: 'row', number: 2 });
    bench.key('p', 0);
    const done = bench.done();
    bench.key('p', 3000);
    expect(bench.done()).toBe(done);
    expect(bench.said(1)).toMatch(
      /^A pass came where none is due\. What comes next: Left edge, increase, one needle out/,
    );
  });

  it('has to come twice for each round of cord, as often again after the rounds are taken back', () => {
    const bench = openMemoryBench(withPass);
    bench.goTo({ at: 'phase', phase: 'cord' });
    bench.perform({ do: 'confirm', count: 5 });
    const before = bench.done();
    let now = 0;
    const key = (name: string): void => {
      now += 2000;
      bench.key(name, now);
    };
    const press = (times: number): number => {
      for (let i = 0; i < times; i++) key('p');
      return bench.done() - before;
    };
    // Ten rounds of two passes are one step.
    expect(passesCounted(bench.store.get())).toBeNull();
    expect(press(19)).toBe(0);
    expect(passesCounted(bench.store.get())).toEqual({ at: 19, of: 20 });
    expect(press(1)).toBe(1);
    expect(passesCounted(bench.store.get())).toBeNull();
    expect([press(19), press(1)]).toEqual([1, 2]);
    key('left');
    expect([press(19), press(1)]).toEqual([1, 2]);
  });

  it('counts a held contact once', () => {
    const bench = openMemoryBench(withPass);
    bench.goTo({ at: 'phase', phase: 'cord' });
    bench.perform({ do: 'confirm', count: 5 });
    const before = bench.done();
    for (let i = 0; i < 18; i++) bench.key('p', i * 1000);
    hold(bench, 'p', 20_000, 800);
    expect(bench.done() - before).toBe(0);
    bench.key('p', 25_000);
    expect(bench.done() - before).toBe(1);
  });
});

describe('assigning', () => {
  it('takes any key that the prompt can spare, shows it, and says how to type past a letter', () => {
    const bench = openMemoryBench();
    bench.type('pedal confirm', 0);
    bench.key('enter', 1000);
    expect(bench.said(1)).toBe('enter is needed by the prompt itself: press another key.');
    bench.key('b', 2000);
    expect(bench.said(3).split('\n')).toEqual([
      'The switch types b. With nothing typed, it now confirms the step.',
      'To type a command that begins with b, put a slash before it: /b…',
      'Place the switch where nobody trips over it or its cable. Keep both clear of the weights.',
    ]);
    expect(bench.kept).toEqual([{ name: 'pedals', value: { b: 'confirm' } }]);
    bench.type('help', 4000);
    expect(bench.said(1)).toContain('To type a command that begins with b, put a slash before it');
  });

  it('takes function, page, media keys and chords, of which nothing needs to be typed past', () => {
    for (const name of ['f13', 'page-down', 'media-play', 'f2']) {
      const bench = openMemoryBench();
      bench.type('pedal back', 0);
      bench.key(name, 1000);
      expect(bench.store.get().settings.pedals).toEqual({ [name]: 'back' });
      bench.perform({ do: 'confirm', count: 1 });
      bench.key(name, 3000);
      expect(bench.done()).toBe(0);
      bench.type('help', 4000);
      expect(bench.said(1)).not.toContain('slash');
    }
  });

  it('is left by Escape, and not caught by a paste', () => {
    const bench = openMemoryBench();
    bench.type('pedal', 0);
    bench.key('paste', 500);
    expect(bench.store.get().assigning).toBe('confirm');
    bench.key('escape', 1000);
    expect(bench.store.get().assigning).toBeNull();
    expect(bench.said(1)).toBe('No switch was assigned.');
  });

  it('ends at three switches, of which each can be given something else', () => {
    const bench = openMemoryBench({ settings: { pedals: { b: 'confirm', c: 'pass', f13: 'again' } } });
    bench.type('pedal back', 0);
    bench.key('f14', 1000);
    expect(bench.said(1)).toBe('There are 3 switches already: type pedal off to forget them.');
    bench.type('pedal back', 2000);
    bench.key('f13', 3000);
    expect(bench.store.get().settings.pedals).toEqual({ b: 'confirm', c: 'pass', f13: 'back' });
    bench.type('pedal off', 4000);
    expect(bench.store.get().settings.pedals).toEqual({});
  });
});

describe('an assigned letter', () => {
  it('is a letter once something is typed, or after a slash', () => {
    const bench = openMemoryBench({ settings: withB });
    bench.perform({ do: 'confirm', count: 3 });
    for (const letter of '/back') bench.key(letter, 0);
    expect(bench.prompt()).toBe('/back');
    bench.key('enter', 500);
    expect(bench.done()).toBe(0);
    for (const letter of 'abb') bench.key(letter, 2000);
    expect(bench.prompt()).toBe('abb');
  });
});

it('F2 shows large letters and hides them', () => {
  const bench = openMemoryBench();
  bench.key('f2', 0);
  expect(bench.store.get().settings.large).toBe(true);
  bench.key('f2', 1000);
  bench.key('f2', 1050, 'release');
  expect(bench.kept.map(({ value }) => value)).toEqual([true, false]);
});
