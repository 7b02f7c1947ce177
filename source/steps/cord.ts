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

export const countCord = ({ plan }: Outline): number =>
  before + plan.cord.rounds + behind + plan.eyelets.used.length + 1;

export function cordStep(outline: Outline, local: number): StepBody {
  const { plan } = outline;
  const { stitches: count, yarn, rounds, lengthCm } = plan.cord;
  const home = plan.brief.homeSide;
  const away = opposite(home);
  const names = cordNeedles(outline);
  const [first = '', last = ''] = [names[0], names.at(-1)];
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
      return body({ kind: 'cast-on-cord', yarn, count }, [{ move: 'cast-on', yarn }], onBed(home, null));
    case 2:
      return body({ kind: 'thread-cord', yarn }, [{ move: 'feed', yarn }], onBed(home, yarn));
    case 3:
      return body({ kind: 'cord-first-row', to: away }, [{ move: 'knit', to: away }], onBed(away, yarn));
    case 4:
      return body({ kind: 'set-slip', slipTo: home, knitTo: away }, [], onBed(away, yarn));
  }
  const number = local - before + 1;
  if (number <= rounds) {
    return body(
      { kind: 'round', number, slipTo: home, knitTo: away },
      [
        { move: 'slip', to: home },
        { move: 'knit', to: away },
      ],
      onBed(away, yarn),
    );
  }
  if (number === rounds + 1) {
    return body({ kind: 'measure-cord', lengthCm }, [{ move: 'measure', lengthCm }], onBed(away, yarn));
  }
  if (number === rounds + 2) {
    return body(
      { kind: 'draw-through', yarn, count },
      [{ move: 'cut', yarn }, { move: 'take-off' }, { move: 'fasten' }],
      bareBed(outline, away),
    );
  }
  return threadingStep(outline, number - rounds - behind, bareBed(outline, away));
}

function threadingStep({ plan }: Outline, hole: number, after: BedAfter): StepBody {
  const { used, skipped } = plan.eyelets;
  const common = { row: plan.knittedRows, stripe: null, after };
  const eyelet = used[hole - 1];
  if (eyelet === undefined) return { ...common, act: { kind: 'tie' }, moves: [] };
  const towards = hole % 2 === 1 ? 'inside' : 'outside';
  const passesBy = skipped.find((one) => one === eyelet - 1) ?? null;
  return {
    ...common,
    act: { kind: 'thread-eyelet', eyelet, hole, of: used.length, towards, passesBy },
    moves: [{ move: 'thread', eyelet, towards }],
  };
}

/** The cord sits in the middle of the bed. */
function cordNeedles({ plan, needles }: Outline): readonly string[] {
  const first = Math.floor(needles.length / 2) - Math.floor(plan.cord.stitches / 2);
  return needles.slice(first, first + plan.cord.stitches);
}
