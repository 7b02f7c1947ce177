/** What would save a hanging: scrapping off and hanging again is the slowest thing at the bed. */
import { canBeBoxed } from './boxed.ts';
import type { Brief } from './brief.ts';
import { chooseRows, countsFor, leastRowsOf, leastStitchesOf, rowMultipleOf } from './choose-size.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, shapingsIn, widthCm } from './geometry.ts';
import { fewestHangings, usableNeedles } from './hangings.ts';
import { bagDepthCm } from './hem.ts';

/** Counts that need fewer hangings, and the size they give. */
export interface Saving {
  readonly by: 'fewer-rows' | 'rarer-moves' | 'fewer-stitches';
  readonly stitches: number;
  readonly rows: number;
  readonly shapeEveryRows: number;
  readonly hangings: number;
  readonly widthCm: number;
  readonly depthCm: number;
}

/** The nearest change of each kind that saves one hanging at least; none where the work hangs once. */
export function savingsOf(brief: Brief, gauge: Gauge, counts: Counts): readonly Saving[] {
  const now = fewestHangings(brief, counts);
  if (now < 2) return [];
  const saves = (choice: Counts): boolean =>
    choice.stitches < usableNeedles(brief) &&
    fewestHangings(brief, choice) < now &&
    canBeBoxed(brief, gauge, choice);
  const found = [
    { by: 'fewer-rows', counts: fewerRows(brief, gauge, counts, saves) },
    { by: 'rarer-moves', counts: rarerMoves(brief, gauge, counts, saves) },
    { by: 'fewer-stitches', counts: fewerStitches(brief, gauge, counts, now) },
  ] as const;
  return found.flatMap(({ by, counts: choice }) =>
    choice
      ? [
          {
            by,
            ...choice,
            hangings: fewestHangings(brief, choice),
            widthCm: widthCm(choice, gauge),
            depthCm: bagDepthCm(brief, choice, gauge),
          },
        ]
      : [],
  );
}

type Saves = (choice: Counts) => boolean;

function fewerRows(brief: Brief, gauge: Gauge, { rows }: Counts, saves: Saves): Counts | null {
  const rowMultiple = rowMultipleOf(brief);
  for (let fewer = rows - rowMultiple; fewer >= leastRowsOf(brief); fewer -= rowMultiple) {
    const choice = countsFor(brief, gauge, fewer);
    if (saves(choice)) return choice;
  }
  return null;
}

/** The wish again with the next longer interval between moves for which rows can be found. */
function rarerMoves(brief: Brief, gauge: Gauge, counts: Counts, saves: Saves): Counts | null {
  for (const shapeEveryRows of [4, 6, 8]) {
    if (shapeEveryRows <= counts.shapeEveryRows) continue;
    const rarer = { ...brief, shapeEveryRows };
    const rows = chooseRows(rarer, gauge);
    const choice = rows.ok ? countsFor(rarer, gauge, rows.value) : null;
    if (choice && saves(choice)) return choice;
  }
  return null;
}

/** With one hanging fewer each must have room for its share of the moves. */
function fewerStitches(brief: Brief, gauge: Gauge, counts: Counts, now: number): Counts | null {
  const stitches = usableNeedles(brief) - Math.ceil(shapingsIn(counts) / (now - 1));
  const choice = { ...counts, stitches };
  return stitches < leastStitchesOf(brief) || !canBeBoxed(brief, gauge, choice) ? null : choice;
}
