/**
 * Scrap off and hang again: the yarn is set aside, a few waste rows hold the stitches, the work comes off and goes back on
 * at the trailing end. An even number of waste rows leaves the carriage at home (common practice).
 */
import { opposite } from '../bed/side.ts';
import { asideAfter, asideMoves } from './aside.ts';
import { bareBed, bedAt, hangingOf, parkedDuring } from './bed-after.ts';
import { type Outline, stripeNumberOf } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

export function rehangStep(outline: Outline, row: number, part: number): StepBody {
  const { plan, needles, rehangWasteRows } = outline;
  const { homeSide, shapeEveryRows, waste } = plan.brief;
  const shapings = Math.floor((row - 1) / shapeEveryRows);
  const parked = parkedDuring(outline, row, null);
  const common = { row, stripe: stripeNumberOf(outline, row) };
  const hungOn = (hangingRow: number, feeder: string | null): BedAfter =>
    bedAt(outline, { hanging: hangingOf(outline, hangingRow), row, shapings, feeder, parked });
  const offBed: BedAfter = { ...bareBed(outline, homeSide), parked, shapings };

  if (part === 0) {
    const aside = asideAfter(outline, row);
    return {
      ...common,
      act: { kind: 'thread-waste', yarn: waste.yarn, aside },
      moves: [...asideMoves(aside), { move: 'feed', yarn: waste.yarn }],
      after: hungOn(row, waste.yarn),
    };
  }
  if (part <= rehangWasteRows) {
    const to = part % 2 === 1 ? opposite(homeSide) : homeSide;
    return {
      ...common,
      act: { kind: 'waste-pass', yarn: waste.yarn, number: part, count: rehangWasteRows, to },
      moves: [{ move: 'knit', to }],
      after: { ...hungOn(row, waste.yarn), carriage: to },
    };
  }
  const hanging = hangingOf(outline, row + 1);
  const first = needles[hanging.hungLeft] ?? '';
  const last = needles[hanging.hungRight] ?? '';
  switch (part - rehangWasteRows) {
    case 1:
      return {
        ...common,
        act: { kind: 'weights-off', wasteYarn: waste.yarn, rehang: true },
        moves: [{ move: 'cut', yarn: waste.yarn }],
        after: hungOn(row, null),
      };
    case 2:
      return {
        ...common,
        act: { kind: 'take-off', rehang: true },
        moves: [{ move: 'take-off' }],
        after: offBed,
      };
    case 3:
      return {
        ...common,
        act: { kind: 'rehang', first, last, count: plan.stitches },
        moves: [{ move: 'rehang', left: first, right: last }],
        after: hungOn(row + 1, null),
      };
    default:
      return {
        ...common,
        act: { kind: 'release-waste', rehang: true, left: first, right: last },
        moves: [{ move: 'release', what: 'waste' }],
        after: hungOn(row + 1, null),
      };
  }
}
