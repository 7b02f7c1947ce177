/**
 * Ways to set each slip right, on an invented bag of 20 stitches that crawls left: where each leads and what will show are worked
 * out by hand (common practice, no source). Move 4 follows row 8, move 5 row 10.
 */
import { describe, expect, it } from 'vitest';
import { leftCrawler, stepAtRow } from '../../../test/fixtures/diagnosed.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { afterHandStep, type Mend } from '../mend/mend.ts';
import type { ShapingSlip, Slip } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { sameBed } from './settle.ts';
import { storyOf } from './story.ts';
import { waysOut } from './ways-out.ts';

const job = leftCrawler;
const tight = jobOf(stripedBrief(8, 8, 14));

const ways = (slip: Slip, done: number, of = job): readonly Mend[] => {
  const story = storyOf(of, [slip], done);
  if (!story) throw new Error(`cannot be done: ${JSON.stringify(slip)}`);
  return waysOut(of, story);
};

/** Where each leads, and what shows. */
const inShort = (mends: readonly Mend[]): readonly string[] =>
  mends.map(({ how, thenDone, shows }) => [how, thenDone, ...[...shows].sort()].join(' '));

const [increase, decrease, onRow] = [
  stepAtRow(8, 'increase'),
  stepAtRow(8, 'decrease'),
  stepAtRow(10, 'pass'),
];

describe('a shaping slip that was made just now', () => {
  it.each<[ShapingSlip, readonly string[]]>([
    ['increase-missing', ['now']],
    ['decrease-missing', ['now']],
    ['increase-doubled', ['now']],
    ['decrease-doubled', ['now', 'make-up extra-eyelet hole-at-trailing-edge three-in-one']],
    ['move-missing', ['now']],
    ['move-doubled', ['now', 'make-up extra-eyelet hole-at-trailing-edge three-in-one']],
    ['move-mirrored', ['now', 'make-up extra-eyelet wide-hole']],
    ['needle-left-working', ['now']],
    ['needle-left-out-of-work', ['now']],
  ])('%s is set right without a trace', (is, expected) => {
    const told = inShort(ways({ is, move: 4 }, decrease));
    expect(told).toEqual(expected.map((way) => way.replace(/^(\S+)/, `$1 ${decrease}`)));
  });
});

describe('a shaping slip with two rows over it', () => {
  // Back to before what was done amiss; and kept, with a step at each edge that was wrong for two rows.
  it.each<[ShapingSlip, number, string]>([
    ['increase-missing', increase - 1, 'eyelet-out-of-line step-in-leading-edge wide-hole'],
    ['decrease-missing', decrease - 1, 'step-in-trailing-edge three-in-one'],
    ['increase-doubled', increase, 'extra-eyelet step-in-leading-edge wide-hole'],
    ['decrease-doubled', decrease, 'step-in-trailing-edge three-in-one'],
    [
      'move-missing',
      increase - 1,
      'eyelet-out-of-line step-in-leading-edge step-in-trailing-edge three-in-one wide-hole',
    ],
    [
      'move-doubled',
      decrease,
      'extra-eyelet step-in-leading-edge step-in-trailing-edge three-in-one wide-hole',
    ],
    [
      'move-mirrored',
      increase - 1,
      'extra-eyelet hole-at-trailing-edge step-in-leading-edge step-in-trailing-edge three-in-one wide-hole',
    ],
    ['needle-left-out-of-work', increase, 'eyelet-out-of-line ladder wide-hole'],
  ])('%s', (is, thenDone, shows) => {
    expect(inShort(ways({ is, move: 4 }, onRow))).toEqual([`rip ${thenDone}`, `make-up ${onRow} ${shows}`]);
  });

  it('a loop that began on nothing is dropped without a trace, until it is decreased', () => {
    const slip = { is: 'needle-left-working', move: 4 } as const;
    expect(inShort(ways(slip, onRow))).toEqual([`now ${onRow}`]);
    expect(inShort(ways(slip, stepAtRow(10, 'decrease')))).toEqual([
      `rip ${decrease - 1}`,
      `make-up ${stepAtRow(10, 'decrease')} loop-at-edge step-in-trailing-edge three-in-one`,
    ]);
  });
});

describe('rows', () => {
  const row8 = stepAtRow(8, 'pass');
  it.each<[Slip, readonly string[]]>([
    [
      { is: 'rows-too-many', rows: 1, step: row8 },
      [`rip ${row8}`, `make-up ${row8} strand-across stripe-too-high`],
    ],
    [{ is: 'rows-too-many', rows: 2, step: row8 }, [`rip ${row8}`, `make-up ${row8} stripe-too-high`]],
    [
      { is: 'rows-too-few', rows: 1, step: stepAtRow(6, 'pass') },
      [`rip ${stepAtRow(5, 'pass')}`, `make-up ${row8} strand-across stripe-too-low`],
    ],
    [
      { is: 'stripe-in-other-yarn', stripe: 4, used: 'plum' },
      [`rip ${stepAtRow(6, 'decrease')}`, `make-up ${row8} wrong-colour`],
    ],
    [
      { is: 'yarns-swapped', stripe: 3, used: 'mint' },
      [`rip ${stepAtRow(4, 'decrease')}`, `make-up ${row8} wrong-colour`],
    ],
    [
      { is: 'row-in-other-yarn', step: row8, used: 'plum' },
      [`rip ${stepAtRow(7, 'pass')}`, `make-up ${row8} wrong-colour`],
    ],
    [{ is: 'carriage-wrong-side' }, [`now ${row8}`]],
    [{ is: 'wrong-yarn-in-feeder', held: null }, [`now ${row8}`]],
    [{ is: 'wrong-yarn-in-feeder', held: 'plum' }, [`now ${row8}`]],
    // Nothing on the needles tells where it runs.
    [{ is: 'stitch-dropped' }, []],
    // Hung again as it hung after row 7.
    [{ is: 'work-dropped', step: row8 }, [`now ${stepAtRow(7, 'pass')}`]],
  ])('%j', (slip, expected) => expect(inShort(ways(slip, row8))).toEqual(expected));

  it('the carriage cannot cross without knitting where the machine does not slip', () => {
    const bed = { ...stripedBrief(20, 24, 60).bed, without: ['slip'] };
    const without = jobOf({ ...stripedBrief(20, 24, 60), bed });
    expect(ways({ is: 'carriage-wrong-side' }, row8, without)).toEqual([]);
    expect(inShort(ways({ is: 'rows-too-many', rows: 1, step: row8 }, row8, without))).toEqual([
      `rip ${row8}`,
    ]);
  });
});

describe('work that hangs amiss', () => {
  const done = stepAtRow(6, 'release-waste', tight);

  it('is hung again as it is planned, where that was forgotten', () => {
    const [first] = ways({ is: 'rehang-missing', row: 6 }, done, tight);
    expect([first?.how, first?.thenDone, first?.shows]).toEqual(['now', done, []]);
    expect(first?.steps.map(({ planned }) => planned?.step)).toEqual(
      Array.from({ length: 8 }, (_, i) => stepAtRow(6, 'pass', tight) + 1 + i),
    );
  });

  it('is taken off and hung where it should, where it hangs aside', () => {
    const all = ways({ is: 'rehang-shifted', row: 6, by: 1 }, done, tight);
    expect(inShort(all)).toEqual([`now ${done}`]);
    expect(all[0]?.steps.flatMap(({ moves }) => moves)).toMatchObject([
      { move: 'take-off' },
      { move: 'work' },
      { move: 'rehang', left: 'L3', right: 'R5' },
    ]);
  });
});

describe('work that was hung aside and knitted on', () => {
  const longer = jobOf(stripedBrief(8, 12, 14));
  const row = (number: number) => stepAtRow(number, 'pass', longer);
  const out = (done: number) => ways({ is: 'rehang-shifted', row: 6, by: 1 }, done, longer);

  it.each([row(7), row(8), row(9)])('is moved at once where each needle holds one loop: step %d', (done) => {
    expect(inShort(out(done))).toEqual([`now ${done}`]);
  });

  it.each([
    [stepAtRow(6, 'decrease', longer), row(7), 3],
    [stepAtRow(8, 'decrease', longer), row(9), 3],
    [row(9) - 1, row(9), 2],
  ])('is moved after the next row where a needle holds two or none: step %d', (done, thenDone, steps) => {
    expect(inShort(out(done))).toEqual([`make-up ${thenDone}`]);
    expect(out(done)[0]?.steps.map(({ planned }) => planned?.step ?? null)).toEqual([
      ...Array.from({ length: steps - 1 }, (_, i) => thenDone - steps + 2 + i),
      null,
    ]);
  });

  it.each([
    ['in the middle of a move', stepAtRow(6, 'increase', longer)],
    ['where it is taken off before that', row(10)],
    ['while its waste is knitted', stepAtRow(10, 'waste-rows', longer)],
  ])('is not moved %s', (_, done) => expect(out(done)).toEqual([]));
});

describe('each way', () => {
  const slips: readonly (readonly [Slip, number])[] = [
    [{ is: 'increase-missing', move: 4 }, onRow],
    [{ is: 'decrease-doubled', move: 4 }, onRow],
    [{ is: 'move-mirrored', move: 4 }, decrease],
    [{ is: 'needle-left-working', move: 4 }, onRow],
    [{ is: 'rows-too-many', rows: 1, step: stepAtRow(8, 'pass') }, onRow],
    [{ is: 'yarns-swapped', stripe: 3, used: 'mint' }, onRow],
    [{ is: 'wrong-yarn-in-feeder', held: 'mint' }, onRow],
  ];

  it.each(slips)(
    'out of %j leads to the bed of its place, rows that come out one at a time',
    (slip, done) => {
      const story = storyOf(job, [slip], done);
      for (const { steps, thenDone, how } of story ? waysOut(job, story) : []) {
        let bed = story?.bed;
        for (const step of steps) {
          const pulled = step.moves.filter((move) => 'undo' in move && move.undo === 'knit');
          expect(pulled.length).toBeLessThanOrEqual(1);
          expect(step.setsCounter || pulled.length === 0).toBe(true);
          const next = bed && afterHandStep(bed, step, job.plan.stitches);
          bed = next?.ok ? next.value : undefined;
        }
        const due = bedAtPlace(job, thenDone);
        expect(bed?.counter).toBe(due.counter);
        // Kept, needles may hold more loops until the next row is over them.
        if (bed && how !== 'make-up') expect(sameBed(bed, due)).toBe(true);
      }
    },
  );
});
