/** Edges that are seen amiss: what is asked and offered, worked out by hand (common practice, no source). */
import { describe, expect, it } from 'vitest';
import { leftCrawler, offers, seen, slipsOf, stepAtRow, told } from '../../../test/fixtures/diagnosed.ts';
import { faultIn } from '../../../test/tools/result.ts';
import { looksAt } from '../locate/looks-of.ts';
import { type Diagnosis, diagnose } from './diagnose.ts';

const [decrease, row10] = [stepAtRow(8, 'decrease'), stepAtRow(10, 'pass')];
const atMove = (number: number) => ({ moments: [{ by: 'move', number } as const] });

describe('nothing', () => {
  it('is wrong where the place looks so', () => {
    const plain = seen('R5', 'R24', { carriage: 'right', lastColour: 'mint', stitches: 19 });
    expect(told(plain, decrease)).toEqual({
      stories: [],
      remedies: [],
      question: null,
      open: null,
      elsewhere: [],
    });
  });

  it('is told by what cannot be', () => {
    const fault = faultIn(
      diagnose(leftCrawler, { look: { left: 'L99' }, moments: [], unsure: [] }, decrease),
    );
    expect(fault).toMatchObject({ code: 'seen/needle-off-bed' });
  });

  it('is suspected by one edge alone, where that is of another place', () => {
    // Move 2, after row 4, has brought the left edge to R7.
    const other = told({ left: 'R7' }, decrease);
    expect([other.stories, other.remedies, other.question]).toEqual([[], [], null]);
    expect(other.elsewhere).toContain(stepAtRow(4, 'decrease'));
  });

  it('is made out before the first step or behind the last', () => {
    for (const done of [0, 1, 2, leftCrawler.stepCount - 1, leftCrawler.stepCount])
      expect(told(seen('R9', 'R24', { stitches: 7 }), done).remedies).toEqual([]);
  });

  it('fits edges that no slip or two could leave', () => {
    expect(told(seen('L9', 'R30', { lastColour: 'mint', stitches: 19 }), decrease)).toMatchObject({
      stories: [],
      remedies: [],
      question: null,
    });
  });
});

describe('a leading edge one needle short', () => {
  const moves = (of: Diagnosis) => slipsOf(of).map((slip) => 'move' in slip && slip.move);

  it('is a forgotten increase: the stitches tell of the last one', () => {
    const first = told(seen('R6', 'R24'), decrease);
    expect([first.question, first.open, offers(first)]).toEqual([
      'stitches',
      { about: 'fact', fact: 'stitches' },
      [],
    ]);
    expect(new Set(slipsOf(first).map(({ is }) => is))).toEqual(new Set(['increase-missing']));
    expect(moves(first)).toEqual([4, 3, 2, 1]);
    // Without the eyelet no needle is empty, but R23 holds two.
    const now = told(seen('R6', 'R24', { stitches: 19 }), decrease);
    expect([moves(now), now.question, offers(now)]).toEqual([[4], null, [`now ${decrease}`]]);
  });

  it('of an older move is looked for in the work, and may be kept meanwhile', () => {
    const older = told(seen('R6', 'R24', { stitches: 18 }), decrease);
    expect([moves(older), older.question, offers(older)]).toEqual([
      [3, 2, 1],
      'moment',
      [`make-up ${decrease}`],
    ]);
    expect(older.open).toEqual({ about: 'move', which: 'only' });
    const found = told(seen('R6', 'R24', { stitches: 18 }), decrease, atMove(3));
    expect([moves(found), found.question]).toEqual([[3], null]);
    expect(offers(found)).toEqual([`rip ${stepAtRow(6, 'increase') - 1}`, `make-up ${decrease}`]);
    const unsure = told(seen('R6', 'R24', { stitches: 18 }), decrease, { unsure: ['moment'] });
    expect([moves(unsure), unsure.question, offers(unsure)]).toEqual([
      [3, 2, 1],
      null,
      [`make-up ${decrease}`],
    ]);
  });

  it('by two needles is two of them', () => {
    const two = told(seen('R7', 'R24', { stitches: 17 }), decrease);
    expect(two.stories.length).toBeGreaterThan(0);
    for (const { slips } of two.stories)
      expect(slips.map(({ is }) => is)).toEqual(['increase-missing', 'increase-missing']);
    for (const { slips } of two.stories)
      expect(new Set(slips.map((slip) => 'move' in slip && slip.move)).size).toBe(2);
    expect([two.question, two.open]).toEqual(['moment', { about: 'move', which: 'first' }]);
    const one = told(seen('R7', 'R24', { stitches: 17 }), decrease, atMove(2));
    expect([one.question, one.open]).toEqual(['moment', { about: 'move', which: 'other' }]);
    expect(one.stories.every(({ slips }) => slips.some((slip) => 'move' in slip && slip.move === 2))).toBe(
      true,
    );
  });
});

describe('an old slip, and a press too few or too many', () => {
  const look = seen('R6', 'R24', {
    carriage: 'right',
    lastColour: 'plum',
    feeder: 'plum',
    stitches: 19,
    rowCounter: 10,
    rowsOfColour: 2,
  });
  const found = (done: number) => {
    const { stories } = told(look, done);
    expect(stories.every((story) => story.done === row10)).toBe(true);
    return stories.flatMap(({ slips }) => slips.map((slip) => 'move' in slip && slip.move));
  };

  it.each([-3, -1, 1, 3])('is looked for at all moves where that is %d steps off', (off) => {
    expect(found(row10 + off)).toEqual([4, 3, 2, 1]);
  });

  it.each([-20, -4, 4, 9, 30])('is looked for at the newest moves where that is %d steps off', (off) => {
    expect(found(row10 + off)).toEqual([4, 3]);
  });
});

describe('a trailing edge one needle too far', () => {
  const edge = seen('R5', 'R25', { lastColour: 'plum', rowCounter: 10, stitches: 21 });
  const kinds = (of: Diagnosis) => [...new Set(slipsOf(of).map(({ is }) => is))].toSorted();

  it('is a forgotten decrease, or a loop on nothing: that is asked', () => {
    const first = told(edge, row10);
    expect(kinds(first)).toEqual(['decrease-missing', 'needle-left-working']);
    expect([first.question, first.open, offers(first)]).toEqual([
      'loose',
      { about: 'loose', which: 'only' },
      [],
    ]);
    const loose = told({ ...edge, looseEdgeLoop: true }, row10);
    // An older one has moved along with the edge, and cannot be dropped without a trace.
    expect([kinds(loose), loose.question, offers(loose)]).toEqual([['needle-left-working'], 'moment', []]);
    const here = told({ ...edge, looseEdgeLoop: true }, row10, { moments: [{ by: 'move', number: 4 }] });
    expect([slipsOf(here), offers(here)]).toEqual([
      [{ is: 'needle-left-working', move: 4 }],
      [`now ${row10}`],
    ]);
    const firm = told({ ...edge, looseEdgeLoop: false }, row10);
    expect([firm.question, offers(firm)]).toEqual(['moment', [`make-up ${row10}`]]);
    // What is the same for all may show what any of them would.
    expect(firm.remedies[0]?.mend.shows).toEqual(
      expect.arrayContaining(['step-in-trailing-edge', 'three-in-one', 'loop-at-edge']),
    );
  });

  it('is found by the move or by rows from the needles down', () => {
    const firm = { ...edge, looseEdgeLoop: false };
    for (const moment of [
      { by: 'move', number: 4 },
      { by: 'rows-down', number: 2 },
    ] as const) {
      const found = told(firm, row10, { moments: [moment] });
      expect([slipsOf(found), offers(found)]).toEqual([
        [{ is: 'decrease-missing', move: 4 }],
        [`rip ${decrease - 1}`, `make-up ${row10}`],
      ]);
      expect(found.remedies[1]?.mend.shows).not.toContain('loop-at-edge');
    }
  });

  it('found at an older move, is asked whether a column begins there on nothing', () => {
    const older = told({ ...edge, looseEdgeLoop: false }, row10, atMove(3));
    expect(kinds(older)).toEqual(['decrease-missing', 'needle-left-working']);
    expect([older.question, older.open]).toEqual(['stray', { about: 'stray', which: 'only' }]);
    const firm = told({ ...edge, looseEdgeLoop: false, strayColumn: false }, row10, atMove(3));
    expect([kinds(firm), firm.question]).toEqual([['decrease-missing'], null]);
  });

  it('found where no slip can be is asked for again, and then the new answer counts', () => {
    const firm = { ...edge, looseEdgeLoop: false };
    expect(told(firm, row10, atMove(9)).stories).toEqual([]);
    const moments = [9, 8, 4].map((number) => ({ by: 'move', number }) as const);
    expect(slipsOf(told(firm, row10, { moments }))).toEqual([{ is: 'decrease-missing', move: 4 }]);
  });
});

describe('a place that looks just so, where one slip would look so too', () => {
  const [inside, after] = [stepAtRow(4, 'increase'), stepAtRow(4, 'decrease')];
  const look = looksAt(leftCrawler, after);

  it('is held against the work: the moment of the slip is asked for before either is offered', () => {
    const asked = told(look, inside);
    expect(slipsOf(asked)).toEqual([{ is: 'decrease-doubled', move: 1 }]);
    expect([asked.question, asked.elsewhere, offers(asked)]).toEqual(['moment', [], []]);
    const unfound = told(look, inside, { unsure: ['moment'] });
    expect([unfound.question, offers(unfound)]).toEqual([null, []]);
    const found = told(look, inside, { moments: [{ by: 'move', number: 1 }] });
    expect(offers(found).length).toBeGreaterThan(0);
  });
});
