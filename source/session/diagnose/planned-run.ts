/** The planned steps carried out on the bed, and the fabric that they leave. */
import type { Bed } from '../../bed/bed.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { applyMends, type MendMove } from '../mend/mend.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { type FabricRow, fabricRow } from './fabric.ts';
import { plannedMoves } from './hands.ts';
import type { Story } from './story.ts';

interface Planned {
  readonly bed: Bed;
  readonly rows: number;
}

/** The planned beds from where the story begins to where it ends, and the fabric of them. */
export function plannedRun(
  job: Job,
  { baseDone, done }: Story,
): { beds: readonly Planned[]; fabric: readonly FabricRow[] } {
  const beds: Planned[] = [{ bed: bedAtPlace(job, baseDone), rows: 0 }];
  const fabric: FabricRow[] = [];
  let bed = beds[0]?.bed as Bed;
  for (let number = baseDone + 1; number <= done; number++) {
    const made = knitOn(bed, plannedMoves(stepAt(job, number)));
    if (!made) break;
    bed = made.bed;
    fabric.push(...made.fabric);
    beds.push({ bed, rows: fabric.length });
  }
  return { beds, fabric };
}

export function knitOn(
  start: Bed,
  moves: readonly MendMove[],
): { readonly bed: Bed; readonly fabric: readonly FabricRow[] } | null {
  const fabric: FabricRow[] = [];
  let bed = start;
  for (const move of moves) {
    if ('move' in move && move.move === 'knit') fabric.push(fabricRow(bed, bed.feeder ?? ''));
    const next = applyMends(bed, [move]);
    if (!next.ok) return null;
    bed = next.value;
  }
  return { bed, fabric };
}

export const numbered = (job: Job, from: number, through: number): readonly Step[] =>
  Array.from({ length: Math.max(0, through - from) }, (_, i) => stepAt(job, from + 1 + i));
