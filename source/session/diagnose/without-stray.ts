/**
 * A needle that stayed in work begins a column of its own on nothing. Dropped while it hangs there alone, the column runs down to
 * where it began and leaves nothing (common practice): the work is what it would be had the needle been put out of work then.
 */
import { applyMove } from '../../bed/apply-move.ts';
import type { BedMove } from '../../bed/move.ts';
import { formatNeedle } from '../../bed/needles.ts';
import { fabricRow } from './fabric.ts';
import type { Made, Story } from './story.ts';

/** The story as it is once the loose loop at the trailing edge is dropped off its needle; null where there is none. */
export function withoutStray(story: Story): { readonly needle: string; readonly story: Story } | null {
  const { loose, looks } = story;
  if (!loose || !looks.looseEdgeLoop) return null;
  const { place } = loose;
  const begins = story.made.findLastIndex(
    ({ move, before: { needles } }) =>
      move.move === 'knit' && needles[place]?.working && needles[place].loopCount === 0,
  );
  const first = story.made[begins];
  if (!first) return null;
  const needle = formatNeedle(story.bed.needles.length, place);
  const made: Made[] = story.made.slice(0, begins);
  const fabric = story.fabric.slice(0, first.rows);
  let bed = first.before;
  const make = (move: BedMove, step: number): boolean => {
    const next = applyMove(bed, move);
    if (!next.ok) return false;
    made.push({ before: bed, move, step, rows: fabric.length });
    if (move.move === 'knit') fabric.push(fabricRow(bed, bed.feeder ?? ''));
    bed = next.value;
    return true;
  };
  if (!make({ move: 'rest', needles: [needle] }, first.step)) return null;
  for (const { move, step } of story.made.slice(begins)) if (!make(move, step)) return null;
  return { needle, story: { ...story, made, fabric, bed, loose: null } };
}
