/**
 * Scrap off and rehang: the yarn is set aside, parked while it is needed again, else cut; a few waste rows hold the stitches;
 * the carriage drops the work by a pass with nothing in the feeder and comes home over the empty bed; then the loops go
 * back on at the trailing end. An even number of waste rows ends at home (common practice).
 */

import { opposite, type Side } from '../bed/bed.ts';
import type { BedMove } from '../bed/move.ts';
import { formatNeedles } from '../bed/needles.ts';
import { shapingsBefore } from '../planning/hangings.ts';
import type { Aside } from './act.ts';
import { bareBed, bedAt, counterAt, hangingOf, parkedDuring } from './bed-after.ts';
import { wasteRows } from './cast-on.ts';
import { combHangs, type Outline, stripeNumberOf, yarnOfRow } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

/** What happens to the yarn that leaves the feeder once `row` is knitted, with the carriage at home. */
export function asideAfter(outline: Outline, row: number): Aside | null {
  const { yarnSpans, plan } = outline;
  const yarn = yarnOfRow(outline, row);
  const span = yarnSpans.find((one) => one.yarn === yarn);
  if (!span || row === 0) return null;
  if (span.lastRow <= row) return { how: 'cut', yarn };
  return { how: 'park', yarn, end: span.end, across: span.end !== plan.brief.homeSide };
}

export const asideMoves = (aside: Aside | null): readonly BedMove[] => {
  if (!aside) return [];
  return aside.how === 'park'
    ? [{ move: 'park', yarn: aside.yarn, end: aside.end }]
    : [{ move: 'cut', yarn: aside.yarn }];
};

export function rehangStep(outline: Outline, row: number, part: number): StepBody {
  const { plan, rehangWasteRows } = outline;
  const { homeSide, shapeEveryRows, waste, bed } = plan.brief;
  const shapings = shapingsBefore(row, shapeEveryRows);
  const parked = parkedDuring(outline, row, null);
  const before = hangingOf(outline, row);
  const again = hangingOf(outline, row + 1);
  const names = formatNeedles(bed.needles, again.hungLeft, again.hungRight);
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const away = opposite(homeSide);
  const onBed = (hanging: typeof before, feeder: string | null, passes: number): BedAfter =>
    bedAt(outline, {
      hanging,
      row,
      shapings,
      feeder,
      parked,
      carriage: homeSide,
      counter: counterAt(outline, row + passes),
    });
  const offBed = (carriage: Side): BedAfter => ({
    ...bareBed(outline, carriage, counterAt(outline, row + rehangWasteRows + 1)),
    parked,
    shapings,
  });
  const body = (step: Pick<StepBody, 'act' | 'moves' | 'after'>): StepBody => ({
    row,
    stripe: stripeNumberOf(outline, row),
    ...step,
  });

  switch (part) {
    case 0: {
      const aside = asideAfter(outline, row);
      return body({
        act: { kind: 'thread-waste', yarn: waste.yarn, aside },
        moves: [...asideMoves(aside), { move: 'feed', yarn: waste.yarn }],
        after: onBed(before, waste.yarn, 0),
      });
    }
    case 1:
      return body({
        ...wasteRows({
          yarn: waste.yarn,
          from: 1,
          through: rehangWasteRows,
          of: rehangWasteRows,
          end: homeSide,
        }),
        after: onBed(before, waste.yarn, rehangWasteRows),
      });
    case 2:
      return body({
        act: { kind: 'weights-off', wasteYarn: waste.yarn, comb: combHangs(outline, row), rehangs: true },
        moves: [{ move: 'cut', yarn: waste.yarn }],
        after: onBed(before, null, rehangWasteRows),
      });
    case 3:
      return body({
        act: { kind: 'take-off', to: away, rehangs: true },
        moves: [{ move: 'take-off', to: away }],
        after: offBed(away),
      });
    case 4:
      return body({
        act: { kind: 'set-needles-again', first, last, count: plan.stitches, carriage: homeSide },
        moves: [
          { move: 'stand', side: homeSide },
          { move: 'work', needles: names },
        ],
        after: offBed(homeSide),
      });
    case 5:
      return body({
        act: { kind: 'rehang', first, last, count: plan.stitches, yarn: yarnOfRow(outline, row) },
        moves: [{ move: 'rehang', left: first, right: last }],
        after: onBed(again, null, rehangWasteRows + 1),
      });
    case 6:
      return body({
        act: { kind: 'hang-weights', left: first, right: last },
        moves: [],
        after: onBed(again, null, rehangWasteRows + 1),
      });
    default: {
      const counts = !bed.without.includes('counter');
      return body({
        act: { kind: 'release-waste', rehangs: true, row: counts ? row : null },
        moves: [
          { move: 'release', what: 'waste' },
          ...(counts ? [{ move: 'counter', rows: row } as const] : []),
        ],
        after: onBed(again, null, 0),
      });
    }
  }
}
