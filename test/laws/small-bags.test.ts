/** Every small bag there is, held against closed formulas that know nothing of the program. */

import { describe, expect, it } from 'vitest';
import { applyMove } from '../../source/bed/apply-move.ts';
import { type Bed, emptyBed } from '../../source/bed/bed.ts';
import { isHandMove, type Move } from '../../source/bed/move.ts';
import { planJson } from '../../source/cli/plan.ts';
import { allSteps, layOutJob } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { englishWords } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import {
  briefOf,
  hangingLines,
  moveLines,
  movesOf,
  rowLines,
  type SmallBag,
  smallBags,
  stepCounts,
} from './small-bag.ts';

const rowLine = ({ row, after }: Step): string =>
  `row ${row}: ${after.left} ${after.right} ${after.stitches} ${after.carriage} ${after.shapings}`;

function movesSeen(steps: readonly Step[]): readonly string[] {
  return steps.flatMap(({ act, row }, i) => {
    const after = steps[i + 1]?.after;
    return act.kind === 'increase'
      ? [`after row ${row}: ${after?.left} ${after?.right}, eyelet ${act.uncovered}`]
      : [];
  });
}

interface HangingJson {
  readonly fromRow: number;
  readonly throughRow: number;
  readonly firstLeft: string;
  readonly firstRight: string;
  readonly lastLeft: string;
  readonly lastRight: string;
}

const hangingLine = (one: HangingJson): string =>
  `rows ${one.fromRow} to ${one.throughRow}: ${one.firstLeft} ${one.firstRight} to ${one.lastLeft} ${one.lastRight}`;

function countKinds(steps: readonly Step[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { act } of steps) counts[act.kind] = (counts[act.kind] ?? 0) + 1;
  return counts;
}

/** The bed once all moves are carried out; throws where one cannot be. */
function carryOut(moves: readonly Move[], start: Bed): Bed {
  let bed = start;
  for (const move of moves) {
    if (isHandMove(move)) continue;
    const next = applyMove(bed, move);
    if (!next.ok) throw new Error(`${JSON.stringify(move)}: ${JSON.stringify(next.fault)}`);
    bed = next.value;
  }
  return bed;
}

function countMoves(moves: readonly Move[]): Record<string, number> {
  const counts = { front: 0, back: 0, drawUps: 0, inside: 0, outside: 0, movements: 0 };
  for (const move of moves) {
    if (move.move === 'bars') counts[move.side] += move.count;
    else if (move.move === 'thread') counts[move.towards] += 1;
    else if (move.move === 'graft') counts.movements += 1;
    else if (move.move === 'draw-up') counts.drawUps += 1;
  }
  return counts;
}

function observed(bag: SmallBag): unknown {
  const brief = briefOf(bag);
  const plan = planOf(brief);
  const steps = [...allSteps(layOutJob(plan))];
  const moves = steps.flatMap((step) => step.moves);
  const passes = steps.filter(({ act }) => act.kind === 'pass' || act.kind === 'closing-pass');
  const { hangings } = planJson(plan, englishWords).bed as { readonly hangings: readonly HangingJson[] };
  return {
    steps: countKinds(steps),
    rows: passes.map(rowLine),
    moves: movesSeen(steps),
    hangings: hangings.map(hangingLine),
    byHand: countMoves(moves),
    eyelets: carryOut(moves, emptyBed(brief.bed.needles, bag.homeSide)).eyeletCount,
  };
}

function planned(bag: SmallBag): unknown {
  const threaded = movesOf(bag) - (movesOf(bag) % 2);
  return {
    steps: Object.fromEntries(Object.entries(stepCounts(bag)).filter(([, count]) => count > 0)),
    rows: rowLines(bag),
    moves: moveLines(bag),
    hangings: hangingLines(bag),
    byHand: {
      front: bag.rows / 2,
      back: bag.rows / 2,
      drawUps: Math.ceil(bag.rows / 8),
      inside: threaded / 2,
      outside: threaded / 2,
      movements: 2 * bag.stitches,
    },
    eyelets: movesOf(bag),
  };
}

it('meets every small bag: 21 widths, 36 choices of rows and colours, 2 crawls, 2 home sides, 2 beds', () => {
  const bagCount = [1, 2, 3].flatMap((edge) =>
    [2, 4, 6, 8].map((every) => [...smallBags(edge, every)].length),
  );
  expect(bagCount.reduce((sum, count) => sum + count)).toBe(21 * 36 * 2 * 2 * 2);
});

describe.each([1, 2, 3])('every small bag with %i edge stitches', (edgeStitches) => {
  it.each([2, 4, 6, 8])('and a move every %i rows comes out by the formulas', (shapeEveryRows) => {
    for (const bag of smallBags(edgeStitches, shapeEveryRows)) {
      expect({ bag, ...(observed(bag) as object) }).toEqual({ bag, ...(planned(bag) as object) });
    }
  });
});
