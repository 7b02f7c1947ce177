/** When a slip was made, and how it is told where in the work it lies. The bag is invented; rows and steps are counted by hand. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import type { Act } from '../../steps/act.ts';
import { allSteps, stepAt } from '../../steps/job.ts';
import { type Slip, shapingSlips } from '../mend/slip.ts';
import {
  baseOf,
  edgeAt,
  isAt,
  isUnhung,
  momentOf,
  passesUpTo,
  passOfRow,
  type SlipMoment,
} from './slip-moment.ts';

// Hung again after row 6; stripes of two rows; the closing row is the 7th.
const job = jobOf(stripedBrief(8, 8, 14));
const once = (row: number, kind: Act['kind']): number =>
  [...allSteps(job)].find((step) => step.row === row && step.act.kind === kind)?.step ?? Number.NaN;
const pass = (row: number): number => once(row, row === 7 ? 'closing-pass' : 'pass');

const slips = {
  move: { is: 'decrease-missing', move: 2 },
  more: { is: 'rows-too-many', rows: 1, step: pass(4) },
  fewer: { is: 'rows-too-few', rows: 2, step: pass(5) },
  row: { is: 'row-in-other-yarn', step: pass(3), used: 'plum' },
  fallen: { is: 'work-dropped', step: pass(3) },
  stripe: { is: 'stripe-in-other-yarn', stripe: 2, used: 'plum' },
  swapped: { is: 'yarns-swapped', stripe: 3, used: 'mint' },
  unhung: { is: 'rehang-missing', row: 6 },
  aside: { is: 'rehang-shifted', row: 6, by: 1 },
  stitch: { is: 'stitch-dropped' },
  side: { is: 'carriage-wrong-side' },
  feeder: { is: 'wrong-yarn-in-feeder', held: null },
} as const satisfies Record<string, Slip>;

describe('the passes', () => {
  it('are found by their rows, newest first', () => {
    expect([1, 2, 3, 4, 5, 6, 7].map((row) => stepAt(job, passOfRow(job, row)).row)).toEqual([
      1, 2, 3, 4, 5, 6, 7,
    ]);
    expect(passesUpTo(job, pass(4), 2)).toEqual([pass(4), pass(3)]);
    expect(passesUpTo(job, pass(4) + 1, 1)).toEqual([pass(4)]);
    expect(passesUpTo(job, pass(2), 3)).toEqual([pass(2), pass(1)]);
    expect(passesUpTo(job, pass(7), 1)).toEqual([pass(7)]);
  });
});

describe('a slip', () => {
  const done = pass(7);
  it.each([
    ['move', pass(4)],
    ['more', pass(4)],
    // Rows 4 and 5.
    ['fewer', pass(4) - 1],
    ['row', pass(3) - 1],
    ['fallen', pass(3) - 1],
    // With the yarn that should have been threaded.
    ['stripe', once(2, 'decrease')],
    ['swapped', once(4, 'decrease')],
    ['unhung', pass(6)],
    ['aside', pass(6)],
    ['stitch', done],
    ['side', done],
    ['feeder', done],
  ] as const)('%s begins with its steps', (name, base) =>
    expect(baseOf(job, [slips[name]], done)).toBe(base),
  );

  it('begins with the older of two, and now at the latest', () => {
    expect(baseOf(job, [slips.more, slips.row], done)).toBe(pass(3) - 1);
    expect(baseOf(job, [slips.stitch, slips.unhung], done)).toBe(pass(6));
    expect(baseOf(job, [slips.aside], pass(2))).toBe(pass(2));
    expect(baseOf(job, [], 3)).toBe(3);
  });

  it.each([
    ['move', { row: 4, stripe: 2, move: 2 }],
    ['more', { row: 4, stripe: 2, move: null }],
    ['fewer', { row: 5, stripe: 3, move: null }],
    ['row', { row: 3, stripe: 2, move: null }],
    ['stripe', { row: 3, stripe: 2, move: null }],
    ['swapped', { row: 5, stripe: 3, move: null }],
    ['unhung', { row: 6, stripe: 3, move: null }],
    ['stitch', { row: 0, stripe: 1, move: null }],
  ] as const)('%s lies at its row, stripe and move', (name, moment) =>
    expect(momentOf(job, slips[name])).toEqual(moment),
  );
});

describe('where a slip was found', () => {
  // Ten rows knitted in all: six rows down is row 4.
  it.each([
    ['move', { by: 'move', number: 2 }, true],
    ['move', { by: 'move', number: 3 }, false],
    ['move', { by: 'stripe', number: 2 }, true],
    ['move', { by: 'stripe', number: 1 }, false],
    // A move is told by its number, or by the rows down to it.
    ['move', { by: 'row', number: 4 }, false],
    ['move', { by: 'rows-down', number: 6 }, true],
    ['move', { by: 'rows-down', number: 5 }, false],
    ['more', { by: 'row', number: 4 }, true],
    ['more', { by: 'row', number: 5 }, false],
    ['more', { by: 'move', number: 2 }, false],
    ['stripe', { by: 'stripe', number: 2 }, true],
    ['unhung', { by: 'row', number: 6 }, true],
  ] as const)('%s: %j is %s', (name, moment: SlipMoment, is) =>
    expect(isAt(job, slips[name], moment, 10)).toBe(is),
  );

  it('the edge steps that the slip has moved', () => {
    const there = { by: 'move', number: 2 } as const;
    const stepping = (edge: 'leading' | 'trailing') =>
      shapingSlips.filter((is) => edgeAt(job, [{ is, move: 2 }], there, 10) === edge);
    expect(stepping('leading')).toEqual(['increase-missing', 'increase-doubled', 'needle-left-out-of-work']);
    expect(stepping('trailing')).toEqual(['decrease-missing', 'decrease-doubled', 'needle-left-working']);
    expect(edgeAt(job, [slips.more, slips.move], there, 10)).toBe('trailing');
    expect(edgeAt(job, [slips.more], there, 10)).toBeNull();
    expect(edgeAt(job, [slips.move], undefined, 10)).toBeNull();
  });
});

describe('the steps of hanging again', () => {
  const steps = [...allSteps(job)].filter(({ row, phase }) => row === 6 && phase === 'stripes');

  it('are those between the row and the move, where they were forgotten', () => {
    const unhung = steps.filter((step) => isUnhung([slips.unhung], step)).map(({ step }) => step);
    const count = once(6, 'increase') - pass(6) - 1;
    expect(count).toBe(8);
    expect(unhung).toEqual(Array.from({ length: count }, (_, i) => pass(6) + 1 + i));
  });

  it('are done otherwise, and at the end of the bag', () => {
    expect(steps.some((step) => isUnhung([slips.aside, { is: 'rehang-missing', row: 4 }], step))).toBe(false);
    const atTheEnd = stepAt(job, once(7, 'waste-rows'));
    expect(isUnhung([{ is: 'rehang-missing', row: 7 }], atTheEnd)).toBe(false);
  });
});
