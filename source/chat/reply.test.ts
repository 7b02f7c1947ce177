import { beforeEach, describe, expect, it } from 'vitest';
import { answersTo, type MemoryBench, openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { briefOf, planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { briefLike } from '../journal/match.ts';
import type { BenchStore } from '../screen/bench/bench-state.ts';
import { notesLike } from '../wording/logs.ts';
import { englishWords } from '../wording/words.ts';
import { benchView } from './view.ts';

/** An invented dice bag: 46 stitches from R28 to R73, so that move 12, after row 24, takes R17 … R62 to R16 … R61. */
const brief = stripedBrief(46, 64);

let bench: MemoryBench;
let store: BenchStore;

beforeEach(() => {
  bench = openMemoryBench({ brief });
  store = bench.store;
});

/** What is answered to the last of these lines. */
const type = (...lines: readonly string[]): readonly string[] =>
  lines.map((line) => answersTo(store, line)).at(-1) ?? [];

describe('rows that are to come out', () => {
  it('are refused where fewer are knitted', () => {
    expect(type('rip last row')[0]).toMatch(/^No row of the bag is knitted yet/);
    expect(type('go row 3', 'rip 5 rows')).toEqual(['So many rows cannot come out: 2 are knitted.']);
  });
});

describe('finding the place', () => {
  it('says that it is here, or where else, and how to go there', () => {
    expect(type('go step 75', 'find R16 R61 plum row 26')[0]).toMatch(/^That is where you are now: step 75 /);
    expect(type('find R17 R62 mint carriage right row 24')).toEqual([
      'The work is here: step 70 comes next, 24 rows knitted, edges R17 and R62, carriage on the right, mint in the feeder.',
      'To go there type choose 1, or go step 70.',
    ]);
    type('choose');
    expect(bench.done()).toBe(69);
  });

  it('asks one question at a time, adds the answers up, and passes by what cannot be told', () => {
    type('go step 270');
    expect(type('find R17 R62')).toHaveLength(6);
    expect(type('find and carriage right').join(' ')).toMatch(
      /type choose and its number:.*step 66.*step 68.*step 70/,
    );
    const asked = type('find carriage right mint').at(-1);
    expect(asked).toMatch(/\? Type find and .*; or find unsure\.$/);
    expect(type('find unsure').at(-1)).not.toBe(asked);
    expect(type('find MINT carriage left').join(' ')).not.toMatch(/not a yarn/);
  });

  it('names first the place that looks just so, and then what may be wrong instead', () => {
    const [place, slip] = type('go row 26', 'find R16 R61 carriage right feeder plum row 26');
    expect(place).toMatch(/^The work may be here, and nothing is wrong: step 75 comes next, 26 rows knitted/);
    expect(slip).toMatch(/^Or: One row too many/);
    expect(type('2')[0]).toMatch(/^The work is here: step 75 /);
    // Who can tell nothing more is led there too.
    type('find R16 R61 carriage right feeder plum row 26', 'unsure', 'unsure');
    expect(type('unsure')[0]).toMatch(/^The work is here: step 75 /);
  });

  it('hangs fallen work again loop for loop, and then offers and asks nothing more', () => {
    const [told = '', ...offered] = type('go row 25', 'find empty carriage left row 25');
    expect(told).toMatch(/work has dropped.*open loops are of row 24/);
    expect(offered.join(' ')).toMatch(
      /back to the right, over the empty needles.*none on R18.*2 together on/,
    );
    expect(offered.join(' ')).not.toMatch(/waste/);
    const [, edges = ''] = type('choose 1', 'next', 'where');
    expect(edges).toMatch(/^Edges R16 and R61, 45 needles with loops\. Carriage on the right\./);
    expect(type('choose 1')).toEqual(['There is nothing to choose yet: type find, rip or replan first.']);
  });

  it('tells how to catch fallen work even where a fact does not fit', () => {
    const [leftOut, told] = type('go row 26', 'find empty feeder empty row 24 carriage left');
    expect(leftOut).toBe('I left out: row counter.');
    expect(told).toMatch(/work has dropped.*open loops are of row 24/);
  });

  it('asks which of two cords it is by how many are finished', () => {
    const two = openMemoryBench({ brief: { ...brief, cord: { draws: 2 } } });
    const say = (line: string): string => answersTo(two.store, line).join(' ');
    say('go cord');
    // Both cords hang like this after their first rounds.
    const seen = 'find L1 R2 plum feeder plum carriage left';
    expect(say(seen)).toMatch(/How many cords are off the needles, finished/);
    expect(say('find and finished 0')).toMatch(/^Somewhere in the rounds of the first cord, /);
    expect(say('find and 1 cord finished')).toMatch(/^Somewhere in the rounds of the second cord, /);
  });

  it('asks where a yarn is that was told by its name alone and may only be in the feeder', () => {
    // Step 72 threads plum after a stripe of mint.
    const asked = /^Does plum hang in the newest row, or is it only in the feeder\?/;
    expect(type('go step 73', 'find R16 R62 plum carriage right')).toEqual([expect.stringMatching(asked)]);
    expect(store.get().talk.offers).toEqual([]);
    for (const answer of ['find and feeder plum', 'in the feeder', 'feeder plum']) {
      type('find R16 R62 plum carriage right');
      expect(type(answer)[0]).toMatch(/^The decrease of move 12, /);
    }
    for (const answer of ['find and newest row plum', 'in the newest row', 'plum']) {
      type('find R16 R62 plum carriage right');
      expect(type(answer).join(' ')).not.toMatch(/The decrease of move 12,|Does plum hang/);
    }
    expect(type('find R16 R62 newest row plum carriage right')[0]).not.toMatch(asked);
    expect(type('go step 72', 'find R16 R62 plum carriage right')[0]).not.toMatch(asked);
  });

  it('holds an offer only where it was made', () => {
    expect(type('choose')).toEqual(['There is nothing to choose yet: type find, rip or replan first.']);
    type('go step 75', 'find R17 R62 mint carriage right row 24', 'next');
    expect(type('choose')[0]).toMatch(/^There is nothing to choose yet/);
    expect(type('find and row 3')[0]).toMatch(/^There is nothing to add to yet/);
  });

  it('names the one thing that may have been read wrong', () => {
    const lines = type('go step 75', 'find R17 R62 mint carriage right row 50');
    expect(lines[0]).toMatch(/^No place in this bag looks like that/);
    expect(lines.join(' ')).toMatch(/without row counter: step 70 comes next/);
  });
});

describe('a slip', () => {
  it('is named, mended step by step, and kept in the log at the last of them', () => {
    const lines = type('go step 74', 'find R16 R62 47 stitches row 25');
    expect(lines[0]).toMatch(/^The decrease of move 12, or of one before it, is missing/);
    expect(lines.at(-1)).toMatch(
      /^Is the outermost loop at the trailing edge loose, with nothing below it\?/,
    );
    expect(type('find and firm').at(-1)).toMatch(/^Follow that edge down to where it steps/);
    expect(type('find and move 12').join(' ')).toMatch(
      /^The decrease of move 12, after row 24, is missing.*1 {2}Rip back .*2 {2}Or keep it .*It will show: a small step in the bottom edge/,
    );
    type('choose 2');
    expect(store.get().session.way?.steps).toHaveLength(2);
    type('next');
    expect(bench.commands.at(-1)).toEqual({ do: 'on-the-way' });
    expect(type('where')[0]).toBe('You are in the middle of a repair, 2 of 2: next goes on, stop ends it.');
    expect(bench.done()).toBe(73);
    type('');
    expect(bench.commands.slice(1)).toEqual([
      {
        do: 'mend',
        mistakes: [{ is: 'decrease-missing', move: 12 }],
        place: 73,
        how: 'make-up',
        thenDone: 74,
      },
      { do: 'on-the-way' },
      { do: 'on-the-way' },
    ]);
    expect(bench.done()).toBe(74);
    expect(type('back').join(' ')).toMatch(/^Taken back: .*The repair was removed from the record/);
  });
});

describe('two slips at once', () => {
  it('are told together and found one after the other, both some moves old', () => {
    // Sound it would be R16 … R61: the increase of move 5 was left out, and the decrease of move 9 made twice.
    const lines = type('go step 74', 'find R17 R60 plum carriage left row 25');
    expect(lines[0]).toMatch(/^Two things at once\. /);
    expect(lines.at(-1)).toMatch(/^Take either of the two first\. /);
    expect(store.get().talk.offers).toEqual([]);
    expect(type('move 5').at(-1)).toMatch(/^Now the other of the two\. /);
    expect(type('move 9').at(-1)).toMatch(/^At the move that you named first, which edge steps/);
    const told = type('leading');
    expect(told[0]).toContain('The increase of move 5, after row 10, is missing');
    expect(told[0]).toContain('The decrease of move 9, after row 18, is there twice');
    expect(store.get().talk.offers.map((offer) => offer.is === 'mend' && offer.remedy.mend.how)).toEqual([
      'rip',
      'make-up',
    ]);
  });

  it('are one where no second is found', () => {
    type('go step 74', 'find R17 R61 45 stitches plum carriage left row 25', 'find and move 9');
    expect(type('find unsure').join(' ')).not.toMatch(/Two things at once/);
  });
});

describe('rows too many', () => {
  it('lie before the shaping move or after it, which is asked before any is pulled out', () => {
    const seen = 'find R15 R60 mint carriage right counter 30';
    type('go step 80', seen, 'find and 2 in this stripe', 'find and in stripe 10');
    expect(type('find and since row 20').at(-1)).toMatch(/^Were they knitted before the shaping move there/);
    expect(store.get().talk.offers).toHaveLength(1);
    const [first, second] = ['before the move', 'find and after the move'].map((answer) => {
      type(seen, 'find and 2 in this stripe', 'find and in stripe 10', 'find and since row 20', answer);
      return store.get().talk.offers.map((offer) => offer.is === 'mend' && offer.remedy.mend.thenDone);
    });
    expect(first).toHaveLength(2);
    expect(second).toHaveLength(2);
    expect(first?.[0]).not.toBe(second?.[0]);
  });
});

describe('the way back', () => {
  it('is gone a step at a time, each kept as what happened', () => {
    const lines = type('go step 75', 'rip row 25');
    expect(lines[0]).toBe('5 steps back, to 24 rows on the counter.');
    expect(lines.at(-1)).toBe('Type choose to be guided back. Enter confirms each step, ← takes it back.');
    expect(bench.commands).toEqual([{ do: 'go', done: 74 }]);
    const places = ['choose', '', '', 'back', '', '', '', ''].map((line) => {
      type(line);
      return bench.done();
    });
    expect(places).toEqual([74, 74, 73, 74, 73, 72, 71, 71]);
    expect(bench.commands.slice(1).map((command) => command.do)).toEqual([
      'rip',
      'on-the-way',
      'on-the-way',
      'back',
      ...Array.from({ length: 4 }, () => 'on-the-way'),
    ]);
    expect(store.get().session.way).toBeNull();
    expect(type('where')[1]).toMatch(/^Edges R16 and R61, 45 needles with loops. Carriage on the right/);
  });

  it('can be left in the middle, with the place where the work is', () => {
    type('go step 75', 'rip row 20', 'choose', 'next 3');
    expect(type('stop').join(' ')).toMatch(/^Stopped\..* Hang the (claw weights|comb) again/);
    expect(bench.done()).toBe(72);
    expect(type('stop')[0]).toMatch(/^Nothing is being ripped back/);
    expect(type('rip row 60')[0]).toMatch(/^Ripping back goes backwards/);
  });

  it('is left in the middle only once that was asked, and goes on where it was', () => {
    type('go step 75', 'rip row 20', 'choose', 'next 3');
    const asked = /^You are at action 4 of \d+ of the way back; leave it there\? Type y or n\.$/;
    expect(type('go step 60')[0]).toMatch(asked);
    expect(type('n')[0]).toMatch(/^Back, 4 of /);
    expect(type('find R16 R62 plum')[0]).toMatch(asked);
    const done = bench.done();
    expect(type('next')).not.toContain('Stopped.');
    expect(store.get().session.way?.at).toBe(4);
    expect(type('y')[0]).toBe('Nothing was asked that y or n answers.');
    type('go step 60');
    expect(type('y').join(' ')).toMatch(/^Stopped\..* Gone to: step 60 /);
    expect(bench.done()).toBe(59);
    expect(done).toBeGreaterThan(59);
  });

  it('stays in a bag that is left in the middle of it, which is said and asked', () => {
    type('go step 75', 'rip row 20', 'choose', 'next 3');
    expect(type('quit')[0]).toMatch(/goes on there when the bag is opened again\. Leave the bag now\? /);
    expect(store.get().end).toBeNull();
    type('y');
    expect(store.get().session.way?.at).toBe(3);
    expect(bench.commands.at(-1)).toEqual({ do: 'on-the-way' });
  });

  it('counts rows and moves down as they come out, in a mend that begins with ripping too', () => {
    type('go step 74', 'find R17 R61 45 stitches plum carriage left row 25', 'find and move 9');
    const offers = store.get().talk.offers.map(({ takes }) => takes);
    expect(offers.length).toBeGreaterThan(0);
    type('choose 1');
    const { way } = store.get().session;
    const rows = [25];
    for (let at = 0; at < (way?.steps.length ?? 0) - 1; at++) {
      type('next');
      rows.push(benchView(store.get().session).rows.at);
    }
    const pulled = (at: number): boolean =>
      way?.steps[at]?.moves.some((move) => 'undo' in move && move.undo === 'knit') === true;
    for (let at = 1; at < rows.length; at++)
      expect((rows[at - 1] ?? 0) - (rows[at] ?? 0)).toBe(pulled(at - 1) ? 1 : 0);
    expect(rows.at(-1)).toBeLessThan(20);
  });

  it('says what the hands cannot take back', () => {
    type('go graft');
    expect(type('back', 'redo', 'back').join(' ')).toMatch(/If step \d+ was done: /);
  });
});

describe('planning on from here', () => {
  it('shows what finishing would give, and follows the choice that is taken', () => {
    const lines = type('go step 69', 'replan 20 stitches 9.4 cm 30 rows 10.5 cm');
    expect(lines[0]).toMatch(/^As planned, 64 rows: 13.4 cm wide, 17.7 cm deep, 40 rows to go\.$/);
    expect(lines.length).toBeLessThanOrEqual(12);
    expect(type('choose')[0]).toBe('Which one? Type choose and a number from 1 to 6.');
    expect(type('choose 3')[0]).toBe('Replanned: 60 rows round, 12.5 cm wide and 17.7 cm deep.');
    expect(bench.commands.at(-1)).toMatchObject({ do: 'replan', rows: 60, stitchMm: 4.7, rowMm: 3.5 });
    expect(type('back').join(' ')).toMatch(/The plan is now: 64 rows round/);
    expect(type('redo').join(' ')).toMatch(/The plan is now: 60 rows round/);
  });

  it('is shorter, longer, of so many rows, or in another colour', () => {
    type('go step 69');
    expect(
      type('replan shorter')
        .filter((line) => /^ {2}\d/.test(line))
        .map((line) => line.slice(5, 12)),
    ).toEqual(['60 rows', '56 rows', '52 rows', '48 rows', '28 rows']);
    expect(type('replan longer').join(' ')).toMatch(/1 {2}68 rows, 1 repeat more.*4 {2}80 rows/);
    expect(type('replan rows 50')[0]).toMatch(/^50 rows are not whole stripe repeats/);
    expect(type('replan weigh mint 2').join(' ')).toMatch(/mint is \d+ g short/);
    expect(type('replan weigh gold 2')[0]).toMatch(/^gold is not a yarn of this bag/);
    type('replan rows 60 colour mint to sand #d8c49a 190', 'choose');
    expect(
      store
        .get()
        .session.job.plan.stripes.map(({ yarn }) => yarn)
        .slice(11, 15),
    ).toEqual(['mint', 'plum', 'sand', 'plum']);
    type('go graft');
    expect(type('replan longer')[0]).toMatch(/settled/);
  });
});

describe('another bag like it', () => {
  it('has the rows, stripes and gauge that were knitted, and the notes', () => {
    type(
      'go step 69',
      'replan rows 60 20 stitches 9.4 cm colour mint to sand #d8c49a 190',
      'choose',
      'note mint is tight',
    );
    const other = store.get().session.job.plan;
    const one = planOf(briefLike(briefOf(brief), store.get().session));
    expect([one.rows, one.stitches]).toEqual([60, 46]);
    expect(one.stripes).toEqual(other.stripes);
    expect(one.size.widthCm).toBeCloseTo(other.size.widthCm, 9);
    expect(one.size.depthCm).toBeCloseTo(other.size.depthCm, 9);
    expect(notesLike(store.get().session, englishWords)).toEqual(['Last time, at step 69: mint is tight']);
  });

  it('leans as the piece did, at the same stitch size', () => {
    const leaning = { ...brief, swatch: { ...brief.swatch, asideCm: 1.2, stitchSize: '6' } };
    const leaningBench = openMemoryBench({ brief: leaning });
    for (const line of ['go step 69', 'replan rows 60 20 stitches 9.4 cm', 'choose'])
      leaningBench.submit(line);
    const { session } = leaningBench.store.get();
    const one = planOf(briefLike(briefOf(leaning), session));
    expect(one.rows).toBe(60);
    expect(one.brief.swatch.stitchSize).toBe('6');
    expect(one.gauge.skewRad).toBeCloseTo(session.job.plan.gauge.skewRad, 9);
    expect(one.size.depthCm).toBeCloseTo(session.job.plan.size.depthCm, 9);
  });
});
