/**
 * What slips leave to see on an invented bag of 20 stitches, crawling left, home on the right: worked out by hand from the needles
 * (common practice, no source). As planned, move 4 after row 8 has brought the edges to R5 and R24, R7 empty for the eyelet and two
 * loops on R23; move 5 follows row 10.
 */
import { describe, expect, it } from 'vitest';
import { leftCrawler, stepAtRow } from '../../../test/fixtures/diagnosed.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import type { ShapingSlip, Slip } from '../mend/slip.ts';
import { type Story, storyOf } from './story.ts';

const job = leftCrawler;

const told = (slips: readonly Slip[], done: number, of = job): Story => {
  const story = storyOf(of, slips, done);
  if (!story) throw new Error(`cannot be done: ${JSON.stringify(slips)}`);
  return story;
};

const edges = ({ looks }: Story) => `${looks.left} ${looks.right} ${looks.stitches}`;

/** Edges and needles with loops: right after move 4; and, the slip at that move, after two rows of plum over it. */
const ofMove: Readonly<Record<ShapingSlip, readonly [now: string, later: string]>> = {
  'increase-missing': ['R6 R24 19', 'R6 R24 19'],
  'decrease-missing': ['R5 R25 20', 'R5 R25 21'],
  'increase-doubled': ['R4 R24 19', 'R4 R24 21'],
  'decrease-doubled': ['R5 R23 18', 'R5 R23 19'],
  'move-missing': ['R6 R25 20', 'R6 R25 20'],
  'move-doubled': ['R4 R23 18', 'R4 R23 20'],
  'move-mirrored': ['R7 R26 19', 'R7 R26 20'],
  'needle-left-working': ['R5 R24 19', 'R5 R25 21'],
  'needle-left-out-of-work': ['R5 R24 19', 'R5 R24 19'],
};

describe('a slip at a shaping move', () => {
  it.each(Object.entries(ofMove) as [ShapingSlip, (typeof ofMove)[ShapingSlip]][])(
    '%s',
    (is, [now, later]) => {
      expect(edges(told([{ is, move: 4 }], stepAtRow(8, 'decrease')))).toBe(now);
      const on = told([{ is, move: 4 }], stepAtRow(10, 'pass'));
      expect(edges(on)).toBe(later);
      expect(on.looks).toMatchObject({
        carriage: 'right',
        lastColour: 'plum',
        feeder: 'plum',
        stripesCounted: 5,
        rowCounter: 10,
        rowsOfColour: 2,
        wasteRows: 0,
        rehung: true,
        beforeMove: true,
      });
      // A loop of its own at the edge, once it was lifted to another needle, may be taken for loose or for firm.
      const isStray = is === 'needle-left-working';
      expect([on.looks.looseEdgeLoop, on.looks.strayColumn]).toEqual([isStray, isStray]);
      const decreased = told([{ is, move: 4 }], stepAtRow(10, 'decrease')).looks;
      expect([decreased.looseEdgeLoop, decreased.strayColumn]).toEqual([isStray ? null : false, isStray]);
    },
  );

  it.each([
    ['increase-missing', 'L24 L6 19'],
    ['decrease-missing', 'L25 L5 20'],
    ['move-mirrored', 'L26 L7 19'],
    ['needle-left-working', 'L24 L5 19'],
  ] as const)('%s, on a bag that crawls to the right', (is, seen) => {
    // From L28 to L9 the four moves lead to L24 and L5.
    const right = jobOf({ ...stripedBrief(20, 24, 60), crawl: 'right' });
    expect(edges(told([{ is, move: 4 }], stepAtRow(8, 'decrease', right), right))).toBe(seen);
  });
});

describe('a slip with rows', () => {
  const rows = ({ looks }: Story) =>
    [
      looks.carriage,
      looks.lastColour,
      looks.feeder,
      looks.stripesCounted,
      looks.rowCounter,
      looks.rowsOfColour,
    ].join(' ');
  const row8 = stepAtRow(8, 'pass');

  // Rows 7 and 8 are the fourth stripe, in mint.
  it.each([
    ['rows-too-many', 1, 8, 'left mint mint 4 9 3'],
    ['rows-too-many', 2, 8, 'right mint mint 4 10 4'],
    ['rows-too-many', 3, 6, 'left mint mint 4 11 2'],
    ['rows-too-few', 1, 8, 'left mint mint 4 7 1'],
    ['rows-too-few', 2, 8, 'right plum mint 3 6 2'],
    ['rows-too-few', 2, 6, 'right mint mint 2 6 4'],
    ['rows-too-few', 1, 6, 'left mint mint 4 7 2'],
  ] as const)('%s: %d at row %d', (is, count, row, seen) => {
    expect(rows(told([{ is, rows: count, step: stepAtRow(row, 'pass') }], row8))).toBe(seen);
  });

  it('knitted after the move lies after it', () => {
    const step = stepAtRow(8, 'decrease');
    expect(told([{ is: 'rows-too-many', rows: 1, step }], step).looks.beforeMove).toBe(false);
  });

  it.each([
    [{ is: 'stripe-in-other-yarn', stripe: 4, used: 'plum' }, 'right plum plum 3 8 4'],
    [{ is: 'yarns-swapped', stripe: 3, used: 'mint' }, 'right plum plum 3 8 2'],
    [{ is: 'row-in-other-yarn', step: row8, used: 'plum' }, 'right plum plum 5 8 1'],
    [{ is: 'carriage-wrong-side' }, 'left mint mint 4 8 2'],
    [{ is: 'wrong-yarn-in-feeder', held: 'plum' }, 'right mint plum 4 8 2'],
    [{ is: 'wrong-yarn-in-feeder', held: null }, 'right mint  4 8 2'],
  ] as const)('%j', (slip, seen) => expect(rows(told([slip], row8))).toBe(seen));

  it('of yarns that changed places leaves the stripes before as they are', () => {
    const swapped = { is: 'yarns-swapped', stripe: 3, used: 'mint' } as const;
    expect(told([swapped], stepAtRow(4, 'pass')).looks).toEqual(told([], stepAtRow(4, 'pass')).looks);
  });
});

describe('what falls', () => {
  it('is one stitch, or all of them: then the counter shows the pass that knitted nothing', () => {
    expect(told([{ is: 'stitch-dropped' }], stepAtRow(8, 'pass')).looks).toMatchObject({
      left: 'R6',
      stitches: 19,
    });
    expect(
      told([{ is: 'work-dropped', step: stepAtRow(8, 'pass') }], stepAtRow(8, 'pass')).looks,
    ).toMatchObject({
      left: null,
      right: null,
      lastColour: null,
      feeder: null,
      stitches: 0,
      rowCounter: 8,
      carriage: 'right',
    });
  });
});

// 8 stitches on 14 needles: hung again after row 6, when they hang from L5 to R3, on L3 to R5; the closing row is the 7th.
const tight = jobOf(stripedBrief(8, 8, 14));

describe('a slip in hanging the work again', () => {
  const done = stepAtRow(6, 'release-waste', tight);
  const seen = (slip: Slip) => {
    const { looks } = told([slip], done, tight);
    return `${looks.left} ${looks.right} ${looks.rehung} ${looks.rowCounter} ${looks.wasteRows}`;
  };

  it.each([
    [{ is: 'rehang-missing', row: 6 }, 'L5 R3 false 6 0'],
    [{ is: 'rehang-shifted', row: 6, by: 1 }, 'L2 R6 true 6 0'],
    [{ is: 'rehang-shifted', row: 6, by: -2 }, 'L5 R3 true 6 0'],
    [{ is: 'carriage-wrong-side' }, 'L3 R5 true 6 0'],
  ] as const)('%j', (slip, looks) => expect(seen(slip)).toBe(looks));

  it('cannot be beyond the bed', () => {
    // Seven needles on either side of the middle.
    expect(storyOf(tight, [{ is: 'rehang-shifted', row: 6, by: 2 }], done)).not.toBeNull();
    expect(storyOf(tight, [{ is: 'rehang-shifted', row: 6, by: 3 }], done)).toBeNull();
    expect(storyOf(tight, [{ is: 'rehang-shifted', row: 6, by: -4 }], done)).not.toBeNull();
    expect(storyOf(tight, [{ is: 'rehang-shifted', row: 6, by: -5 }], done)).toBeNull();
  });

  it('elsewhere than that leaves it where it is', () => {
    const { looks } = told([{ is: 'rehang-shifted', row: 4, by: 1 }], done, tight);
    expect(`${looks.left} ${looks.right}`).toBe('L3 R5');
  });

  it('shows the waste while it hangs', () => {
    const waste = told([{ is: 'decrease-missing', move: 2 }], stepAtRow(6, 'waste-rows', tight), tight).looks;
    expect(waste).toMatchObject({ wasteRows: 8, lastColour: 'waste', rowCounter: 6, stripesCounted: 3 });
  });
});
