/**
 * The open start: needles, waste cast-on, comb, waste rows, and one more row that frees the whole start when it is pulled
 * out: of the waste itself, found again by a loop of it, or of a smooth cord. It brings the carriage home (common practice).
 */
import { formatNeedles } from '../bed/needles.ts';
import { opposite, type Side } from '../bed/side.ts';
import { ravelCord } from '../planning/brief.ts';
import { bedAt, hangingOf } from './bed-after.ts';
import type { Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

const before = 4;
const behind = 4;

export const countCastOn = ({ plan }: Outline): number => before + plan.brief.waste.rows + behind;

export function castOnStep(outline: Outline, local: number): StepBody {
  const { brief, stitches } = outline.plan;
  const { yarn, rows } = brief.waste;
  const hanging = hangingOf(outline, 1);
  const names = formatNeedles(brief.bed.needles, hanging.hungLeft, hanging.hungRight);
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const start = startSide(outline);
  const [far, beside] = start === 'left' ? [last, first] : [first, last];
  const home = brief.homeSide;
  const away = opposite(home);
  const after = (carriage: Side, feeder: string | null): BedAfter => ({
    ...bedAt(outline, { hanging, row: 0, shapings: 0, feeder, parked: new Map() }),
    carriage,
  });
  const body = (step: Pick<StepBody, 'act' | 'moves' | 'after'>): StepBody => ({
    row: 0,
    stripe: null,
    ...step,
  });

  if (local === 0) {
    return body({
      act: {
        kind: 'set-needles',
        first,
        last,
        count: stitches,
        carriage: start,
        stitchSize: brief.swatch.stitchSize,
      },
      moves: [
        { move: 'stand', side: start },
        { move: 'work', needles: names },
      ],
      after: { ...after(start, null), left: null, right: null, stitches: 0 },
    });
  }
  if (local === 1) {
    return body({
      act: { kind: 'cast-on', yarn, from: far, to: beside, count: stitches },
      moves: [{ move: 'cast-on', yarn, from: far, to: beside }],
      after: after(start, null),
    });
  }
  if (local === 2) {
    const hasComb = !brief.bed.without.includes('comb');
    return body({ act: { kind: 'hang-comb', hasComb }, moves: [], after: after(start, null) });
  }
  if (local === 3) {
    return body({
      act: { kind: 'thread-waste', yarn, aside: null },
      moves: [{ move: 'feed', yarn }],
      after: after(start, yarn),
    });
  }
  const number = local - before + 1;
  if (number <= rows) {
    const to = number % 2 === 1 ? opposite(start) : start;
    return body({
      act: { kind: 'waste-pass', yarn, number, count: rows, to },
      moves: [{ move: 'knit', to }],
      after: after(to, yarn),
    });
  }
  if (number <= rows + 3) return ravelStep(number - rows);
  return body({
    act: { kind: 'hang-weights', left: first, right: last },
    moves: [],
    after: after(home, null),
  });

  /** The row that frees the start: the last of the waste, marked by a loop of it, or one of smooth cord. */
  function ravelStep(part: number): StepBody {
    const ravel = brief.waste.ravel;
    const strand = ravel === 'loop' ? yarn : ravelCord;
    if (part === 1) {
      return body({
        act: { kind: 'lay-ravel-cord', ravel, wasteYarn: yarn, clipSide: away },
        moves:
          ravel === 'loop'
            ? []
            : [
                { move: 'cut', yarn },
                { move: 'feed', yarn: ravelCord },
              ],
        after: after(away, strand),
      });
    }
    return part === 2
      ? body({
          act: { kind: 'ravel-pass', to: home },
          moves: [{ move: 'knit', to: home }],
          after: after(home, strand),
        })
      : body({
          act: { kind: 'trim-ravel-cord', ravel, wasteYarn: yarn },
          moves: [{ move: 'cut', yarn: strand }],
          after: after(home, null),
        });
  }
}

/** Where the carriage stands at the cast-on, so that the waste rows and the ravel-cord row end at home. */
function startSide({ plan }: Outline): Side {
  const { homeSide, waste } = plan.brief;
  return (waste.rows + 1) % 2 === 0 ? homeSide : opposite(homeSide);
}
