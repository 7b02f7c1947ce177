/** What the hands have done since a slip: the bed before it, the moves with the slip in them, and the planned ones since. */
import { applyMove } from '../../bed/apply-move.ts';
import type { Bed } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { isHandMove } from '../../bed/move.ts';
import { opposite } from '../../bed/side.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { doneBeforeMove } from '../../steps/landmarks.ts';
import type { Step } from '../../steps/step.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { setIn, setOut } from './hands.ts';
import type { ShapingSlip } from './slip.ts';

/** One move made, the bed before it, and the planned step it belongs to; null for the slip's own. */
export interface Made {
  readonly before: Bed;
  readonly move: BedMove;
  readonly step: Step | null;
}

export interface Run {
  /** Steps confirmed before the slip. */
  readonly baseDone: number;
  readonly made: readonly Made[];
  /** The bed as it is now. */
  readonly bed: Bed;
}

/** Grows a run move by move; null once a move cannot be made. */
export function extendRun(run: Run | null, moves: readonly BedMove[] | null, step: Step | null): Run | null {
  if (!run || !moves) return null;
  let { bed } = run;
  const made = [...run.made];
  for (const move of moves) {
    const next = applyMove(bed, move);
    if (!next.ok) return null;
    made.push({ before: bed, move, step });
    bed = next.value;
  }
  return { ...run, made, bed };
}

export const startRun = (job: Job, baseDone: number): Run => ({
  baseDone,
  made: [],
  bed: bedAtPlace(job, baseDone),
});

/** Planned steps `from` … `through`, each with its moves as `remade` gives them. */
export function followPlan(
  job: Job,
  run: Run | null,
  from: number,
  through: number,
  remade: (move: BedMove) => BedMove = (move) => move,
): Run | null {
  let now = run;
  for (let number = from; number <= through; number++) {
    const step = stepAt(job, number);
    const moves = step.moves.filter((move): move is BedMove => !isHandMove(move)).map(remade);
    now = extendRun(now, moves, step);
  }
  return now;
}

type Hand = (run: Run | null) => Run | null;

/** The moves of a shaping slip, what was doubled last; `halfway` where only the increase was due so far. */
function slipHands(job: Job, slip: ShapingSlip, halfway: boolean): readonly Hand[] {
  const { crawl, edgeStitches } = job.plan.brief;
  const trailing = opposite(crawl);
  const increase: Hand = (run) => extendRun(run, run && setOut(run.bed, crawl, edgeStitches), null);
  const decrease: Hand = (run) => extendRun(run, run && setIn(run.bed, trailing, edgeStitches), null);
  switch (slip) {
    case 'increase-missing':
      return halfway ? [] : [decrease];
    case 'decrease-missing':
      return [increase];
    case 'increase-doubled':
      return halfway ? [increase, increase] : [increase, decrease, increase];
    case 'decrease-doubled':
      return [increase, decrease, decrease];
    case 'move-missing':
      return [];
    case 'move-doubled':
      return [increase, decrease, increase, decrease];
    case 'move-mirrored':
      return [
        (run) => extendRun(run, run && setOut(run.bed, trailing, edgeStitches), null),
        (run) => extendRun(run, run && setIn(run.bed, crawl, edgeStitches), null),
      ];
  }
}

/** The run from before shaping move `number` to `done`, with the slip made at it; null where the bed has no room. */
export function shapingRun(job: Job, slip: ShapingSlip, number: number, done: number): Run | null {
  const baseDone = doneBeforeMove(job, number);
  const increaseStep = baseDone + 1;
  const hands = slipHands(job, slip, done === increaseStep);
  let run: Run | null = startRun(job, baseDone);
  for (const hand of hands) run = hand(run);
  return followPlan(job, run, increaseStep + 2, done);
}
