/**
 * The graft: one row of knitting sewn with the tail. At A, the end, hang N loops; at B, the start, open N − 1 arches between the
 * stitches of row 1 and half an arch at each edge, so B1 and AN are entered once and every other loop twice. The thread takes
 * the path of a knitted row: A up through 1; then for i = 1 … N − 1, B down through i and up through i + 1, A the same; at the end
 * B down through N. "Down" goes from the knit side to the back. Loops are counted from where the tail hangs (common practice).
 */
import type { Move } from '../bed/move.ts';
import type { Act } from './act.ts';
import { carriageAfter } from './bed-after.ts';
import { lapBed } from './hem.ts';
import type { Outline } from './outline.ts';
import type { StepBody } from './step.ts';

/** One movement of the blunt needle: down through a loop of the edge, up through the next; null where there is none. */
export interface GraftMovement {
  readonly edge: 'A' | 'B';
  readonly down: number | null;
  readonly up: number | null;
}

/** Lay the work, go in, come out at the last loop; then the ravel cord and the waste, and a knot where the seam has its own thread. */
const before = 2;
const closingSteps = ({ plan }: Outline): number => (plan.graft.goesOnToSeam ? 2 : 3);

export const countGraft = (outline: Outline): number =>
  before + (outline.plan.stitches - 1) + 1 + closingSteps(outline);

/** Steps of the graft before the movements that go down through loop `number`. */
export const stepsBeforeStitch = (number: number): number => before + number - 1;

export function graftStep(outline: Outline, local: number): StepBody {
  const { plan } = outline;
  const { stitches } = plan;
  const body = (act: Act, moves: StepBody['moves']): StepBody => ({
    row: plan.knittedRows,
    stripe: null,
    act,
    moves,
    after: lapBed(outline),
  });
  if (local === 0) {
    const tailAt = carriageAfter(outline, plan.knittedRows) === plan.brief.crawl ? 'mouth' : 'bottom';
    return body(
      { kind: 'lay-graft', mouthSide: plan.brief.crawl, tailAt, ravel: plan.brief.waste.ravel },
      [],
    );
  }
  if (local === 1) return body({ kind: 'graft-start', loops: stitches }, [movement('A', null, 1)]);
  const loop = local - 1;
  if (loop < stitches) {
    return body({ kind: 'graft-pair', down: loop, up: loop + 1 }, [
      movement('B', loop, loop + 1),
      movement('A', loop, loop + 1),
    ]);
  }
  if (loop === stitches) return body({ kind: 'graft-end', down: stitches }, [movement('B', stitches, null)]);
  const part = loop - stitches - (plan.graft.goesOnToSeam ? 0 : 1);
  if (part === 0) return body({ kind: 'fasten-graft' }, [{ move: 'fasten' }]);
  return part === 1
    ? body({ kind: 'pull-ravel-cord', ravel: plan.brief.waste.ravel }, [
        { move: 'release', what: 'ravel cord' },
      ])
    : body({ kind: 'release-waste', rehangs: false, row: null }, [{ move: 'release', what: 'waste' }]);
}

const movement = (edge: 'A' | 'B', down: number | null, up: number | null): Move => ({
  move: 'graft',
  edge,
  down,
  up,
});
