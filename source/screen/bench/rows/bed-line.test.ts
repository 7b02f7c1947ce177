import fc from 'fast-check';
import { expect, it } from 'vitest';
import { stepsOfAllKinds } from '../../../../test/fixtures/steps-of-all-kinds.ts';
import { formatNeedle } from '../../../bed/needles.ts';
import { bedLine } from './bench-rows.ts';
import { brushFor } from './row.ts';

const [view] = stepsOfAllKinds('token-pouch');
if (!view) throw new Error('no view');
const brush = brushFor(view.plan, 'none', true);

const drawn = (needleCount: number, left: number | null, right: number | null, width: number): string => {
  const bed = { needleCount, left, right, working: null, empty: [], doubled: [] };
  return bedLine({ ...view, bed, carriage: 'right' }, width, brush)
    .map(({ text }) => text)
    .join('');
};

it.each([
  [10, null, null, '      .....|..... [=]'],
  [10, 2, 5, '      ..=L3|=.R1. [=]'],
  [11, 4, 8, '      .L1.=|R4==.. [=]'],
])(
  'shows %i needles from %j to %j, the edges named outside where there is room',
  (needles, left, right, text) => {
    expect(drawn(needles, left, right, 30).trimEnd()).toBe(text);
  },
);

it('is as wide as it may be, and has the middle and the names of both edges', () => {
  const beds = fc.record({
    needleCount: fc.integer({ min: 10, max: 400 }),
    first: fc.nat(399),
    stitches: fc.integer({ min: 8, max: 200 }),
    width: fc.integer({ min: 40, max: 250 }),
  });
  fc.assert(
    fc.property(beds, ({ needleCount, first, stitches, width }) => {
      const left = first % (needleCount - 7);
      const right = Math.min(needleCount - 1, left + stitches - 1);
      const text = drawn(needleCount, left, right, width);
      expect(text.length).toBe(width);
      expect(text).toContain('|');
      expect(text).toContain(formatNeedle(needleCount, left));
      expect(text).toContain(formatNeedle(needleCount, right));
    }),
  );
});
