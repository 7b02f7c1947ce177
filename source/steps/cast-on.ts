/**
 * The open start: needles, waste cast-on, two rows and the comb, the other waste rows, and one more row that frees the whole
 * start when it is pulled out: of the waste itself, found again by a loop of it, or of a smooth cord. It brings the carriage
 * home, and the row counter counts the bag from there (common practice).
 */
import { opposite, type Side } from '../bed/bed.ts';
import { formatNeedles } from '../bed/needles.ts';
import { ravelCord, ravelStrand } from '../planning/brief.ts';
import type { Act } from './act.ts';
import { bedAt, counterAt, hangingOf } from './bed-after.ts';
import type { Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

/** Rows before the comb has something firm to hang on (common practice). */
export const rowsBeforeComb = 2;
/** Needles, cast-on, thread, first rows, comb; then the other waste rows, if there are any; ravel row in three steps. */
const before = 5;
const behind = 3;

const hasMoreWaste = ({ plan }: Outline): boolean => plan.brief.waste.rows > rowsBeforeComb;

export const countCastOn = (outline: Outline): number => before + (hasMoreWaste(outline) ? 1 : 0) + behind;

export function castOnStep(outline: Outline, local: number): StepBody {
  const { brief, stitches } = outline.plan;
  const { yarn, rows, ravel } = brief.waste;
  const hanging = hangingOf(outline, 1);
  const names = formatNeedles(brief.bed.needles, hanging.hungLeft, hanging.hungRight);
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const start = startSide(outline);
  const [far, beside] = start === 'left' ? [last, first] : [first, last];
  const home = brief.homeSide;
  const away = opposite(home);
  const hasComb = !brief.bed.without.includes('comb');
  const counts = !brief.bed.without.includes('counter');
  const strand = ravelStrand(brief);
  const after = (passes: number, feeder: string | null): BedAfter =>
    bedAt(outline, {
      hanging,
      row: 0,
      shapings: 0,
      feeder,
      parked: new Map(),
      carriage: passes % 2 === 0 ? start : opposite(start),
      counter: counterAt(outline, passes),
    });
  const body = (step: Pick<StepBody, 'act' | 'moves' | 'after'>): StepBody => ({
    row: 0,
    stripe: null,
    ...step,
  });

  switch (local) {
    case 0: {
      const { stitchSize } = brief.swatch;
      return body({
        act: { kind: 'set-needles', first, last, count: stitches, carriage: start, stitchSize },
        moves: [
          { move: 'stand', side: start },
          { move: 'work', needles: names },
        ],
        after: { ...after(0, null), left: null, right: null, stitches: 0 },
      });
    }
    case 1:
      return body({
        act: { kind: 'cast-on', yarn, from: far, to: beside, count: stitches },
        moves: [{ move: 'cast-on', yarn, from: far, to: beside }],
        after: after(0, null),
      });
    case 2:
      return body({
        act: { kind: 'thread-waste', yarn, aside: null },
        moves: [{ move: 'feed', yarn }],
        after: after(0, yarn),
      });
    case 3: {
      const firstRows = Math.min(rows, rowsBeforeComb);
      const end = firstRows % 2 === 0 ? start : opposite(start);
      return body({
        ...wasteRows({
          yarn,
          from: 1,
          through: firstRows,
          of: rows,
          end,
          first: hasComb ? 'for the comb' : 'held down',
        }),
        after: after(firstRows, yarn),
      });
    }
    case 4:
      return body({
        act: hasComb ? { kind: 'hang-comb' } : { kind: 'hang-weights', left: first, right: last },
        moves: [],
        after: after(Math.min(rows, rowsBeforeComb), yarn),
      });
  }
  if (hasMoreWaste(outline) && local === before) {
    const from = rowsBeforeComb + 1;
    return body({
      ...wasteRows({ yarn, from, through: rows, of: rows, end: away }),
      after: after(rows, yarn),
    });
  }
  switch (local - before - (hasMoreWaste(outline) ? 1 : 0)) {
    case 0:
      return body({
        act: { kind: 'lay-ravel-cord', ravel, wasteYarn: yarn, clipSide: away },
        moves:
          ravel === 'loop'
            ? []
            : [
                { move: 'cut', yarn },
                { move: 'feed', yarn: ravelCord },
              ],
        after: after(rows, strand),
      });
    case 1:
      return body({
        act: { kind: 'ravel-pass', to: home },
        moves: [{ move: 'knit', to: home }],
        after: after(rows + 1, strand),
      });
    default:
      return body({
        act: { kind: 'trim-ravel-cord', ravel, wasteYarn: yarn, setsCounter: counts },
        moves: [{ move: 'cut', yarn: strand }, ...(counts ? [{ move: 'counter', rows: 0 } as const] : [])],
        after: { ...after(rows + 1, null), counter: counterAt(outline, 0) },
      });
  }
}

/** Where the carriage stands at the cast-on, so that the waste rows and the ravel row end at home. */
function startSide({ plan }: Outline): Side {
  const { homeSide, waste } = plan.brief;
  return (waste.rows + 1) % 2 === 0 ? homeSide : opposite(homeSide);
}

/** Waste rows in one step: several passes to and fro, the last of them to the side `end`. */
interface WasteRows {
  readonly yarn: string;
  readonly from: number;
  readonly through: number;
  readonly of: number;
  readonly end: Side;
  readonly first?: Extract<Act, { readonly kind: 'waste-rows' }>['first'];
}

export function wasteRows({ end, first = null, ...rows }: WasteRows): Pick<StepBody, 'act' | 'moves'> {
  const count = rows.through - rows.from + 1;
  return {
    act: { kind: 'waste-rows', ...rows, to: end, first },
    moves: Array.from({ length: count }, (_, i) => ({
      move: 'knit',
      to: (count - 1 - i) % 2 === 0 ? end : opposite(end),
    })),
  };
}
