/** The steps of the graft, followed by hand after the rule at the head of graft.ts; the bag is invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { allSteps } from './job.ts';

const sides = ['left', 'right'] as const;
const jobWith = (stitches: number, more: object) => jobOf({ ...stripedBrief(stitches, 24, 60), ...more });

const graftOf = (stitches: number, more: object) =>
  [...allSteps(jobWith(stitches, more))]
    .filter(({ phase }) => phase === 'graft')
    .map(({ act, moves }) => ({ act, moves }));

const first = (homeSide: string, crawl: string) => {
  const [laid] = graftOf(12, { homeSide, crawl });
  return laid?.act.kind === 'lay-graft' ? laid.act : null;
};

describe('the graft', () => {
  it.each(sides.flatMap((homeSide) => sides.map((crawl) => [homeSide, crawl] as const)))(
    'starts at the mouth where its thread is to go on to the bottom: home %s, crawl %s',
    (homeSide, crawl) => {
      const { goesOnToSeam } = jobWith(12, { homeSide, crawl }).plan.graft;
      expect(goesOnToSeam).toBe(homeSide !== crawl);
      expect(first(homeSide, crawl)).toMatchObject({
        mouthSide: crawl,
        tailAt: goesOnToSeam ? 'mouth' : 'bottom',
      });
    },
  );

  it('goes through each loop in its order, then ravel cord and waste come out', () => {
    const steps = graftOf(12, { homeSide: 'left', crawl: 'right' });
    const through = steps.flatMap(({ moves }) => moves).filter((move) => move.move === 'graft');
    expect(through.slice(0, 5).map(({ edge, down, up }) => [edge, down, up])).toEqual([
      ['A', null, 1],
      ['B', 1, 2],
      ['A', 1, 2],
      ['B', 2, 3],
      ['A', 2, 3],
    ]);
    expect(through.at(-1)).toMatchObject({ edge: 'B', down: 12, up: null });
    expect(through).toHaveLength(1 + 2 * 11 + 1);
    expect(steps.slice(2, 5).map(({ act }) => act)).toEqual([
      { kind: 'graft-pair', down: 1, up: 2 },
      { kind: 'graft-pair', down: 2, up: 3 },
      { kind: 'graft-pair', down: 3, up: 4 },
    ]);
    expect(steps.map(({ act }) => act.kind)).toEqual([
      'lay-graft',
      'graft-start',
      ...Array.from({ length: 11 }, () => 'graft-pair'),
      'graft-end',
      'pull-ravel-cord',
      'release-waste',
    ]);
    expect(steps.slice(-2).map(({ moves }) => moves)).toEqual([
      [{ move: 'release', what: 'ravel cord' }],
      [{ move: 'release', what: 'waste' }],
    ]);
  });

  it('is fastened before anything is pulled out where the seam has a thread of its own', () => {
    const steps = graftOf(12, { homeSide: 'right', crawl: 'right' });
    expect(steps.slice(-3).map(({ act }) => act.kind)).toEqual([
      'fasten-graft',
      'pull-ravel-cord',
      'release-waste',
    ]);
    expect(steps.at(-3)?.moves).toEqual([{ move: 'fasten' }]);
  });
});
