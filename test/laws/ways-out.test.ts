/**
 * Every slip, and any two of them, carried out by the program and by a maker at the loop bed: both leave the same to see, and each
 * way out leads to the plan and tells its trace, and none where nothing is left of it. `SLANTWISE_BAGS=500` takes five hundred bags.
 */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { type Story, storyOf } from '../../source/session/diagnose/story.ts';
import { waysOut } from '../../source/session/diagnose/ways-out.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { wrongWith } from './judge-mend.ts';
import { CannotBeDone } from './loop-bed.ts';
import { Maker, plannedBeds, rehangs, type Slip } from './maker.ts';
import { randomFrom, singlesBefore } from './slips-injected.ts';
import { handMoves, slipTold } from './slips-told.ts';

vi.setConfig({ testTimeout: 3_600_000 });

const bags = Number(process.env.SLANTWISE_BAGS ?? 12);

/** Pairs of slips in each bag, and now and then one alone. */
const slipsTried = 60;

const isOfRows = ({ kind }: Slip): boolean => kind.startsWith('rows');
const isOfHanging = ({ kind }: Slip): boolean => kind.startsWith('rehang');
const rowOf = (slip: Slip): number => ('row' in slip ? slip.row : 0);

/** Two that are not one and the same thing done otherwise, nor lie in the same rows. */
function canBeBoth(one: Slip, other: Slip): boolean {
  if ('move' in one && 'move' in other) return one.move !== other.move;
  if (isOfHanging(one) && isOfHanging(other)) return false;
  if (isOfRows(one) && isOfRows(other)) return Math.abs(rowOf(one) - rowOf(other)) > 3;
  return one.kind !== other.kind;
}

/** Hanging again that lies as far back as slips are looked for. */
function hangings(job: Job, done: number): readonly Slip[] {
  const { row } = stepAt(job, done);
  const rows = job.plan.hangings
    .map(({ fromRow }) => fromRow - 1)
    .filter((at) => at > 0 && at < row && at > row - 25);
  return rows.flatMap((at): readonly Slip[] => [
    { kind: 'rehang forgotten', row: at },
    ...[-2, -1, 1, 2].map((by) => ({ kind: 'rehang aside', row: at, by }) as const),
  ]);
}

/** The maker at her bed once she has slipped; null where hands cannot. */
function slipped(job: Job, slips: readonly Slip[], done: number): Maker | null {
  const maker = new Maker(job, slips);
  try {
    for (let number = 1; number <= done; number++) maker.follow(stepAt(job, number));
    return maker;
  } catch (error) {
    if (error instanceof CannotBeDone) return null;
    throw error;
  }
}

const seen = [
  'left',
  'right',
  'stitches',
  'carriage',
  'feeder',
  'rowsOfColour',
  'stripesCounted',
  'looseEdgeLoop',
  'rowCounter',
] as const;
type Seen = Pick<Story['looks'], (typeof seen)[number]>;

function seenAt(maker: Maker): Seen {
  const { bed } = maker;
  const { left, right, stitches } = bed.edges();
  return {
    left: bed.name(left),
    right: bed.name(right),
    stitches,
    carriage: bed.carriage,
    feeder: bed.feeder,
    rowsOfColour: maker.rowsOfColour(),
    stripesCounted: maker.stripes(),
    looseEdgeLoop: maker.isLoose(),
    rowCounter: bed.counter,
  };
}

describe('slips carried out', () => {
  it('leave what a maker sees, and each way out of them leads to the plan and tells its trace', () => {
    let [looked, mended] = [0, 0];
    fc.assert(
      fc.property(briefFile(), fc.integer({ min: 1, max: 2 ** 30 }), (file, seed) => {
        const job = jobOf(file);
        const random = randomFrom(seed);
        const [, start = 0, closing = 0] = job.phaseStarts;
        const planned = plannedBeds(job, Math.min(closing + 3, job.stepCount));
        for (let tried = 0; tried < slipsTried; tried++) {
          const done = start + 1 + random(closing - 1 - start);
          if (rehangs.has(stepAt(job, done).act.kind)) continue;
          const singles = [...singlesBefore(job, done), ...hangings(job, done)];
          const pick = (): readonly Slip[] => singles.slice(random(singles.length)).slice(0, 1);
          const slips = [...pick(), ...(random(6) === 0 ? [] : pick())];
          const [one, other] = slips;
          const { row } = stepAt(job, done);
          const isAhead = slips.some(
            (slip) =>
              rowOf(slip) > row || ('move' in slip && slip.move * job.plan.brief.shapeEveryRows > row),
          );
          if (!one || isAhead || (other && !canBeBoth(one, other))) continue;
          const maker = slipped(job, slips, done);
          const told = slips.map((slip) => slipTold(job, slip));
          const story = maker && storyOf(job, told, done);
          if (!story) continue;
          const what = JSON.stringify({ slips, done, file });
          const eye = seenAt(maker);
          const hasCounter = !job.plan.brief.bed.without.includes('counter');
          for (const fact of seen)
            if (story.looks[fact] !== null && (fact !== 'rowCounter' || hasCounter))
              expect({ what, [fact]: story.looks[fact] }).toEqual({ what, [fact]: eye[fact] });
          looked++;
          for (const { steps, thenDone, shows, how } of waysOut(job, story)) {
            const offered = { moves: steps.flatMap(handMoves), done: thenDone, tellsTrace: shows.length > 0 };
            expect({ what, how, wrong: wrongWith(job, offered, maker.bed, planned) }).toEqual({
              what,
              how,
              wrong: null,
            });
            mended++;
          }
        }
      }),
      { numRuns: bags, endOnFailure: true, seed: Number(process.env.SLANTWISE_SEED ?? 1) },
    );
    if (process.env.SLANTWISE_TELL) console.log({ looked, mended });
    expect(looked).toBeGreaterThan(10 * bags);
    expect(mended).toBeGreaterThan(15 * bags);
  });
});
