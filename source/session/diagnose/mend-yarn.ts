/** Setting a yarn slip right: rows in the wrong colour come out, or are kept and only the yarn is changed. */
import type { Bed } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import type { Side } from '../../bed/side.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { doneBeforeRow } from '../../steps/landmarks.ts';
import type { Mend, MendStep } from '../mend.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { extendRun, followPlan, type Run, startRun } from './slipped-run.ts';
import { undoSteps } from './undo-steps.ts';

const parkingEnd = (job: Job, yarn: string): Side =>
  job.outline.yarnSpans.find((span) => span.yarn === yarn)?.end ?? job.plan.brief.homeSide;

/** The yarn in the feeder goes back where the plan has it, parked or cut off, and the due one comes in. */
function changeYarn(held: string | null, planned: Bed): readonly BedMove[] {
  const end = held === null ? undefined : planned.parked.get(held);
  const aside: readonly BedMove[] =
    held === null
      ? []
      : [end === undefined ? { move: 'cut', yarn: held } : { move: 'park', yarn: held, end }];
  return planned.feeder === null ? aside : [...aside, { move: 'feed', yarn: planned.feeder }];
}

/** The wrong yarn waits in the feeder and nothing is knitted with it yet. */
export function mendFeeder(job: Job, held: string | null, done: number): readonly Mend[] {
  const moves = changeYarn(held, bedAtPlace(job, done));
  const steps = [{ moves, row: rowAt(job, done), turnsCounterBack: false }];
  return [{ how: 'now', afterDone: done, steps, thenDone: done, shows: [] }];
}

/** The yarn was not changed at the start of the stripe, and every row of it since is in `used`. */
export function unchangedRun(job: Job, firstRow: number, used: string, done: number): Run | null {
  const threadDone = doneBeforeRow(job, firstRow);
  const due = stepAt(job, threadDone + 1).after.feeder ?? '';
  const start = startRun(job, threadDone);
  const feed: readonly BedMove[] = start.bed.feeder === used ? [] : [{ move: 'feed', yarn: used }];
  return followPlan(job, extendRun(start, feed, null), threadDone + 2, done, (move) =>
    remade(job, move, due, used),
  );
}

/** The row knitted last took a parked yarn. */
export function borrowedRun(job: Job, passDone: number, used: string, done: number): Run | null {
  const start = startRun(job, passDone - 1);
  const due = start.bed.feeder ?? '';
  const swap: readonly BedMove[] = [
    { move: 'park', yarn: due, end: parkingEnd(job, due) },
    { move: 'feed', yarn: used },
  ];
  return followPlan(job, extendRun(start, swap, null), passDone, done, (move) =>
    remade(job, move, due, used),
  );
}

/** A planned move, with the yarn that is really in the feeder. */
function remade(job: Job, move: BedMove, due: string, used: string): BedMove {
  if (!('yarn' in move) || move.yarn !== due) return move;
  return move.move === 'park' ? { ...move, yarn: used, end: parkingEnd(job, used) } : { ...move, yarn: used };
}

export function mendRows(job: Job, run: Run | null, used: string, done: number): readonly Mend[] {
  if (!run) return [];
  const row = rowAt(job, run.baseDone);
  const back: Mend = {
    how: 'rip',
    afterDone: done,
    steps: undoSteps(run.made, row),
    thenDone: run.baseDone,
    shows: [],
  };
  return [back, ...keepRows(job, run, used, done)];
}

/** Kept as it is: the yarns change places, and the plan goes on. */
function keepRows(job: Job, run: Run, used: string, done: number): readonly Mend[] {
  if (run.bed.feeder !== used) return [];
  const moves = changeYarn(used, bedAtPlace(job, done));
  const steps: readonly MendStep[] = [{ moves, row: rowAt(job, done), turnsCounterBack: false }];
  return [{ how: 'make-up', afterDone: done, steps, thenDone: done, shows: ['wrong-colour'] }];
}
