/** The whole bed, needle by needle, at any place of a job: the last step that tells every needle, and the few since. */
import { applyMove } from '../../bed/apply-move.ts';
import { type Bed, emptyBed } from '../../bed/bed.ts';
import { isHandMove, type Move } from '../../bed/move.ts';
import { parseNeedle } from '../../bed/needles.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';

/** The bed once `done` steps are confirmed. Throws outside 0 … stepCount, as `stepAt` does. */
export function bedAtPlace(job: Job, done: number): Bed {
  let settled = done;
  let bed: Bed | null = null;
  while (settled > 0 && bed === null) {
    bed = settledBed(job, stepAt(job, settled));
    if (bed === null) settled--;
  }
  bed ??= emptyBed(job.plan.brief.bed.needles, 'left');
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
  const { act, after } = step;
  const { needles: needleCount } = job.plan.brief.bed;
  const common = {
    carriage: after.carriage,
    feeder: after.feeder,
    parked: after.parked,
    eyeletCount: after.shapings,
  };
  if (isPass(step) && after.left !== null && after.right !== null) {
    const left = parseNeedle(needleCount, after.left) ?? 0;
    const right = parseNeedle(needleCount, after.right) ?? -1;
    const needles = [...emptyBed(needleCount, 'left').needles];
    needles.fill({ working: true, loopCount: 1, yarn: after.feeder }, left, right + 1);
    return { ...common, needles, loopsOff: step.phase === 'cord' ? job.plan.stitches : 0 };
  }
  if (act.kind === 'take-off' || isHandWork(step)) {
    const { needles } = emptyBed(needleCount, 'left');
    const cordIsOff = step.phase === 'cord';
    return { ...common, needles, loopsOff: cordIsOff ? job.plan.cord.stitches : job.plan.stitches };
  }
  return null;
}

const passes: ReadonlySet<string> = new Set([
  'waste-pass',
  'ravel-pass',
  'pass',
  'closing-pass',
  'cord-first-row',
  'rounds',
]);

const isPass = ({ act }: Step): boolean => passes.has(act.kind);

/** Away from the bed: sewing, and the cord once it is drawn off. */
const isHandWork = ({ phase, act }: Step): boolean =>
  phase === 'graft' ||
  phase === 'seam' ||
  act.kind === 'draw-through' ||
  act.kind === 'thread-eyelets' ||
  act.kind === 'tie';
