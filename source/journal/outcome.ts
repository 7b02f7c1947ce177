/** What came of a bag, against what its swatch foretold. */
import type { Outcome } from '../planning/learned.ts';
import type { Session } from '../session/session.ts';
import { phases } from '../steps/step.ts';

/** Null before it was measured, sewn, and where its plan came from the piece and not from the swatch. */
export function outcomeOf({ job, measured }: Session): Outcome | null {
  const { size, brief } = job.plan;
  const sewn = job.phaseStarts[phases.indexOf('seam')] ?? 0;
  if (!measured || measured.done <= sewn || brief.swatch.onPiece) return null;
  const { widthFactor, depthFactor } = brief.learned ?? { widthFactor: 1, depthFactor: 1 };
  return {
    width: (measured.widthCm / size.widthCm) * widthFactor,
    depth: (measured.depthCm / size.depthCm) * depthFactor,
  };
}
