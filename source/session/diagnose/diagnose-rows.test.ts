/** Rows, colours and stitches that are seen amiss: what is asked and offered, worked out by hand (common practice, no source). */
import { describe, expect, it } from 'vitest';
import { leftCrawler, offers, seen, slipsOf, stepAtRow, told } from '../../../test/fixtures/diagnosed.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { isFallen } from './diagnose.ts';

const [row7, row8] = [stepAtRow(7, 'pass'), stepAtRow(8, 'pass')];

describe('the carriage on the other side', () => {
  const side = seen('R6', 'R25', { carriage: 'left', lastColour: 'mint', feeder: 'mint' });

  it('is of rows too many, or only that: a count is asked for before any is touched', () => {
    const first = told(side, row8);
    expect([first.question, offers(first)]).toEqual(['rowCounter', []]);
    const without = jobOf({
      ...stripedBrief(20, 24, 60),
      bed: { needles: 60, pitchMm: 6.5, place: 'end', without: ['counter'] },
    });
    const uncounted = told(side, row8, {}, without);
    expect([uncounted.question, offers(uncounted)]).toEqual(['rowsOfColour', []]);
    expect(told(side, row8, { unsure: ['rowCounter'] }).question).toBe('rowsOfColour');
    const neither = told(side, row8, { unsure: ['rowCounter', 'rowsOfColour'] });
    expect(['rowCounter', 'rowsOfColour']).not.toContain(neither.question);
  });

  it('with the right count is only that', () => {
    const counted = told({ ...side, rowCounter: 8 }, row8);
    expect([slipsOf(counted), offers(counted)]).toEqual([[{ is: 'carriage-wrong-side' }], [`now ${row8}`]]);
  });

  it('is one row too many in this stripe, or in one that is looked for', () => {
    const more = told({ ...side, rowCounter: 9 }, row8);
    expect(more.question).toBe('rowsOfColour');
    const here = told({ ...side, rowCounter: 9, rowsOfColour: 3 }, row8);
    expect([here.question, offers(here)]).toEqual([null, [`rip ${row8}`, `make-up ${row8}`]]);
    expect(slipsOf(here)).toContainEqual({ is: 'rows-too-many', rows: 1, step: row8 });
    const older = told({ ...side, rowCounter: 9, rowsOfColour: 2 }, row8);
    expect([older.question, older.open, offers(older)]).toEqual([
      'moment',
      { about: 'stripe', which: 'only' },
      [`make-up ${row8}`],
    ]);
    const stripe = told({ ...side, rowCounter: 9, rowsOfColour: 2 }, row8, {
      moments: [{ by: 'stripe', number: 3 }],
    });
    // After row 5, after row 6, or after the move that follows it.
    expect([stripe.question, stripe.stories.length]).toEqual(['row', 3]);
  });

  it('one row short is the step before, pressed once too often: nothing has to be looked for', () => {
    const short = told({ ...side, rowCounter: 7, rowsOfColour: 1 }, row8);
    expect([short.question, short.elsewhere]).toEqual([null, [row7]]);
  });
});

describe('another colour', () => {
  const plum = seen('R6', 'R25', { carriage: 'right', lastColour: 'plum', feeder: 'plum' });

  it('is one row, one stripe, or two yarns that have changed places: the rows of it tell', () => {
    const first = told(plum, row8);
    expect([first.question, offers(first)]).toEqual(['rowsOfColour', []]);
    const one = told({ ...plum, rowsOfColour: 1 }, row8);
    expect([slipsOf(one), offers(one)]).toEqual([
      [{ is: 'row-in-other-yarn', step: row8, used: 'plum' }],
      [`rip ${row7}`, `make-up ${row8}`],
    ]);
    const swapped = told({ ...plum, rowsOfColour: 2 }, row8);
    expect(new Set(slipsOf(swapped).map(({ is }) => is))).toContain('yarns-swapped');
    const four = told({ ...plum, rowsOfColour: 4, stripesCounted: 3 }, row8);
    expect(slipsOf(four)[0]).toEqual({ is: 'stripe-in-other-yarn', stripe: 4, used: 'plum' });
  });

  it('in the feeder alone is changed', () => {
    const held = told({ ...plum, lastColour: 'mint' }, row8);
    expect([slipsOf(held), offers(held)]).toEqual([
      [{ is: 'wrong-yarn-in-feeder', held: 'plum' }],
      [`now ${row8}`],
    ]);
  });
});

describe('an empty bed', () => {
  const empty = { left: null, right: null } as const;

  it('in the stripes has dropped its work', () => {
    expect(isFallen(leftCrawler, empty, row8)).toBe(true);
    expect(isFallen(leftCrawler, { left: 'R6' }, row8)).toBe(false);
    expect(isFallen(leftCrawler, empty, 0)).toBe(false);
    for (const [row, kind] of [
      [0, 'waste-rows'],
      [23, 'graft-start'],
      [23, 'rounds'],
    ] as const)
      expect(isFallen(leftCrawler, empty, stepAtRow(row, kind))).toBe(false);
    const tight = jobOf(stripedBrief(8, 8, 14));
    expect(isFallen(tight, empty, stepAtRow(6, 'take-off', tight))).toBe(false);
    const fallen = told(empty, row8);
    expect([slipsOf(fallen), fallen.elsewhere, offers(fallen)]).toEqual([
      [{ is: 'work-dropped', step: row8 }],
      [],
      [`now ${row7}`],
    ]);
  });

  it('after row 7 asks at which pass', () => {
    const two = told(empty, row7);
    expect(slipsOf(two)).toEqual([row8, row7].map((step) => ({ is: 'work-dropped', step })));
    expect([two.question, offers(two)]).toEqual(['carriage', []]);
    expect(slipsOf(told({ ...empty, carriage: 'left' }, row7))).toEqual([{ is: 'work-dropped', step: row7 }]);
  });

  it('elsewhere is where the bed is bare', () => {
    const bare = told(empty, stepAtRow(23, 'graft-start'));
    expect([bare.stories, bare.elsewhere]).toEqual([[], []]);
  });
});

describe('fewer stitches', () => {
  it('with nothing else amiss may be one that has dropped, for which no way is told', () => {
    const fewer = told(seen('R6', 'R25', { carriage: 'right', lastColour: 'mint', stitches: 19 }), row8);
    expect(slipsOf(fewer)).toContainEqual({ is: 'stitch-dropped' });
    expect(offers(fewer)).toEqual([]);
  });
});

describe('work that should have been hung again', () => {
  const tight = jobOf(stripedBrief(8, 8, 14));
  const done = stepAtRow(6, 'release-waste', tight);

  it('hangs as before it, and is told by whether it was', () => {
    const unhung = told(seen('L5', 'R3', { stitches: 8, rehung: false }), done, {}, tight);
    expect(slipsOf(unhung)[0]).toEqual({ is: 'rehang-missing', row: 6 });
    const hung = told(seen('L5', 'R3', { stitches: 8, rehung: true }), done, {}, tight);
    expect(slipsOf(hung)).toContainEqual({ is: 'rehang-shifted', row: 6, by: -2 });
    expect(slipsOf(hung)).not.toContainEqual({ is: 'rehang-missing', row: 6 });
  });
});
