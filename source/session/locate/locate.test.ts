/** Finding the place on invented bags: what is seen there is worked out by hand from their steps (common practice, no source). */
import { describe, expect, it } from 'vitest';
import { leftCrawler, stepAtRow } from '../../../test/fixtures/diagnosed.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { allSteps, type Job } from '../../steps/job.ts';
import { type Finding, locate, placeAtDone, tellingFacts } from './locate.ts';
import { looksAt } from './looks-of.ts';
import type { Fact, Seen } from './seen.ts';

const striped = stripedBrief(20, 24, 60);
const job = leftCrawler;

const find = (seen: Seen, cannotTell: readonly Fact[] = []): Finding =>
  valueIn(locate(job, seen, cannotTell));

describe('what tells places apart', () => {
  // Of four: one value leaves all; two and two leave two; three and one leave 10/4; four values leave one.
  const values: Partial<Record<Fact, readonly unknown[]>> = {
    carriage: [1, 1, 1, 1],
    lastColour: [1, 1, 2, 2],
    feeder: [1, 1, 1, 2],
    left: [1, 2, 3, 4],
  };

  it('is asked for first by what is expected to leave fewest', () => {
    const asked = tellingFacts(['carriage', 'lastColour', 'feeder', 'left'], (fact) => values[fact] ?? []);
    expect(asked).toEqual(['left', 'lastColour', 'feeder']);
  });

  it('is asked for in the order of how easily it is seen, where it leaves as many', () => {
    expect(tellingFacts(['right', 'left'], () => [1, 2])).toEqual(['right', 'left']);
    expect(tellingFacts(['left', 'right'], () => [1, 2])).toEqual(['left', 'right']);
  });
});

describe('a place', () => {
  it('is one where edges, colour and carriage are of that alone', () => {
    const there = find({ left: 'R5', right: 'R24', lastColour: 'mint', carriage: 'right', feeder: 'mint' });
    expect(there).toMatchObject({ found: 'one', place: { done: stepAtRow(8, 'decrease') } });
    expect(find({ left: 'r5', right: 'R24', lastColour: 'mint', carriage: 'right', feeder: 'mint' })).toEqual(
      there,
    );
  });

  it('is none where nothing looks so', () => {
    expect(find({ left: 'R5', right: 'R30' })).toEqual({ found: 'none' });
    expect(find({ left: 'R30' })).toEqual({ found: 'none' });
    expect(find({ carriage: 'left', rowCounter: 8, feeder: 'plum' })).toEqual({ found: 'none' });
  });

  it('is one of several, the first of them shown, and what is asked next', () => {
    // After rows 7 and 8, before the yarn is changed and the edges moved, the needles are the same.
    const several = find({ left: 'R6', right: 'R25' });
    if (several.found !== 'several') throw new Error(several.found);
    expect(several.places.map(({ done }) => done)).toContain(stepAtRow(8, 'pass'));
    expect(several.count).toBe(several.places.length);
    expect(several.tellApart).not.toContain('left');
    const without = find({ left: 'R6', right: 'R25' }, several.tellApart.slice(0, 1));
    expect(without.found === 'several' && without.tellApart).not.toContain(several.tellApart[0]);
    const all = find({});
    if (all.found !== 'several') throw new Error(all.found);
    expect(all.places).toHaveLength(12);
    expect(all.places[0]?.done).toBe(0);
    expect(all.count).toBeGreaterThan(60);
  });

  it('holds all steps after which the bed looks so', () => {
    // To move the weights changes nothing to be seen.
    const [move, weights] = [stepAtRow(12, 'decrease'), stepAtRow(12, 'comb-off')];
    expect(weights).toBe(move + 1);
    for (const done of [move, weights])
      expect(placeAtDone(job, done)).toMatchObject({ done: move, through: weights });
    // Needles that have come into work, empty, are not told.
    expect(placeAtDone(job, 0)).toMatchObject({ done: 0, through: 1 });
    expect(placeAtDone(job, move - 1)).toMatchObject({ done: move - 1, through: move - 1 });
    expect(placeAtDone(job, job.stepCount).through).toBe(job.stepCount);
    expect(placeAtDone(job, stepAtRow(8, 'pass')).looks).toEqual(looksAt(job, stepAtRow(8, 'pass')));
  });

  it.each<[Seen, object]>([
    [{ left: 'L99' }, { code: 'seen/needle-off-bed', needle: 'L99', needleCount: 60 }],
    [{ feeder: 'teal' }, { code: 'seen/unknown-yarn', known: ['plum', 'mint', 'waste', 'ravel cord'] }],
    [{ stitches: 2.5 }, { code: 'seen/not-a-count', fact: 'stitches' }],
    [{ piecesDone: -1 }, { code: 'seen/not-a-count', fact: 'piecesDone' }],
  ])('is not told by %j', (seen, fault) => expect(faultIn(locate(job, seen))).toMatchObject(fault));
});

describe('what is seen', () => {
  const seen = (done: number, of: Job = job) => {
    const { lastColour, feeder, wasteRows, stripesCounted, rowCounter, rowsOfColour } = looksAt(of, done);
    return [lastColour, feeder, wasteRows, stripesCounted, rowCounter, rowsOfColour];
  };

  it.each<[string, number, readonly unknown[]]>([
    ['before the first step', 0, [null, null, 0, 0, 0, 0]],
    ['of the cast-on', stepAtRow(0, 'cast-on'), ['waste', null, 0, 0, 0, 0]],
    ['of two waste rows and the comb', stepAtRow(0, 'hang-comb'), ['waste', 'waste', 2, 0, 0, 0]],
    // Eight rows of waste and the one that frees them.
    ['of the row that frees the start', stepAtRow(0, 'ravel-pass'), ['waste', 'waste', 9, 0, 0, 0]],
    ['of the first yarn threaded', stepAtRow(0, 'thread'), ['waste', 'plum', 9, 0, 0, 0]],
    ['of the first row', stepAtRow(1, 'pass'), ['plum', 'plum', 0, 1, 1, 1]],
    ['of the second yarn threaded', stepAtRow(2, 'thread'), ['plum', 'mint', 0, 1, 2, 2]],
    ['of row 7', stepAtRow(7, 'pass'), ['mint', 'mint', 0, 4, 7, 1]],
    ['of the closing row', stepAtRow(23, 'closing-pass'), ['mint', 'mint', 0, 12, 23, 1]],
    ['of the waste after it', stepAtRow(23, 'waste-rows'), ['waste', 'waste', 8, 12, 23, 1]],
    ['once the work is off', stepAtRow(23, 'take-off'), [null, null, 0, 12, 23, 1]],
    ['of the cord', stepAtRow(23, 'cord-first-row'), ['plum', 'plum', 0, 12, 23, 1]],
  ])('%s', (_, done, looks) => expect(seen(done)).toEqual(looks));

  it('of one colour is one stripe', () => {
    const one = jobOf({ ...striped, stripes: [{ yarn: 'plum', rows: 2 }] });
    expect(seen(stepAtRow(7, 'pass', one), one)).toEqual(['plum', 'plum', 0, 1, 7, 7]);
    expect(seen(stepAtRow(0, 'trim-ravel-cord', one), one)).toEqual(['waste', null, 9, 0, 0, 0]);
  });

  it('of a ravel cord is its strand, and the waste below it', () => {
    const corded = jobOf({ ...striped, waste: { yarn: 'grey', rows: 6, ravel: 'cord' } });
    expect(seen(stepAtRow(0, 'lay-ravel-cord', corded), corded)).toEqual(['grey', 'ravel cord', 6, 0, 0, 0]);
    expect(seen(stepAtRow(0, 'trim-ravel-cord', corded), corded)).toEqual(['ravel cord', null, 6, 0, 0, 0]);
  });

  it('of work that hangs again is the bag, and its waste until that is out', () => {
    const tight = jobOf(stripedBrief(8, 8, 14));
    expect(seen(stepAtRow(6, 'waste-rows', tight), tight)).toEqual(['waste', 'waste', 8, 3, 6, 2]);
    expect(seen(stepAtRow(6, 'rehang', tight), tight)).toEqual(['plum', null, 8, 3, 6, 2]);
    expect(seen(stepAtRow(6, 'release-waste', tight), tight)).toEqual(['plum', null, 0, 3, 6, 2]);
  });

  it('of two cords is how many are done', () => {
    const two = jobOf({ ...striped, cord: { stitches: 3, yarn: 'plum', tieCm: 5, draws: 2 } });
    const [first, second] = [...allSteps(two)].filter(({ act }) => act.kind === 'cast-on-cord');
    expect([first, second].map((step) => looksAt(two, step?.step ?? 0).piecesDone)).toEqual([0, 1]);
    expect(looksAt(two, stepAtRow(8, 'pass', two)).piecesDone).toBe(0);
  });
});
