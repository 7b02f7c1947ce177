/** Rows that were knitted while the work hung aside of where it was due: once it hangs right again they are the same rows. */
import { parseNeedle } from '../../bed/needles.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { FabricRow } from './fabric.ts';
import { passOfRow } from './slip-moment.ts';
import type { Made, Story } from './story.ts';

/** The fabric as if the work had hung where it was due; `since` is what was knitted before it was hung right in the end. */
export function hungRight(job: Job, story: Story, since: readonly FabricRow[] | null): readonly FabricRow[] {
  const all = [...story.fabric, ...(since ?? [])];
  const amiss = story.slips.find((slip) => slip.is === 'rehang-missing' || slip.is === 'rehang-shifted');
  if (!amiss) return all;
  const before = passOfRow(job, amiss.row);
  const isRow = ({ move, step, before: bed }: Made): boolean =>
    move.move === 'knit' && step > before && job.plan.brief.yarns.has(bed.feeder ?? '');
  const first = story.made.findIndex(isRow);
  const offAgain = first < 0 ? null : story.made.slice(first).find(({ move }) => move.move === 'take-off');
  const from = story.made[first]?.rows ?? story.fabric.length;
  const through = offAgain ? offAgain.rows : since ? all.length : from;
  const by = amiss.is === 'rehang-shifted' ? -amiss.by : hungOver(job, before);
  return all.map((row, i) => (from <= i && i < through ? movedBy(row, by) : row));
}

const movedBy = (row: FabricRow, by: number): FabricRow => ({
  ...row,
  left: row.left + by,
  right: row.right + by,
  holes: row.holes.map((hole) => hole + by),
});

/** Needles by which the work is hung again further to the right after a step. */
function hungOver(job: Job, before: number): number {
  let hung = before + 1;
  while (hung < job.stepCount && stepAt(job, hung).act.kind !== 'rehang') hung++;
  const place = (number: number): number =>
    parseNeedle(job.plan.brief.bed.needles, stepAt(job, number).after.left ?? '') ?? 0;
  return place(hung) - place(before);
}
