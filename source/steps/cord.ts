/**
 * The cord: a few needles, e-wrapped, one plain row, then rounds of two passes with the carriage slipping one way and
 * knitting the other; drawn off and threaded through the eyelets, in and out, so that both ends come out on the outside
 * (common practice).
 */
import { opposite, type Side } from '../bed/side.ts';
import { bareBed } from './bed-after.ts';
import type { Outline } from './outline.ts';
import type { Act, BedAfter, StepBody } from './step.ts';

/** Set needles, cast on, thread, plain row, set the carriage to slip. */
const before = 5;
/** Measure, draw through. */
const behind = 2;
/** Rounds that one step holds. */
const roundsAtOnce = 10;
/** After so many the cord is measured: how high a round is, is a guess until then. */
const roundsToMeasure = 20;

const roundSteps = ({ plan }: Outline): number => Math.ceil(plan.cord.rounds / roundsAtOnce);
/** Steps of rounds before the measure in between; none where the cord is over by then. */
const stepsToMeasure = ({ plan }: Outline): number =>
  plan.cord.rounds > roundsToMeasure ? roundsToMeasure / roundsAtOnce : 0;
const measuresOnTheWay = (outline: Outline): number => (stepsToMeasure(outline) > 0 ? 1 : 0);

export const countCord = (outline: Outline): number =>
  before +
  roundSteps(outline) +
  measuresOnTheWay(outline) +
  behind +
  outline.plan.eyelets.used.length / 2 +
  1;

export function cordStep(outline: Outline, local: number): StepBody {
  const { plan } = outline;
  const { stitches: count, yarn, rounds, lengthCm } = plan.cord;
  const home = plan.brief.homeSide;
  const away = opposite(home);
  const names = cordNeedles(outline);
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const wrapped = home === 'left' ? { from: last, to: first } : { from: first, to: last };
  const onBed = (carriage: Side, feeder: string | null): BedAfter => ({
    ...bareBed(outline, carriage, feeder),
    left: first,
    right: last,
    stitches: count,
  });
  const body = (act: Act, moves: StepBody['moves'], after: BedAfter): StepBody => ({
    row: plan.knittedRows,
    stripe: null,
    act,
    moves,
    after,
  });

  switch (local) {
    case 0:
      return body(
        { kind: 'set-cord-needles', first, last, count, carriage: home },
        [
          { move: 'stand', side: home },
          { move: 'work', needles: names },
        ],
        bareBed(outline, home),
      );
    case 1:
      return body(
        { kind: 'cast-on-cord', yarn, count, ...wrapped },
        [{ move: 'cast-on', yarn, ...wrapped }],
        onBed(home, null),
      );
    case 2:
      return body({ kind: 'thread-cord', yarn }, [{ move: 'feed', yarn }], onBed(home, yarn));
    case 3:
      return body({ kind: 'cord-first-row', to: away }, [{ move: 'knit', to: away }], onBed(away, yarn));
    case 4:
      return body({ kind: 'set-slip', slipTo: home, knitTo: away }, [], onBed(away, yarn));
  }
  const part = local - before;
  if (part === stepsToMeasure(outline) && part > 0) {
    const length = (lengthCm * roundsToMeasure) / rounds;
    const measured = { rounds: roundsToMeasure, lengthCm: length };
    const moves = [{ move: 'measure', lengthCm: length } as const];
    return body({ kind: 'measure-rounds', ...measured }, moves, onBed(away, yarn));
  }
  const number = part > stepsToMeasure(outline) ? part - measuresOnTheWay(outline) : part;
  if (number < roundSteps(outline)) {
    const from = number * roundsAtOnce + 1;
    const through = Math.min(rounds, from + roundsAtOnce - 1);
    return body(
      { kind: 'rounds', from, through, slipTo: home, knitTo: away },
      Array.from({ length: through - from + 1 }, () => roundMoves(home, away)).flat(),
      onBed(away, yarn),
    );
  }
  if (number === roundSteps(outline)) {
    return body({ kind: 'measure-cord', lengthCm }, [{ move: 'measure', lengthCm }], onBed(away, yarn));
  }
  if (number === roundSteps(outline) + 1) {
    return body(
      { kind: 'draw-through', yarn, count },
      [{ move: 'cut', yarn }, { move: 'take-off' }, { move: 'fasten' }],
      bareBed(outline, away),
    );
  }
  return threadingStep(outline, 2 * (number - roundSteps(outline) - behind), bareBed(outline, away));
}

const roundMoves = (slipTo: Side, knitTo: Side): StepBody['moves'] => [
  { move: 'slip', to: slipTo },
  { move: 'knit', to: knitTo },
];

/** Two holes, the first of them `done + 1`; the bow after the last. */
function threadingStep({ plan }: Outline, done: number, after: BedAfter): StepBody {
  const { used } = plan.eyelets;
  const common = { row: plan.knittedRows, stripe: null, after };
  const [inThrough, outThrough] = [used[done], used[done + 1]];
  if (inThrough === undefined || outThrough === undefined)
    return { ...common, act: { kind: 'tie' }, moves: [] };
  return {
    ...common,
    act: { kind: 'thread-eyelets', inThrough, outThrough, hole: done + 1, of: used.length },
    moves: [
      { move: 'thread', eyelet: inThrough, towards: 'inside' },
      { move: 'thread', eyelet: outThrough, towards: 'outside' },
    ],
  };
}

/** The cord sits in the middle of the bed. */
function cordNeedles({ plan, needles }: Outline): readonly string[] {
  const first = Math.floor(needles.length / 2) - Math.floor(plan.cord.stitches / 2);
  return needles.slice(first, first + plan.cord.stitches);
}
