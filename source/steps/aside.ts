/** What becomes of a yarn that leaves the feeder: parked at its own end while it is needed again, else cut. */
import type { BedMove } from '../bed/move.ts';
import { type Outline, yarnOfRow } from './outline.ts';
import type { Aside } from './step.ts';

/** What happens to the yarn that leaves the feeder once `row` is knitted. */
export function asideAfter(outline: Outline, row: number): Aside | null {
  const yarn = yarnOfRow(outline, row);
  const span = outline.yarnSpans.find((one) => one.yarn === yarn);
  if (!span || row === 0) return null;
  return span.lastRow > row ? { how: 'park', yarn, end: span.end } : { how: 'cut', yarn };
}

export const asideMoves = (aside: Aside | null): readonly BedMove[] => {
  if (!aside) return [];
  return aside.how === 'park'
    ? [{ move: 'park', yarn: aside.yarn, end: aside.end }]
    : [{ move: 'cut', yarn: aside.yarn }];
};
