/**
 * The cord: a few needles, e-wrapped, one plain row, then rounds of two passes with the carriage slipping one way and
 * knitting the other; drawn off and threaded through the eyelets, in and out, so that both ends come out on the outside. A
 * bed that cannot slip knits it flat, a row for each round, and its long edges are sewn together (common practice). A second
 * cord that pulls from the other side is knitted after the first as that one came out, and both are threaded at the end.
 */

import { opposite, type Side } from '../bed/bed.ts';
import { type Draw, threadingOrder } from '../planning/eyelets.ts';
import type { Act } from './act.ts';
import { bareBed, counterAt } from './bed-after.ts';
import {
  before,
  isFlat,
  partAt,
  passesARound,
  roundSteps,
  roundsBefore,
  roundsToMeasure,
  stepsToMeasure,
} from './cord-count.ts';
import { lapBed } from './hem.ts';
import { middleNeedles, type Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

export function cordStep(outline: Outline, inCord: number): StepBody {
  const { draw, knits, local } = partAt(outline, inCord);
  if (!knits) return threadingStep(outline, draw, 2 * local);
  const part = local - before;
  if (part < 0) return beginning(outline, draw, local);
  const toMeasure = draw === 'second' ? 0 : stepsToMeasure(outline);
  if (part === toMeasure && part > 0) return measureOnTheWay(outline);
  const number = toMeasure > 0 && part > toMeasure ? part - 1 : part;
  return number < roundSteps(outline)
    ? roundsStep(outline, number)
    : endingStep(outline, draw, number - roundSteps(outline));
}

/** The cord on its needles once so many rounds are knitted, or an even number of flat rows: the carriage is where it began. */
function cordBed(outline: Outline, rounds: number): BedAfter {
  const away = opposite(outline.plan.brief.homeSide);
  const counter = counterAt(outline, rounds * passesARound(outline));
  return onNeedles(outline, away, outline.plan.cord.yarn, counter);
}

function onNeedles(
  outline: Outline,
  carriage: Side,
  feeder: string | null,
  counter: number | null,
): BedAfter {
  const names = cordNeedles(outline);
  return {
    ...bareBed(outline, carriage, counter),
    left: names[0] ?? '',
    right: names.at(-1) ?? '',
    stitches: names.length,
    feeder,
  };
}

const bodyOf = ({ plan }: Outline, act: Act, moves: StepBody['moves'], after: BedAfter): StepBody => ({
  row: plan.knittedRows,
  stripe: null,
  act,
  moves,
  after,
});

function beginning(outline: Outline, draw: Draw, local: number): StepBody {
  const { homeSide: home, bed } = outline.plan.brief;
  const { yarn } = outline.plan.cord;
  const names = cordNeedles(outline);
  const count = names.length;
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const wrapped = home === 'left' ? { from: last, to: first } : { from: first, to: last };
  const away = opposite(home);
  const { counter } = draw === 'second' ? cordBed(outline, outline.plan.cord.rounds) : lapBed(outline);
  switch (local) {
    case 0:
      return bodyOf(
        outline,
        { kind: 'set-cord-needles', draw, first, last, count, carriage: home },
        [
          { move: 'stand', side: home },
          { move: 'work', needles: names },
        ],
        bareBed(outline, home, counter),
      );
    case 1:
      return bodyOf(
        outline,
        { kind: 'cast-on-cord', yarn, count, ...wrapped },
        [{ move: 'cast-on', yarn, ...wrapped }],
        onNeedles(outline, home, null, counter),
      );
    case 2:
      return bodyOf(
        outline,
        { kind: 'thread-cord', yarn },
        [{ move: 'feed', yarn }],
        onNeedles(outline, home, yarn, counter),
      );
    case 3:
      return bodyOf(
        outline,
        { kind: 'cord-first-row', to: away },
        [{ move: 'knit', to: away }],
        onNeedles(outline, away, yarn, counter === null ? null : counter + 1),
      );
    default: {
      const setsCounter = !bed.without.includes('counter');
      return bodyOf(
        outline,
        isFlat(outline)
          ? { kind: 'weigh-flat-cord', setsCounter }
          : { kind: 'set-slip', slipTo: home, knitTo: away, setsCounter },
        setsCounter ? [{ move: 'counter', rows: 0 }] : [],
        cordBed(outline, 0),
      );
    }
  }
}

function roundsStep(outline: Outline, number: number): StepBody {
  const home = outline.plan.brief.homeSide;
  const away = opposite(home);
  const from = roundsBefore(outline, number) + 1;
  const through = roundsBefore(outline, number + 1);
  const after = cordBed(outline, through);
  const of = outline.plan.cord.rounds;
  const rounds = Array.from({ length: through - from + 1 }, (_, i) => from + i);
  const round = [{ move: 'slip', to: home } as const, { move: 'knit', to: away } as const];
  return isFlat(outline)
    ? bodyOf(
        outline,
        { kind: 'flat-rows', from, through, of, to: after.carriage },
        rounds.map((row) => ({ move: 'knit', to: row % 2 === 1 ? home : away })),
        after,
      )
    : bodyOf(
        outline,
        { kind: 'rounds', from, through, of, counter: after.counter, slipTo: home, knitTo: away },
        rounds.flatMap(() => round),
        after,
      );
}

function measureOnTheWay(outline: Outline): StepBody {
  const { rounds, lengthCm } = outline.plan.cord;
  const measured = {
    rounds: roundsToMeasure,
    lengthCm: (lengthCm * roundsToMeasure) / rounds,
  };
  return bodyOf(
    outline,
    { kind: 'measure-rounds', ...measured },
    [{ move: 'measure', lengthCm: measured.lengthCm }],
    cordBed(outline, roundsToMeasure),
  );
}

function endingStep(outline: Outline, draw: Draw, ending: number): StepBody {
  const { stitches: count, yarn, lengthCm, rounds, flatSeamCm } = outline.plan.cord;
  const done = cordBed(outline, rounds);
  if (ending === 0) {
    return bodyOf(outline, { kind: 'measure-cord', draw, lengthCm }, [{ move: 'measure', lengthCm }], done);
  }
  const bare = bareBed(outline, done.carriage, done.counter);
  return ending === 1
    ? bodyOf(
        outline,
        { kind: 'draw-through', yarn, count, sewsWithCm: flatSeamCm },
        [{ move: 'cut', yarn }, { move: 'take-off' }, { move: 'fasten' }],
        bare,
      )
    : bodyOf(outline, { kind: 'sew-cord' }, [], bare);
}

/** Two holes, the first of them `done + 1`; the bow or the knot after the last. */
function threadingStep(outline: Outline, draw: Draw, done: number): StepBody {
  const used = threadingOrder(outline.plan.eyelets, draw);
  const cord = cordBed(outline, outline.plan.cord.rounds);
  const after = bareBed(outline, cord.carriage, cord.counter);
  const [inThrough, outThrough] = [used[done], used[done + 1]];
  if (inThrough === undefined || outThrough === undefined)
    return bodyOf(outline, { kind: 'tie', draw }, [], after);
  return bodyOf(
    outline,
    { kind: 'thread-eyelets', draw, inThrough, outThrough, hole: done + 1, of: used.length },
    [
      { move: 'thread', eyelet: inThrough, towards: 'inside' },
      { move: 'thread', eyelet: outThrough, towards: 'outside' },
    ],
    after,
  );
}

/** The cord sits in the middle of the bed. */
export const cordNeedles = (outline: Outline): readonly string[] =>
  middleNeedles(outline, outline.plan.cord.stitches);
