/** Slips with a yarn, a needle, the carriage, or left and right, over random bags: named from the bed, and set right on it. */
import { describe, expect, it, vi } from 'vitest';
import { applyMove } from '../../source/bed/apply-move.ts';
import type { Bed } from '../../source/bed/bed.ts';
import { opposite } from '../../source/bed/side.ts';
import type { Diagnosis } from '../../source/session/diagnose/slip.ts';
import type { Look } from '../../source/session/diagnose/suspect.ts';
import { looksAt } from '../../source/session/locate/looks-of.ts';
import { applyMends } from '../../source/session/mend.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { Eye } from './seen-places.ts';
import { simulate } from './simulate.ts';
import { bedMoves, make, named, overJobs } from './slips.ts';

/** Laws run over many bags, and other tests run beside them. */
vi.setConfig({ testTimeout: 90_000 });

const bedsOf = (job: Job): readonly Bed[] => [...simulate(job)].map(({ bed }) => bed);

const expectMends = (beds: readonly Bed[], bed: Bed, found: Diagnosis | undefined, how: string): void => {
  const mend = found?.mends.find((one) => one.how === how);
  const set = applyMends(bed, mend?.steps.flatMap((step) => step.moves) ?? []);
  if (!mend || !set.ok) throw new Error(`no mend by ${how}: ${JSON.stringify(set)}`);
  expect(set.value).toEqual(beds[mend.thenDone - 1]);
};

/** Two colours by turns, two rows each, on a bed with room for all of it: counted by hand below. */
const dice = {
  name: 'Dice bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
  bag: { stitches: 36, rows: 64 },
  yarns: {
    plum: { colour: '#6b2d5c', metresPer100g: 190 },
    mint: { colour: '#9fd8c2', metresPer100g: 190 },
    sand: { colour: '#d8c29f', metresPer100g: 190 },
  },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 4 },
    { yarn: 'sand', rows: 2 },
  ],
};

const stepsOf = (job: Job): readonly Step[] => [...simulate(job)].map(({ step }) => step);

describe('a yarn slip', () => {
  const job = jobOf(dice);
  const beds = bedsOf(job);
  const steps = stepsOf(job);
  const pass = (row: number): Step =>
    steps.find((step) => step.act.kind === 'pass' && step.row === row) as Step;

  it('shows two stripes of one colour when the yarn was not changed, and rips back to the change', () => {
    // Row 9 starts the second plum stripe; sand (rows 7 and 8) stays in the feeder for rows 9 and 10.
    let bed = beds[pass(9).step - 3] as Bed;
    expect(bed.feeder).toBe('sand');
    const unthreaded = steps
      .slice(pass(9).step - 2, pass(10).step)
      .filter(({ act }) => act.kind !== 'thread');
    for (const step of unthreaded) bed = make(bed, bedMoves(step));
    const look: Look = {
      ...looksAt(job, pass(10).step),
      lastColour: 'sand',
      feeder: 'sand',
      stripesCounted: 3,
    };
    const [first] = named(job, look, pass(10).step);
    expect(first).toMatchObject({
      slip: 'stripe-not-changed',
      row: 8,
      rowsSince: 2,
      yarn: 'plum',
      usedYarn: 'sand',
    });
    expectMends(beds, bed, first, 'rip');
    const counters = first?.mends[0]?.steps.filter((step) => step.turnsCounterBack).map((step) => step.row);
    expect(counters).toEqual([9, 8]);
  });

  it('shows a parked yarn used by mistake in the middle of a stripe, and takes out that row', () => {
    // Row 5 is the third of the mint stripe; plum is taken from its parking place instead.
    const before = beds[pass(5).step - 2] as Bed;
    const bed = make(before, [
      { move: 'park', yarn: 'mint', end: opposite(job.plan.brief.homeSide) },
      { move: 'feed', yarn: 'plum' },
      ...bedMoves(pass(5)),
    ]);
    const look: Look = {
      ...looksAt(job, pass(5).step),
      lastColour: 'plum',
      feeder: 'plum',
      stripesCounted: 3,
    };
    const [first] = named(job, look, pass(5).step);
    expect(first).toMatchObject({
      slip: 'parked-yarn-used',
      row: 4,
      rowsSince: 1,
      yarn: 'mint',
      usedYarn: 'plum',
    });
    expectMends(beds, bed, first, 'rip');
  });

  it('can keep the wrong colour: the yarns change places and the plan goes on', () => {
    const before = beds[pass(5).step - 2] as Bed;
    const bed = make(before, [
      { move: 'park', yarn: 'mint', end: opposite(job.plan.brief.homeSide) },
      { move: 'feed', yarn: 'plum' },
      ...bedMoves(pass(5)),
    ]);
    const look: Look = {
      ...looksAt(job, pass(5).step),
      lastColour: 'plum',
      feeder: 'plum',
      stripesCounted: 3,
    };
    const keep = named(job, look, pass(5).step)[0]?.mends.find((mend) => mend.how === 'make-up');
    const kept = applyMends(bed, keep?.steps.flatMap((step) => step.moves) ?? []);
    if (!keep || !kept.ok) throw new Error('cannot be kept');
    const planned = beds[pass(5).step - 1];
    expect(kept.value).toMatchObject({
      feeder: 'mint',
      parked: planned?.parked,
      carriage: planned?.carriage,
    });
    expect(make(kept.value, bedMoves(pass(6)))).toEqual(beds[pass(6).step - 1]);
    expect(keep.shows).toEqual(['wrong-colour']);
  });

  it('shows a wrong yarn in the feeder before anything is knitted with it', () => {
    overJobs((random) => {
      const places = stepsOf(random).filter(({ act, phase }) => phase === 'stripes' && act.kind === 'pass');
      const all = bedsOf(random);
      const stranger = [...random.plan.brief.yarns.keys()];
      for (const step of places.slice(0, 12)) {
        const due = step.after.feeder ?? '';
        const held = stranger.find((yarn) => yarn !== due);
        if (held === undefined) return;
        const bed = make(all[step.step - 1] as Bed, [
          { move: 'park', yarn: due, end: 'left' },
          { move: 'feed', yarn: held },
        ]);
        const found = named(random, { ...looksAt(random, step.step), feeder: held }, step.step);
        expect(found[0]).toMatchObject({ slip: 'wrong-yarn-in-feeder', yarn: due, usedYarn: held });
        expectMends(all, bed, found[0], 'now');
      }
    }, 30);
  });
});

describe('a needle slip', () => {
  it('shows a resting needle left working, once the next pass has laid a loop on it', () => {
    overJobs((job) => {
      const eye = new Eye(job);
      const beds = bedsOf(job);
      for (const [i, step] of stepsOf(job).entries()) {
        const { act } = step;
        const bed = beds[i] as Bed;
        eye.watch(step, bed);
        if (act.kind !== 'decrease') continue;
        // The transfer without the needle going back out of work, then on to the next pass.
        let now = make(beds[i - 1] as Bed, bedMoves(step).slice(0, 1));
        let done = i + 1;
        const watch = eye.copy();
        let looks = watch.look(now);
        while (!/pass/.test(stepAt(job, done).act.kind)) {
          done++;
          now = make(now, bedMoves(stepAt(job, done)));
          looks = watch.watch(stepAt(job, done), now);
        }
        const [first] = named(job, { ...looks, looseEdgeLoop: true }, done);
        expect(first).toMatchObject({ slip: 'needle-left-working', needle: act.emptied, number: act.number });
        expectMends(beds, now, first, 'now');
        expect(named(job, looks, done).map((one) => one.slip)).toContain('needle-left-working');
        const [other] = named(job, { ...looks, looseEdgeLoop: false }, done);
        expect(other).toMatchObject({ slip: 'decrease-missing', number: act.number });
      }
    }, 20);
  });

  it('shows an eyelet needle left resting, and the eyelet comes with the next pass', () => {
    overJobs((job) => {
      const beds = bedsOf(job);
      for (const [i, step] of stepsOf(job).entries()) {
        const { act } = step;
        if (act.kind !== 'increase') continue;
        let done = i + 2;
        let now = make(beds[done - 1] as Bed, [{ move: 'rest', needles: [act.uncovered] }]);
        while (!/pass/.test(stepAt(job, done).act.kind)) {
          done++;
          now = make(now, bedMoves(stepAt(job, done)));
        }
        const looks = looksAt(job, done);
        const [first] = named(job, { ...looks, stitches: looks.stitches - 1 }, done);
        expect(first).toMatchObject({
          slip: 'needle-left-resting',
          needle: act.uncovered,
          number: act.number,
        });
        const mend = first?.mends[0];
        const set = applyMends(now, mend?.steps.flatMap((one) => one.moves) ?? []);
        if (!set.ok) throw new Error(set.fault.code);
        const next = stepAt(job, done + 1);
        if (next.act.kind !== 'pass') continue;
        expect(make(set.value, bedMoves(next))).toEqual(beds[done]);
      }
    }, 20);
  });
});

describe('the carriage and the sides', () => {
  it('shows the carriage on the wrong side, and brings it across without knitting', () => {
    overJobs((job) => {
      const beds = bedsOf(job);
      for (const step of stepsOf(job)) {
        if (step.phase !== 'stripes' || step.after.left === null) continue;
        const looks = looksAt(job, step.step);
        const carriage = opposite(looks.carriage);
        const found = named(job, { ...looks, carriage }, step.step);
        expect(found.map((one) => one.slip)).toContain('carriage-wrong-side');
        const bed: Bed = { ...(beds[step.step - 1] as Bed), carriage };
        const slip = found.find((one) => one.slip === 'carriage-wrong-side');
        expectMends(beds, bed, slip, 'now');
      }
    }, 15);
  });

  it('shows needle names read from the wrong side', () => {
    const job = jobOf(dice);
    const done = job.phaseStarts[1] as number;
    const looks = looksAt(job, done + 40);
    const other = (name: string | null): string =>
      (name ?? '').replace(/^[LR]/, (half) => (half === 'L' ? 'R' : 'L'));
    const mirrored = { ...looks, left: other(looks.right), right: other(looks.left) };
    expect(named(job, mirrored, done + 40)[0]).toMatchObject({ slip: 'sides-swapped' });
    const exchanged = { ...looks, left: looks.right, right: looks.left };
    expect(named(job, exchanged, done + 40)[0]).toMatchObject({ slip: 'sides-swapped' });
  });
});

describe('a bed as planned', () => {
  it('shows nothing wrong', () => {
    overJobs((job) => {
      for (const step of stepsOf(job)) expect(named(job, looksAt(job, step.step), step.step)).toEqual([]);
    }, 10);
  });

  it('refuses a move that cannot be made, as the bed does', () => {
    const bed = bedsOf(jobOf(dice))[0] as Bed;
    expect(applyMends(bed, [{ move: 'feed', yarn: 'plum' }])).toEqual(
      applyMove(bed, { move: 'feed', yarn: 'plum' }),
    );
  });
});
