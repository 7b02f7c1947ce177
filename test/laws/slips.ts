/** Slips made at a simulated bench, by hands that know only the outermost loops, and what is seen there afterwards. */
import fc from 'fast-check';
import { applyMove } from '../../source/bed/apply-move.ts';
import { type Bed, edgesOf, emptyBed } from '../../source/bed/bed.ts';
import { type BedMove, isHandMove } from '../../source/bed/move.ts';
import { formatNeedle } from '../../source/bed/needles.ts';
import { opposite, type Side } from '../../source/bed/side.ts';
import { diagnose } from '../../source/session/diagnose/diagnose.ts';
import type { Diagnosis, ShapingSlip } from '../../source/session/diagnose/slip.ts';
import type { Look } from '../../source/session/diagnose/suspect.ts';
import type { Looks } from '../../source/session/locate/seen.ts';
import { applyMends, type Mend } from '../../source/session/mend.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';
import { Eye } from './seen-places.ts';
import { simulate } from './simulate.ts';

/** A bench: the bed, and the eye that counts what a maker would. */
interface Bench {
  readonly bed: Bed;
  readonly eye: Eye;
}

export const make = (bed: Bed, moves: readonly BedMove[]): Bed =>
  moves.reduce((now, move) => {
    const next = applyMove(now, move);
    if (!next.ok) throw new Error(`${JSON.stringify(next.fault)} at ${JSON.stringify(move)}`);
    return next.value;
  }, bed);

export const bedMoves = (step: Step): readonly BedMove[] =>
  step.moves.filter((move): move is BedMove => !isHandMove(move));

/** The outermost loops set one needle out, or in with the needle they leave put to rest. */
function shape(bed: Bed, side: Side, count: number, way: 'out' | 'in'): readonly BedMove[] {
  const edge = edgesOf(bed)[side] ?? 0;
  const inward = side === 'left' ? 1 : -1;
  const name = (offset: number): string => formatNeedle(bed.needles.length, edge + offset * inward);
  const offsets = Array.from({ length: count }, (_, i) => i);
  const by = way === 'out' ? -1 : 1;
  const transfer: BedMove = {
    move: 'transfer',
    from: offsets.map(name),
    to: offsets.map((offset) => name(offset + by)),
  };
  return way === 'out'
    ? [{ move: 'work', needles: [name(-1)] }, transfer]
    : [transfer, { move: 'rest', needles: [name(0)] }];
}

type Part = 'inc' | 'dec' | 'inc at trailing' | 'dec at leading';

const slipParts: Readonly<Record<ShapingSlip, readonly Part[]>> = {
  'increase-missing': ['dec'],
  'decrease-missing': ['inc'],
  'increase-doubled': ['inc', 'inc', 'dec'],
  'decrease-doubled': ['inc', 'dec', 'dec'],
  'move-missing': [],
  'move-doubled': ['inc', 'dec', 'inc', 'dec'],
  'move-mirrored': ['inc at trailing', 'dec at leading'],
};

export const slips = Object.keys(slipParts) as ShapingSlip[];

function makePart(job: Job, bed: Bed, part: Part): Bed {
  const { crawl, edgeStitches } = job.plan.brief;
  const side = part === 'inc' || part === 'dec at leading' ? crawl : opposite(crawl);
  return make(bed, shape(bed, side, edgeStitches, part.startsWith('inc') ? 'out' : 'in'));
}

const hasRoom = (job: Job, bed: Bed): boolean => {
  const { left, right } = edgesOf(bed);
  return left !== null && right !== null && left >= 2 && right < job.plan.brief.bed.needles - 2;
};

export interface Slipped {
  readonly number: number;
  readonly done: number;
  readonly bed: Bed;
  readonly looks: Looks;
}

/** The bench after a slip at each shaping move in turn, at every place until the next move there or until the work comes off. */
export function* slippedPlaces(job: Job, slip: ShapingSlip): Generator<Slipped> {
  const eye = new Eye(job);
  let before = emptyBed(job.plan.brief.bed.needles, 'left');
  for (const { step, bed } of simulate(job)) {
    if (step.act.kind === 'increase' && hasRoom(job, before)) {
      const { number } = step.act;
      let now = before;
      for (const part of slipParts[slip]) now = makePart(job, now, part);
      const atTrailing = slip === 'decrease-missing' || slip === 'decrease-doubled';
      yield* placesSince(job, { bed: now, eye: eye.copy() }, step.step + 1, number, atTrailing);
    }
    before = bed;
    eye.watch(step, bed);
  }
}

function* placesSince(
  job: Job,
  bench: Bench,
  decreaseDone: number,
  number: number,
  andNextIncrease: boolean,
): Generator<Slipped> {
  let { bed } = bench;
  yield { number, done: decreaseDone, bed, looks: bench.eye.look(bed) };
  for (let done = decreaseDone + 1; done <= job.stepCount; done++) {
    const step = stepAt(job, done);
    const isNext = step.act.kind === 'increase';
    if (step.act.kind === 'take-off' || (isNext && !andNextIncrease)) return;
    bed = make(bed, bedMoves(step));
    yield { number, done, bed, looks: bench.eye.watch(step, bed) };
    if (isNext) return;
  }
}

export function named(job: Job, look: Look, done?: number): readonly Diagnosis[] {
  const found = diagnose(job, look, done);
  if (!found.ok) throw new Error(found.fault.code);
  return found.value;
}

export const carryOn = (job: Job, bed: Bed, from: number, through: number): Bed => {
  let now = bed;
  for (let done = from + 1; done <= through; done++) now = make(now, bedMoves(stepAt(job, done)));
  return now;
};

export function mended(job: Job, slipped: Slipped, mend: Mend): Bed {
  const ready = carryOn(job, slipped.bed, slipped.done, mend.afterDone);
  const bed = applyMends(
    ready,
    mend.steps.flatMap((step) => step.moves),
  );
  if (!bed.ok) throw new Error(JSON.stringify(bed.fault));
  return bed.value;
}

export const overJobs = (check: (job: Job) => void, runs: number): void =>
  fc.assert(
    fc.property(briefFile(), (file) => check(jobOf(file))),
    { numRuns: tries(runs) },
  );
