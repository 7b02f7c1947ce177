/** Arithmetic leaves out no slip that could look so, and most that could not: against the slips carried out on the bed. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { Look } from '../locate/seen.ts';
import type { Slip } from '../mend/slip.ts';
import { showingAt } from './could-show.ts';
import { type Story, storyOf } from './story.ts';
import { nearReach, supposed } from './suppose.ts';

const striped = stripedBrief(20, 24, 60);
const sand = { yarns: { ...striped.yarns, sand: { colour: '#d8c49a', metresPer100g: 190 } } };
const bags = {
  'crawling left': jobOf({ ...striped, ...sand }),
  'crawling right, every fourth row': jobOf({ ...striped, ...sand, crawl: 'right', shapeEveryRows: 4 }),
  'hung again': jobOf(stripedBrief(8, 12, 14)),
};

const asTold = ({ looks }: Story): Look => ({ ...looks, piecesDone: undefined, looseEdgeLoop: undefined });

/** Of two at one move only one can be made; and no needle is looked for that was left working where no row followed the move. */
function areBoth(one: Slip, other: Slip): boolean {
  if ('move' in one && 'move' in other) return one.move !== other.move;
  const both = [one.is, other.is];
  return one.is !== other.is && !(both.includes('needle-left-working') && both.includes('rows-too-few'));
}

const isHanging = (job: Job, done: number): boolean =>
  /waste|weights|take-off|set-needles|rehang/.test(stepAt(job, done).act.kind) &&
  stepAt(job, done).act.kind !== 'release-waste';

/** All that is supposed where much is told, and pairs of it. */
function slipsAt(job: Job, done: number): readonly (readonly Slip[])[] {
  const look = {
    left: 'L3',
    right: 'R9',
    carriage: 'left',
    feeder: null,
    stitches: 3,
    lastColour: 'mint',
  } as const;
  const single = supposed(job, look, done, nearReach);
  const pairs = single.flatMap((one, i) =>
    single.slice(0, i).flatMap((other) => (areBoth(one, other) ? [[other, one]] : [])),
  );
  return [...single.map((slip) => [slip]), ...pairs.filter((_, i) => i % 7 === 0)];
}

describe.each(Object.entries(bags))('a bag, %s', (_name, job) => {
  const [, start = 0, closing = 0] = job.phaseStarts;
  // While the work is being hung again nothing older is looked for.
  const places = Array.from({ length: closing - start - 6 }, (_, i) => start + 6 + i).filter(
    (done) => done % 11 === 0 && !isHanging(job, done),
  );

  it('shows what its slips have left', () => {
    let shown = 0;
    for (const done of places)
      for (const slips of slipsAt(job, done)) {
        const story = storyOf(job, slips, done);
        if (!story || slips.some(({ is }) => is === 'work-dropped')) continue;
        shown++;
        expect({ done, slips, shows: showingAt(job, asTold(story), done)(slips) }).toEqual({
          done,
          slips,
          shows: true,
        });
      }
    expect(shown).toBeGreaterThan(100);
  });

  it('does not show most others', () => {
    let [tried, passed] = [0, 0];
    for (const done of places) {
      const all = slipsAt(job, done).filter((slips) => slips.length === 1);
      const stories = all.flatMap((slips) => storyOf(job, slips, done) ?? []);
      for (const seen of stories) {
        const couldShow = showingAt(job, asTold(seen), done);
        for (const other of stories) {
          const isTold = other.slips.some(({ is }) => is.startsWith('rehang') || is === 'work-dropped');
          if (isTold || JSON.stringify(asTold(other)) === JSON.stringify(asTold(seen))) continue;
          tried++;
          if (couldShow(other.slips)) passed++;
        }
      }
    }
    expect(tried).toBeGreaterThan(400);
    // What was shaped before the work was hung again shows in no edge, so more of that is left to the bed.
    expect(passed / tried).toBeLessThan(job.plan.hangings.length > 1 ? 0.25 : 0.1);
  });
});

describe('the edges', () => {
  const job = bags['crawling left'];
  // After row 8, its decrease not done yet and done: R5 to R25, then R5 to R24.
  const at = (row: number, left: string, right: string, slip: Slip): boolean => {
    const done = Array.from({ length: job.stepCount }, (_, i) => i + 1).findLast(
      (number) => storyOf(job, [], number)?.looks.rowCounter === row && number < (job.phaseStarts[2] ?? 0),
    );
    return showingAt(job, { left, right }, done ?? 0)([slip]);
  };

  it.each([
    ['R5', 'R24', { is: 'move-missing', move: 4 }, false],
    ['R6', 'R25', { is: 'move-missing', move: 4 }, true],
    ['R6', 'R25', { is: 'increase-missing', move: 4 }, false],
    ['R6', 'R24', { is: 'increase-missing', move: 4 }, true],
    ['R5', 'R25', { is: 'decrease-missing', move: 4 }, true],
    ['R7', 'R26', { is: 'move-mirrored', move: 3 }, true],
    ['R4', 'R23', { is: 'move-doubled', move: 3 }, true],
    ['R5', 'R25', { is: 'needle-left-working', move: 4 }, true],
    ['R5', 'R24', { is: 'needle-left-working', move: 4 }, true],
    ['R5', 'R23', { is: 'needle-left-working', move: 4 }, false],
    ['R5', 'R24', { is: 'rows-too-many', rows: 2, step: 1 }, true],
    ['R6', 'R24', { is: 'rows-too-many', rows: 2, step: 1 }, false],
  ] as const)('%s and %s: %j %s', (left, right, slip, could) => {
    expect(at(8, left, right, slip)).toBe(could);
  });
});
