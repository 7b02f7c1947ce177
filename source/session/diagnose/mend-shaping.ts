/**
 * Setting a shaping slip right. Before the next pass it is made good at once; later it is ripped back to, or kept and
 * made up for when the carriage is at home, which leaves a trace (common practice).
 */
import type { Bed } from '../../bed/bed.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { type Job, rowAt } from '../../steps/job.ts';
import { applyMends, type Mend, type MendStep } from '../mend.ts';
import { due, handSteps } from './hands.ts';
import { makeUp } from './mend-make-up.ts';
import type { ShapingSlip } from './slip.ts';
import { type Made, type Run, shapingRun } from './slipped-run.ts';
import { undoSteps } from './undo-steps.ts';

/** Null where the slip leaves no way to have come here. */
export function mendShaping(
  job: Job,
  slip: ShapingSlip,
  number: number,
  done: number,
): readonly Mend[] | null {
  const run = shapingRun(job, slip, number, done);
  if (!run) return null;
  const since = run.made.filter(({ step }) => step !== null);
  const own = run.made.filter(({ step }) => step === null);
  if (!since.some(({ move }) => move.move === 'knit')) {
    const row = rowAt(job, done);
    const steps = makeGood(job, slip, own, run.bed, row);
    return steps ? [{ how: 'now', afterDone: done, steps, thenDone: done, shows: [] }] : [];
  }
  return [ripBackTo(job, slip, own, since, run, done), makeUp(job, slip, run, done)].filter(
    (mend) => mend !== null,
  );
}

/**
 * How many of the slip's own moves are too many: those at its end. An increase and a decrease are two moves each, a needle
 * coming into work or going out of it.
 */
const surplus: Readonly<Record<ShapingSlip, number>> = {
  'increase-missing': 0,
  'decrease-missing': 0,
  'increase-doubled': 2,
  'decrease-doubled': 2,
  'move-missing': 0,
  'move-doubled': 4,
  'move-mirrored': 4,
};

/** Surplus moves taken back, missing ones made; needs a bed on which no pass has followed. */
function makeGood(
  job: Job,
  slip: ShapingSlip,
  own: readonly Made[],
  bed: Bed,
  row: number,
): readonly MendStep[] | null {
  const tooMany = own.slice(own.length - surplus[slip]).toReversed();
  const undone = joinRests(tooMany).map((made) => ({
    moves: made.flatMap(({ before, move }) => reverseOf(before, move) ?? []),
    row,
    turnsCounterBack: false,
  }));
  return handSteps(bed, undone, due(job, slip), row);
}

/** A needle brought back into work and the loops set out on it are one thing to do. */
function joinRests(made: readonly Made[]): readonly (readonly Made[])[] {
  const groups: Made[][] = [];
  for (const one of made) {
    const last = groups.at(-1);
    if (last?.at(-1)?.move.move === 'rest') last.push(one);
    else groups.push([one]);
  }
  return groups;
}

function ripBackTo(
  job: Job,
  slip: ShapingSlip,
  own: readonly Made[],
  since: readonly Made[],
  run: Run,
  done: number,
): Mend | null {
  const shapedDone = run.baseDone + 2;
  const row = rowAt(job, shapedDone);
  const back = undoSteps(since, row);
  const bed = applyMends(
    run.bed,
    back.flatMap(({ moves }) => moves),
  );
  const good = bed.ok ? makeGood(job, slip, own, bed.value, row) : null;
  return (
    good && {
      how: 'rip',
      afterDone: done,
      steps: [...back, ...good],
      thenDone: shapedDone,
      shows: [],
    }
  );
}
