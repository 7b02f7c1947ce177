import { describe, expect, it } from 'vitest';
import { isShapingSlip, isSlip, type Slip, shapingSlips, slipKinds } from './slip.ts';

const sample = { number: 3, text: 'mint', 'text or null': null } as const;
const all = Object.entries(slipKinds).map(([is, facts]) => ({
  is,
  ...Object.fromEntries(
    Object.entries(facts).map(([name, kind]) => [name, sample[kind as keyof typeof sample]]),
  ),
}));

describe('what a log may hold as a slip', () => {
  it.each(all)('$is', (slip) => expect(isSlip(slip)).toBe(true));

  it.each([
    [null],
    [3],
    ['move-missing'],
    [{}],
    [{ move: 3 }],
    [{ is: 3, move: 3 }],
    [{ is: ['move-missing'], move: 3 }],
    [{ is: 'toString' }],
    [{ is: 'lost' }],
    [{ is: 'move-missing' }],
    [{ is: 'move-missing', step: 3 }],
    [{ is: 'move-missing', move: '3' }],
    [{ is: 'move-missing', move: 3.5 }],
    [{ is: 'move-missing', move: null }],
    [{ is: 'move-missing', move: 3, row: 6 }],
    [{ is: 'rows-too-many', rows: 2, step: 'six' }],
    [{ is: 'rows-too-many', rows: 'two', step: 6 }],
    [{ is: 'row-in-other-yarn', step: 6, used: 7 }],
    [{ is: 'row-in-other-yarn', step: 6, used: null }],
    [{ is: 'wrong-yarn-in-feeder' }],
    [{ is: 'wrong-yarn-in-feeder', held: 3 }],
  ])('is not %j', (value) => expect(isSlip(value)).toBe(false));

  it('holds a yarn, or none, in the feeder', () => {
    expect(isSlip({ is: 'wrong-yarn-in-feeder', held: 'plum' })).toBe(true);
  });
});

it('is of shaping where it is at a move', () => {
  expect(all.filter((slip) => isShapingSlip(slip as Slip)).map(({ is }) => is)).toEqual([...shapingSlips]);
});
