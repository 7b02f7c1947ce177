/** Planning on: how far the work has come, and what may still change once its size is settled. The bag is invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, noChange as nothing, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { noChange } from '../../planning/plan-from.ts';
import type { Act } from '../../steps/act.ts';
import { allSteps, type Job } from '../../steps/job.ts';
import { startSession } from '../session.ts';
import { updateSession } from '../update-session.ts';
import { knittedAt, replan } from './replan.ts';

// Rows by turns in plum and mint, two of each; the closing row is the 23rd.
const job = jobOf(stripedBrief(20, 24));
const once = (kind: Act['kind'], nth = 1, of: Job = job): number =>
  [...allSteps(of)].filter(({ act }) => act.kind === kind)[nth - 1]?.step ?? Number.NaN;
/** Before the yarn of the closing row is threaded, which settles the size. */
const closing = once('closing-pass') - 2;

describe('how far the work has come', () => {
  it.each([
    ['nothing done', 0, { row: 0, colouredThrough: 0 }],
    ['the first yarn threaded', once('thread'), { row: 0, colouredThrough: 1 }],
    ['the first row', once('pass'), { row: 1, colouredThrough: 1 }],
    ['the second', once('pass', 2), { row: 2, colouredThrough: 2 }],
    ['the second yarn threaded', once('thread', 2), { row: 2, colouredThrough: 3 }],
    ['all but the closing row', closing, { row: 22, colouredThrough: 22 }],
    ['the yarn of the closing row threaded', closing + 1, null],
    ['the closing row', closing + 2, null],
    ['the whole bag', job.stepCount, null],
  ])('is told with %s', (_, done, knitted) => expect(knittedAt(job, done)).toEqual(knitted));
});

const inMint = { rows: 24, ...noChange, cordYarn: { to: 'mint', yarn: null } };

describe('once the size is settled', () => {
  it('the cord may still be of another yarn, and all else stays', () => {
    const next = valueIn(replan(job, closing + 1, inMint));
    expect(next.plan.cord).toEqual({ ...job.plan.cord, yarn: 'mint' });
    const [steps, before] = [[...allSteps(next)], [...allSteps(job)]];
    expect(steps).toHaveLength(before.length);
    const others = steps.filter((step, i) => JSON.stringify(step) !== JSON.stringify(before[i]));
    expect(others.every(({ phase }) => phase === 'cord')).toBe(true);
    expect(steps.find(({ act }) => act.kind === 'cast-on-cord')?.act).toMatchObject({ yarn: 'mint' });
    const metres = ({ plan }: Job) => plan.yarn.reduce((sum, one) => sum + one.metres, 0);
    expect(metres(next)).toBeCloseTo(metres(job), 9);
  });

  it.each([
    ['another length', { rows: 28 }],
    ['a stitch that measures otherwise', { measured: { stitchMm: 5, rowMm: 3.6 } }],
    ['another stripe', { recolour: { from: 'mint', to: 'plum', yarn: null } }],
    ['nothing at all', { cordYarn: null }],
  ])('%s comes too late', (_, change) => {
    expect(faultIn(replan(job, closing + 1, { ...inMint, ...change }))).toEqual({ code: 'replan/too-late' });
  });

  it('the cord is not of a yarn that is not there', () => {
    const change = { ...inMint, cordYarn: { to: 'gold', yarn: null } };
    expect(faultIn(replan(job, closing + 1, change))).toMatchObject({
      code: 'replan/unknown-yarn',
      yarn: 'gold',
    });
  });

  it('its yarn is settled from its cast-on to its end', () => {
    const cast = once('cast-on-cord');
    expect(replan(job, cast - 1, inMint).ok).toBe(true);
    for (const done of [cast, cast + 1, job.stepCount])
      expect(faultIn(replan(job, done, inMint))).toEqual({ code: 'replan/cord-begun' });
  });

  it('of two cords the first settles the yarn of both', () => {
    const two = jobOf({ ...stripedBrief(20, 24), cord: { stitches: 3, yarn: 'plum', tieCm: 5, draws: 2 } });
    expect(once('cast-on-cord', 2, two)).toBeGreaterThan(once('cast-on-cord', 1, two));
    for (const nth of [1, 2])
      expect(faultIn(replan(two, once('cast-on-cord', nth, two), inMint))).toEqual({
        code: 'replan/cord-begun',
      });
    expect(replan(two, once('cast-on-cord', 1, two) - 1, inMint).ok).toBe(true);
  });

  it('is taken by the session as it is told', () => {
    const at = valueIn(updateSession(startSession(job), { do: 'go', done: closing + 3 }));
    const next = valueIn(updateSession(at, { do: 'replan', rows: 24, ...nothing, cord: 'mint' }));
    expect([next.done, next.job.plan.cord.yarn]).toEqual([closing + 3, 'mint']);
  });
});
