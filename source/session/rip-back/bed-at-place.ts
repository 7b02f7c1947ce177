/** The whole bed, needle by needle, at any place of a job: the last step that tells every needle, and the few since. */
import { applyMove } from '../../bed/apply-move.ts';
import { type Bed, emptyBed } from '../../bed/bed.ts';
import { isHandMove, type Move } from '../../bed/move.ts';
import { parseNeedle } from '../../bed/needles.ts';
import { acts } from '../../steps/acts.ts';
import { drawOfStep, type Job, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';

/** The bed before the first step: the carriage wherever it was left. */
const bareStart = ({ plan: { brief } }: Job): Bed =>
  emptyBed(brief.bed.needles, 'left', !brief.bed.without.includes('counter'));

/** The bed once `done` steps are confirmed. Throws outside 0 … stepCount, as `stepAt` does. */
export function bedAtPlace(job: Job, done: number): Bed {
  let settled = done;
  let bed: Bed | null = null;
  while (settled > 0 && bed === null) {
    bed = settledBed(job, stepAt(job, settled));
    if (bed === null) settled--;
  }
  bed ??= bareStart(job);
  for (let number = settled + 1; number <= done; number++) bed = afterMoves(bed, stepAt(job, number).moves);
  return bed;
}

/** Carries out moves that are known to be possible; a fault is our own bug. */
export function afterMoves(bed: Bed, moves: readonly Move[]): Bed {
  let now = bed;
  for (const move of moves) {
    if (isHandMove(move)) continue;
    const next = applyMove(now, move);
    if (!next.ok) throw new Error(`${JSON.stringify(next.fault)} at ${JSON.stringify(move)}`);
    now = next.value;
  }
  return now;
}

/** The bed after a step that leaves each needle known: a pass, or an empty bed; null after any other. */
function settledBed(job: Job, step: Step): Bed | null {
  const { act, after, moves, phase } = step;
  const { plan } = job;
  const empty = emptyBed(plan.brief.bed.needles, after.carriage).needles;
  const bed = {
    carriage: after.carriage,
    feeder: after.feeder,
    parked: after.parked,
    counter: after.counter,
    eyeletCount: after.shapings,
  };
  if (after.left === null || after.right === null) {
    // Needles that have just come into work, empty, are not told here.
    const known = step.row > 0 && !moves.some(({ move }) => move === 'work');
    return known
      ? { ...bed, needles: empty, loopsOff: (phase === 'cord' ? plan.cord : plan).stitches }
      : null;
  }
  if (!acts[act.kind].pass) return null;
  const left = parseNeedle(empty.length, after.left) ?? 0;
  const right = parseNeedle(empty.length, after.right) ?? -1;
  const needles = [...empty];
  needles.fill({ working: true, loopCount: 1, yarn: after.feeder }, left, right + 1);
  // The hem is knitted on while the bag's loops wait on their waste.
  if (phase === 'hem') return { ...bed, needles, loopsOff: plan.stitches };
  if (phase !== 'cord') return { ...bed, needles, loopsOff: 0 };
  // What came off the needles last: the bag, or the cord before this one.
  const last = drawOfStep(job, step.step) === 'second' ? plan.cord : plan;
  return { ...bed, needles, loopsOff: last.stitches };
}
