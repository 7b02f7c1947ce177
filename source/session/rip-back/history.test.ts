/**
 * Back past slips that were kept, on an invented bag of 20 stitches: worked out by hand. After row 12 the edges are R3 and R22, two
 * loops on R21 and R5 empty; rows 11 and 12 are in mint, 13 and 14 in plum.
 */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { valueIn } from '../../../test/tools/result.ts';
import type { Command } from '../command.ts';
import { storyOf } from '../diagnose/story.ts';
import { waysOut } from '../diagnose/ways-out.ts';
import type { Slip } from '../mend/slip.ts';
import { type Session, startSession } from '../session.ts';
import { updateSession } from '../update-session.ts';
import { bedAtPlace } from './bed-at-place.ts';
import { bedReally, detoursBy } from './history.ts';
import { type RipBack, ripBack } from './rip-back.ts';

const job = jobOf(stripedBrief(20, 24, 60));
const having = (session: Session, ...commands: readonly Command[]): Session =>
  commands.reduce((now, command) => valueIn(updateSession(now, command)), session);

/** Where these slips were kept at `place`, and the plan has gone on so many steps. */
function kept(mistakes: readonly Slip[], place: number, from = startSession(job)): Session {
  const story = storyOf(job, mistakes, place);
  const mend = story && waysOut(job, story).find(({ how }) => how === 'make-up');
  if (!mend) throw new Error('cannot be kept');
  const thenDone = mend.thenDone;
  const gone = from.done === place ? from : having(from, { do: 'go', done: place });
  const onIt = having(gone, { do: 'mend', mistakes, place, how: 'make-up', thenDone });
  return mend.steps.reduce((now) => having(now, { do: 'on-the-way' }), onIt);
}

const back = (session: Session, to: number): RipBack => valueIn(ripBack(session, to));

/** Rows that come out: the yarn, what the counter is set to, and the place where it is the plan's. */
const pulled = ({ steps }: RipBack): readonly (readonly unknown[])[] =>
  steps.flatMap(({ moves, row, done }) =>
    moves.flatMap((move) => ('undo' in move && move.undo === 'knit' ? [[move.yarn, row, done]] : [])),
  );

describe('two rows too many, kept once step 40 was done', () => {
  const now = kept([{ is: 'rows-too-many', rows: 2, step: 40 }], 40);

  it('come out first on the way back to before it', () => {
    expect(pulled(back(now, 39))).toEqual([
      ['mint', 13, null],
      ['mint', 12, 39],
    ]);
    expect(back(now, 39)).toMatchObject({ toDone: 39, goesOn: null, row: 12 });
  });

  it('stay on the way to just after it', () => {
    const later = having(now, { do: 'confirm', count: 4 });
    expect(pulled(back(later, 40))).toEqual([
      ['plum', 13, 42],
      ['plum', 12, 41],
    ]);
    expect(pulled(back(later, 38))).toEqual([
      ['plum', 13, 42],
      ['plum', 12, 41],
      ['mint', 13, null],
      ['mint', 12, 40],
    ]);
  });

  it('have left one loop on each needle, and the counter as it was set', () => {
    const bed = bedReally(job, detoursBy(now, 40), 40);
    const loops = bed.needles.filter(({ working }) => working).map(({ loopCount }) => loopCount);
    expect(loops).toEqual(Array(20).fill(1));
    expect(bed.counter).toBe(12);
    expect(bedReally(job, [], 40)).toEqual(bedAtPlace(job, 40));
    // Over it a row has been knitted since.
    const later = having(now, { do: 'confirm', count: 2 });
    expect(bedReally(job, detoursBy(later, 42), 42)).toEqual(bedAtPlace(job, 42));
  });
});

// The decrease of move 3, step 24, was forgotten: all from before that move is as the hands made it.
describe('a forgotten decrease, made up for once step 40 was done', () => {
  const slip = { is: 'decrease-missing', move: 3 } as const;
  const now = kept([slip], 40);

  it.each([23, 30, 39])(
    'has no place of the plan in between: back to step %d goes on to before it',
    (asked) => {
      expect(back(now, asked)).toMatchObject({ toDone: 22, askedDone: asked, goesOn: 'kept', row: 6 });
    },
  );

  it.each([22, 20])('leads to where the plan is followed: step %d', (asked) => {
    expect(back(now, asked)).toMatchObject({ toDone: asked, askedDone: asked, goesOn: null });
  });

  it('comes out as it was made, one needle wider at the trailing edge', () => {
    const edges = back(now, 22).steps.flatMap(({ moves }) =>
      moves.flatMap((move) => ('undo' in move && move.undo === 'knit' ? [move.catches.at(-1)?.last] : [])),
    );
    // Rows 12 and 11, 10 and 9, 8 and 7: as planned R23, R24 and R25.
    expect(edges).toEqual(['R24', 'R24', 'R25', 'R25', 'R26', 'R26']);
  });

  it('has left three loops on a needle, which the next row goes through', () => {
    const later = having(now, { do: 'confirm', count: 3 });
    const [, row13] = back(later, 40).steps.flatMap(({ moves }) =>
      moves.flatMap((move) => ('undo' in move && move.undo === 'knit' ? [move] : [])),
    );
    expect(row13?.catches.find(({ first }) => first === 'R21')?.loops).toBe(3);
    // Thirty needles lie to the left of R1.
    expect(bedReally(job, detoursBy(now, 40), 40).needles[50]?.loopCount).toBe(3);
  });

  it('stays where only later rows come out, and another may follow it', () => {
    const both = kept([{ is: 'rows-too-many', rows: 2, step: 46 }], 46, having(now, { do: 'go', done: 46 }));
    expect(detoursBy(both, both.done).map(({ from, through }) => [from, through])).toEqual([
      [22, 40],
      [46, 46],
    ]);
    expect(detoursBy(both, 45)).toHaveLength(1);
    expect(pulled(back(both, 45)).map(([yarn]) => yarn)).toEqual(['mint', 'mint']);
    expect(back(both, 41)).toMatchObject({ toDone: 41, goesOn: null });
    expect(back(both, 39)).toMatchObject({ toDone: 22, goesOn: 'kept' });
    // Two of the slip, two of stripe 7, and six since row 6.
    expect(pulled(back(both, 39))).toHaveLength(10);
  });
});
