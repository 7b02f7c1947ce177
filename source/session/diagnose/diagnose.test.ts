/**
 * What is asked and offered where something was seen amiss, on an invented bag of 20 stitches that crawls left: worked out by
 * hand (common practice, no source). As planned, move 4 after row 8 has brought the edges to R5 and R24, R7 empty for the eyelet and
 * two loops on R23, so that 19 needles hold loops; rows 7 and 8 are the fourth stripe, in mint.
 */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import type { Act } from '../../steps/act.ts';
import { allSteps, type Job } from '../../steps/job.ts';
import type { Look } from '../locate/seen.ts';
import type { Slip } from '../mend/slip.ts';
import { type Diagnosis, diagnose, isFallen } from './diagnose.ts';
import type { Evidence } from './question.ts';

const job = jobOf(stripedBrief(20, 24, 60));
const once = (row: number, kind: Act['kind'], of: Job = job): number =>
  [...allSteps(of)].find((step) => step.row === row && step.act.kind === kind)?.step ?? Number.NaN;
const [row7, row8, decrease, row10] = [
  once(7, 'pass'),
  once(8, 'pass'),
  once(8, 'decrease'),
  once(10, 'pass'),
];

const told = (look: Look, done: number, more: Partial<Evidence> = {}, of = job): Diagnosis =>
  valueIn(diagnose(of, { look, moments: [], unsure: [], ...more }, done));

const slipsOf = ({ stories }: Diagnosis): readonly Slip[] => stories.flatMap(({ slips }) => slips);
const offers = ({ remedies }: Diagnosis): readonly string[] =>
  remedies.map(({ mend: { how, thenDone } }) => `${how} ${thenDone}`);
const seen = (left: string, right: string, rest: Look = {}): Look => ({ left, right, ...rest });
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
    const fault = faultIn(diagnose(job, { look: { left: 'L99' }, moments: [], unsure: [] }, decrease));
    expect(fault).toMatchObject({ code: 'seen/needle-off-bed' });
  });

  it('is suspected by one edge alone, where that is of another place', () => {
    // Move 2, after row 4, has brought the left edge to R7.
    const other = told({ left: 'R7' }, decrease);
    expect([other.stories, other.remedies, other.question]).toEqual([[], [], null]);
    expect(other.elsewhere).toContain(once(4, 'decrease'));
  });

  it('is made out before the first step or behind the last', () => {
    for (const done of [0, 1, 2, job.stepCount - 1, job.stepCount])
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
    expect(offers(found)).toEqual([`rip ${once(6, 'increase') - 1}`, `make-up ${decrease}`]);
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
    expect([slipsOf(loose), offers(loose)]).toEqual([
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
    expect(isFallen(job, empty, row8)).toBe(true);
    expect(isFallen(job, { left: 'R6' }, row8)).toBe(false);
    expect(isFallen(job, empty, 0)).toBe(false);
    expect(isFallen(job, empty, once(23, 'graft-start'))).toBe(false);
    const tight = jobOf(stripedBrief(8, 8, 14));
    expect(isFallen(tight, empty, once(6, 'take-off', tight))).toBe(false);
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
    const bare = told(empty, once(23, 'graft-start'));
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
  const done = once(6, 'release-waste', tight);

  it('hangs as before it, and is told by whether it was', () => {
    const unhung = told(seen('L5', 'R3', { stitches: 8, rehung: false }), done, {}, tight);
    expect(slipsOf(unhung)[0]).toEqual({ is: 'rehang-missing', row: 6 });
    const hung = told(seen('L5', 'R3', { stitches: 8, rehung: true }), done, {}, tight);
    expect(slipsOf(hung)).toContainEqual({ is: 'rehang-shifted', row: 6, by: -2 });
    expect(slipsOf(hung)).not.toContainEqual({ is: 'rehang-missing', row: 6 });
  });
});
