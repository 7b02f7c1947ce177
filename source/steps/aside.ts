/** What becomes of a yarn that leaves the feeder: parked while it is needed again, else cut. */
import type { BedMove } from '../bed/move.ts';
import { type Outline, yarnOfRow } from './outline.ts';
import type { Aside } from './step.ts';

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
