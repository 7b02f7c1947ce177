/** Everything a bench screen shows, as numbers and names: screens ask for this, find words for it and draw it. */
import { type Bed, edgesOf, type Needle, type Side } from '../bed/bed.ts';
import { type Pace, type TimeLeft, timeLeft } from '../journal/pace.ts';
import type { Plan } from '../planning/plan.ts';
import { afterMoves, bedAtPlace } from '../session/rip-back/bed-at-place.ts';
import { currentStep, type Session, stepsStanding } from '../session/session.ts';
import type { Way } from '../session/way.ts';
import { type Job, rowAt, stepAt } from '../steps/job.ts';
import type { Phase, Step } from '../steps/step.ts';
import { type Count, type Glance, glanceAt, yarnAtHand } from './glance.ts';

/** The loops on the bed, as places counted from the far left. */
export interface BedStrip {
  readonly needleCount: number;
  readonly left: number | null;
  readonly right: number | null;
  /** The outermost needles that are in work, with loops or without. */
  readonly working: readonly [left: number, right: number] | null;
  /** Needles between the edges that are in work without a loop, and those that hold two: what a shaping move or a fold leaves. */
  readonly empty: readonly number[];
  readonly doubled: readonly number[];
}

export interface BenchView {
  readonly name: string;
  readonly plan: Plan;
  readonly phase: Phase;
  readonly finished: boolean;
  /** What is to do now, and after it; null when the bag is finished. */
  readonly step: Step | null;
  readonly next: Step | null;
  /** Steps of a way back or a mend come before the plan's. */
  readonly way: Way | null;
  readonly glance: Glance;
  /** The yarn that must be in the hands now. */
  readonly yarn: string | null;
  /** Rows that are knitted, and all that will be. */
  readonly rows: Count;
  /** The stripe that is on. */
  readonly stripe: Count;
  readonly steps: Count;
  /** Passes of a step of several that a switch on the carriage has counted so far; null where none is. */
  readonly passes: Count | null;
  readonly bed: BedStrip;
  /** The bed once the step is done. */
  readonly bedAfter: BedStrip;
  readonly carriage: Side;
  /** How long it still takes; null where no pace is known. */
  readonly timeLeft: TimeLeft | null;
}

export function benchView(session: Session, pace: Pace | null = null): BenchView {
  const { job, done, way } = session;
  const { plan } = job;
  const step = currentStep(session);
  const before = done === 0 ? null : stepAt(job, done);
  const onWay = way !== null && way.at < way.steps.length;
  const standing = stepsStanding(session);
  const row = rowAt(job, standing);
  const handled = way?.bed ?? session.adrift;
  const bed = handled ?? bedAtPlace(job, done);
  return {
    name: session.name,
    plan,
    phase: step?.phase ?? 'cord',
    finished: step === null && !onWay,
    step,
    next: step && step.step < job.stepCount ? stepAt(job, step.step + 1) : null,
    way: onWay ? way : null,
    glance: step && !onWay ? glanceAt(job, step) : { kind: 'other' },
    yarn: step ? yarnAtHand(job, step, before?.after ?? null) : null,
    rows: { at: row, of: plan.knittedRows },
    timeLeft: pace && step ? timeLeft(job, done, pace) : null,
    stripe: {
      at: (onWay ? stripeNow(job, standing) : step?.stripe) ?? (row === 0 ? 0 : plan.stripes.length),
      of: plan.stripes.length,
    },
    steps: { at: step?.step ?? job.stepCount, of: job.stepCount },
    passes: null,
    bed: stripOf(bed),
    bedAfter: stripOf(handled || !step ? bed : afterMoves(bed, step.moves)),
    carriage: handled?.carriage ?? before?.after.carriage ?? step?.after.carriage ?? plan.brief.homeSide,
  };
}

/** The stripe that the next step belongs to, or the one below it; null outside the stripes. */
const stripeNow = (job: Job, standing: number): number | null =>
  (standing < job.stepCount ? stepAt(job, standing + 1).stripe : null) ??
  (standing === 0 ? null : stepAt(job, standing).stripe);

function stripOf(bed: Bed): BedStrip {
  const { needles } = bed;
  const { left, right } = edgesOf(bed);
  const first = needles.findIndex(({ working }) => working);
  const isInside = (place: number): boolean =>
    left !== null && right !== null && place > left && place < right;
  const placesOf = (is: (needle: Needle, place: number) => boolean): readonly number[] =>
    needles.flatMap((needle, place) => (is(needle, place) ? [place] : []));
  return {
    needleCount: needles.length,
    left,
    right,
    working: first < 0 ? null : [first, needles.findLastIndex(({ working }) => working)],
    empty: placesOf(({ working, loopCount }, place) => working && loopCount === 0 && isInside(place)),
    doubled: placesOf(({ loopCount }) => loopCount > 1),
  };
}
