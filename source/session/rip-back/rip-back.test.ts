/**
 * The way back on a small invented bag: 8 stitches and 8 rows, plum and mint by turns, on 14 needles, so that the work is hung
 * again after row 6. What is undone is worked out by hand from the steps, newest first (common practice, no source).
 */
import { describe, expect, it } from 'vitest';
import { inShort } from '../../../test/fixtures/hands-in-short.ts';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import type { Act } from '../../steps/act.ts';
import { allSteps } from '../../steps/job.ts';
import { startSession } from '../session.ts';
import { type RipBack, ripBack } from './rip-back.ts';

const job = jobOf(stripedBrief(8, 8, 14));

/** Steps confirmed once the `nth` step of this kind is done. */
const once = (kind: Act['kind'], nth = 1): number =>
  [...allSteps(job)].filter(({ act }) => act.kind === kind)[nth - 1]?.step ?? Number.NaN;

const back = (from: number, to: number): RipBack =>
  valueIn(ripBack({ ...startSession(job), done: from }, to));

describe('back within the stripes', () => {
  it('takes the comb off first, undoes step by step, and hangs it again last', () => {
    const [row1, move1] = [once('pass'), once('decrease')];
    expect(inShort(back(move1, row1))).toEqual([
      `${move1} 2 weights-off`,
      `${move1 - 1} 2 un-rest un-transfer`,
      `${move1 - 2} 2 un-transfer un-work`,
      `${row1} 1! un-knit plum`,
      `${row1} 1 weights-on`,
    ]);
    expect(back(move1, row1)).toMatchObject({ goesOn: null, row: 1, irreversible: [] });
  });

  it('minds weights only where a row comes out', () => {
    expect(inShort(back(once('decrease'), once('increase')))).toEqual([
      `${once('increase')} 2 un-rest un-transfer`,
    ]);
  });

  it('leaves the cast-on under the comb, rows out to the first', () => {
    const start = once('trim-ravel-cord');
    const way = back(once('pass', 2), start);
    expect(inShort(way)).toEqual([
      `${once('pass', 2)} 2 weights-off`,
      `${start + 2} 1! un-knit plum`,
      `${start + 1} 0! un-knit plum`,
      `${start} 0 un-feed plum`,
      `${start} 0 weights-on`,
    ]);
    expect(way.steps[0]?.care).toEqual({ is: 'weights-off', comb: true });
    expect(way.steps.at(-1)?.care).toEqual({ is: 'weights-on', comb: true, left: 'L3', right: 'R5' });
  });

  it('to before the first step hangs nothing again', () => {
    const cares = back(once('pass'), 0).steps.map(({ care }) => care);
    expect(cares[0]).toEqual({ is: 'weights-off', comb: true });
    expect(cares.slice(1).every((care) => care === null)).toBe(true);
    expect(inShort(back(once('pass'), 0)).at(-1)).toBe('0 0 un-work stand left');
  });
});

/** Before the rehang: row 6, needles L5 to R3, plum in the feeder. */
const row6 = once('pass', 6);

describe('back across a rehang', () => {
  it('from the waste rows pulls them out and joins what was cut', () => {
    expect(inShort(back(once('take-off'), row6))).toEqual([
      `${row6 + 3} 14! (off-the-needles) hang L5–R3`,
      `${row6 + 2} 14 (cut) un-cut waste`,
      `${row6 + 1} 6! ${Array(8).fill('un-knit waste').join(' ')}`,
      `${row6} 6 (cut) un-feed waste un-cut plum`,
      `${row6} 6 weights-on`,
    ]);
  });

  it('moves the loops on a strand once they hang again, the waste out first', () => {
    const moved = [
      '… 6! hold-on-strand un-rehang L3–R5 un-work hang L5–R3',
      `${row6} 6 (cut) un-cut plum`,
      `${row6} 6 weights-on`,
    ];
    expect(inShort(back(once('rehang'), row6))).toEqual(['… 6 release', ...moved]);
    expect(inShort(back(once('hang-weights'), row6))).toEqual(['… 6 release', ...moved]);
    // Once the waste is out the counter is back already.
    const gone = back(once('release-waste'), row6);
    expect(inShort(gone)).toEqual([moved[0]?.replace('!', ''), ...moved.slice(1)]);
    expect(gone.steps[0]?.care).toEqual({ is: 'hold-on-strand', loops: 8 });
    expect(gone.steps[1]?.irreversible).toEqual({ why: 'cut', yarn: 'plum' });
    expect(gone.steps.at(-1)?.care).toMatchObject({ comb: true, left: 'L5', right: 'R3' });
  });

  it('puts no waste back that held nothing any more: only the counter is turned', () => {
    expect(inShort(back(once('release-waste'), once('hang-weights')))).toEqual([
      `${once('hang-weights')} 15!`,
    ]);
  });

  it('takes off the claws that hang since then before rows come out, and hangs the comb again', () => {
    const way = back(once('release-waste'), once('thread', 3));
    expect(way.steps[0]?.care).toEqual({ is: 'weights-off', comb: false });
    expect(way.steps.at(-1)?.care).toMatchObject({ is: 'weights-on', comb: true, left: 'L5', right: 'R3' });
  });

  it('does not end in waste that is unpicked or folded away', () => {
    for (const asked of ['thread-waste', 'waste-rows', 'weights-off'] as const)
      for (const from of ['rehang', 'release-waste'] as const) {
        // The first such steps are those of the cast-on, but for the weights.
        const place = once(asked, asked === 'weights-off' ? 1 : asked === 'thread-waste' ? 2 : 3);
        expect(back(once(from), place)).toMatchObject({ toDone: row6, askedDone: place, goesOn: 'waste' });
      }
  });

  it('ends in waste that still hangs there', () => {
    const place = once('waste-rows', 3);
    expect(back(once('take-off'), place)).toMatchObject({ toDone: place, goesOn: null });
    expect(back(once('pass'), once('waste-rows'))).toMatchObject({ toDone: once('waste-rows') });
  });
});

const seamEnd = once('measure-bag');

describe('back from the finishing', () => {
  const tail = once('cut-graft-tail');

  it('hangs the edge again from a strand where its waste is out', () => {
    const way = back(once('release-waste', 2), tail);
    expect(inShort(way).slice(0, 3)).toEqual([
      `${once('pull-ravel-cord')} 16 (released) unrelease`,
      `${once('graft-end')} 16 (released) unrelease`,
      `${once('graft-end') - 1} 16 ungraft`,
    ]);
    expect(inShort(way).slice(-2)).toEqual([
      `${tail} 7! hold-on-strand hang L4–R4 stand left`,
      `${tail} 7 weights-on`,
    ]);
    expect(way.irreversible.map(({ irreversible }) => irreversible)).toEqual([
      { why: 'released', what: 'waste' },
      { why: 'released', what: 'ravel cord' },
    ]);
  });

  it('hangs the edge again from its waste rows while they are in, the ravel cord out or not', () => {
    for (const from of ['lay-graft', 'pull-ravel-cord'] as const)
      expect(inShort(back(once(from), tail)).slice(-5)).toEqual([
        `${once('weights-off', 2)} 15! (off-the-needles) hang L4–R4`,
        `${once('weights-off', 2) - 1} 15 (cut) un-cut waste`,
        `${tail + 1} 7! ${Array(8).fill('un-knit waste').join(' ')}`,
        `${tail} 7 un-feed waste`,
        `${tail} 7 weights-on`,
      ]);
  });

  it('lays the cord aside, finished or not, and pulls nothing of it out', () => {
    const finished = back(once('draw-through'), once('fasten-seam'));
    expect(inShort(finished)).toEqual([`${once('fasten-seam')} 16! cord-aside stand right`]);
    expect(finished.steps[0]?.care).toEqual({ is: 'cord-aside', finished: true });
    const begun = back(once('thread-cord'), once('fold-seam'));
    expect(inShort(begun)[0]).toBe(`${seamEnd} 16 cord-aside cut plum take-off`);
    expect(begun.steps[0]?.care).toEqual({ is: 'cord-aside', finished: false });
    const knitted = back(once('rounds'), once('fold-seam'));
    expect(inShort(knitted)[0]).toBe(`${seamEnd} 16! cord-aside cut plum take-off stand right`);
  });

  it('within the cord pulls it out, and draws it out of the eyelets', () => {
    expect(inShort(back(once('cord-first-row'), seamEnd))).toEqual([
      `${once('thread-cord')} 16! un-knit plum`,
      `${once('cast-on-cord')} 16 un-feed plum`,
      `${once('set-cord-needles')} 16 un-cast-on`,
      `${seamEnd} 16 un-work stand right`,
    ]);
    const drawn = back(once('thread-eyelets'), once('measure-cord'));
    expect(inShort(drawn)).toEqual([
      `${once('draw-through')} 298 unthread unthread`,
      `${once('measure-cord')} 298 (drawn-through) unfasten hang L1–R2 un-cut plum`,
    ]);
  });

  it('turns the counter back where only that was done', () => {
    expect(inShort(back(once('set-slip'), once('cord-first-row')))).toEqual([
      `${once('cord-first-row')} 17!`,
    ]);
  });
});

describe('steps that leave nothing to undo', () => {
  it('are passed over', () => {
    expect(back(once('hang-weights'), once('rehang')).steps).toEqual([]);
    expect(back(once('measure-bag'), once('fasten-seam')).steps).toEqual([]);
  });
});

describe('a machine without a counter', () => {
  const bare = {
    ...stripedBrief(8, 8, 14),
    bed: { needles: 14, pitchMm: 6.5, without: ['counter', 'comb'] },
  };

  it('has nothing to turn back, and claws from the start', () => {
    const one = jobOf(bare);
    for (const from of [one.stepCount, once('release-waste'), row6]) {
      const way = valueIn(ripBack({ ...startSession(one), done: from }, 0));
      expect(way.steps.every(({ setsCounter }) => !setsCounter)).toBe(true);
      expect(way.steps.every(({ care }) => care?.is !== 'weights-off' || !care.comb)).toBe(true);
    }
    const hung = valueIn(ripBack({ ...startSession(one), done: once('release-waste') }, row6));
    expect(hung.steps.find(({ care }) => care?.is === 'hold-on-strand')?.row).toBe(6);
    const pulled = valueIn(ripBack({ ...startSession(one), done: row6 }, once('pass'))).steps.filter(
      ({ moves }) => moves.some((move) => 'undo' in move && move.undo === 'knit'),
    );
    expect(pulled.map(({ row }) => row)).toEqual([5, 4, 3, 2, 1]);
  });
});

describe('a way that is none', () => {
  const { stepCount } = job;
  it.each([-1, 1.5, stepCount + 1])('leads to %d', (done) => {
    expect(faultIn(ripBack({ ...startSession(job), done: 4 }, done))).toEqual({
      code: 'rip-back/no-such-place',
      done,
      stepCount,
    });
  });

  it.each([stepCount, 4])('leads to where the work is, %d steps, or beyond', (done) => {
    expect(faultIn(ripBack({ ...startSession(job), done: 4 }, done))).toEqual({
      code: 'rip-back/not-behind',
      fromDone: 4,
      toDone: done,
    });
  });
});
