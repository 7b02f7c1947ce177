/** Everything a bench screen shows, as words and numbers: screens ask for this and draw it, and keep nothing else. */
import { parseNeedle } from '../bed/needles.ts';
import { currentStep, type Session } from '../session/session.ts';
import { say } from '../shared/say.ts';
import { metric, type Units } from '../shared/units.ts';
import { type Job, stepAt } from '../steps/job.ts';
import { doneBeforeMove } from '../steps/landmarks.ts';
import { yarnOfRow } from '../steps/outline.ts';
import type { Phase, Step } from '../steps/step.ts';
import { sayWayStep, type Way } from './way.ts';
import { cautionOf, sayNoWayBack } from './wording/cautions.ts';
import { bedNow } from './wording/place.ts';
import { saySoon } from './wording/shaping.ts';
import { shoutStep } from './wording/spoken.ts';
import { sayStep } from './wording/steps.ts';

export interface Counter {
  readonly label: string;
  readonly at: number;
  readonly of: number;
}

/** The loops on the bed, as places counted from the far left. */
export interface BedStrip {
  readonly needleCount: number;
  readonly left: number | null;
  readonly right: number | null;
  readonly leftName: string | null;
  readonly rightName: string | null;
  /** The yarn of the newest loops, and its colour; null for waste. */
  readonly yarn: string | null;
  readonly colour: string | null;
}

export interface BenchView {
  readonly name: string;
  readonly phase: Phase;
  readonly finished: boolean;
  readonly now: string;
  readonly caution: string | null;
  /** The action in one or two words, for the large view. */
  readonly shout: string;
  readonly afterwards: string | null;
  /** The next shaping move and how many rows away it is; null when none is to come. */
  readonly shaping: string | null;
  readonly counters: readonly Counter[];
  readonly carriage: string;
  readonly feeder: string | null;
  readonly parked: readonly { readonly yarn: string; readonly end: string }[];
  readonly bed: BedStrip;
  readonly colours: ReadonlyMap<string, string>;
}

/** The bench at its place; on a way back or a mend, `now` and what follows are the steps of the way. */
export function benchView(session: Session, units: Units = metric, way: Way | null = null): BenchView {
  const view = planView(session, units);
  const now = way && sayWayStep(way);
  if (!way || !now) return view;
  const shout = way.kind === 'back' ? say`rip back` : say`mend`;
  return { ...view, finished: false, now, caution: null, shout, afterwards: sayWayStep(way, 1) };
}

function planView(session: Session, units: Units): BenchView {
  const { job, done } = session;
  const { plan } = job;
  const step = currentStep(session);
  const bed = bedNow(session);
  const next = step && step.step < job.stepCount ? stepAt(job, step.step + 1) : null;
  return {
    name: plan.brief.name,
    phase: step?.phase ?? 'cord',
    finished: step === null,
    now: step ? sayStep(plan, step, units) : say`The bag is finished.`,
    caution: step ? (cautionOf(plan, step) ?? sayNoWayBack(step)) : null,
    shout: step ? shoutStep(step) : say`done`,
    afterwards: next ? sayStep(plan, next, units) : null,
    shaping: nextShaping(session, step),
    counters: countersOf(session, step),
    carriage: bed?.carriage ?? step?.after.carriage ?? plan.brief.homeSide,
    feeder: bed?.feeder ?? null,
    parked: [...(bed?.parked ?? [])].map(([yarn, end]) => ({ yarn, end })),
    bed: bedStrip(job, done),
    colours: new Map([...plan.brief.yarns].map(([name, yarn]) => [name, yarn.colour])),
  };
}

function countersOf({ job, done }: Session, step: Step | null): readonly Counter[] {
  const { plan } = job;
  const bed = done === 0 ? null : stepAt(job, done);
  const row = bed?.row ?? 0;
  const stripe = step?.stripe ?? (row === 0 ? 0 : plan.stripes.length);
  return [
    { label: say`row`, at: row, of: plan.knittedRows },
    { label: say`stripe`, at: stripe, of: plan.stripes.length },
    { label: say`moves`, at: bed?.after.shapings ?? 0, of: plan.shapings },
    { label: say`step`, at: step?.step ?? job.stepCount, of: job.stepCount },
  ];
}

function nextShaping({ job, done }: Session, step: Step | null): string | null {
  const { plan } = job;
  if (!step || (step.phase !== 'stripes' && step.phase !== 'cast-on')) return null;
  const before = done === 0 ? null : stepAt(job, done);
  const number = (before?.after.shapings ?? 0) + 1;
  if (number > plan.shapings) return null;
  const increase = stepAt(job, doneBeforeMove(job, number) + 1);
  const decrease = stepAt(job, increase.step + 1);
  const rowsAway = number * plan.brief.shapeEveryRows - (before?.row ?? 0);
  return saySoon({ number, of: plan.shapings, rowsAway, increase, decrease });
}

function bedStrip(job: Job, done: number): BedStrip {
  const { brief } = job.plan;
  const needleCount = brief.bed.needles;
  const after = done === 0 ? null : stepAt(job, done).after;
  const place = (name: string | null | undefined): number | null =>
    name ? parseNeedle(needleCount, name) : null;
  const yarn = after && after.left !== null ? newestYarn(job, stepAt(job, done)) : null;
  return {
    needleCount,
    left: place(after?.left),
    right: place(after?.right),
    leftName: after?.left ?? null,
    rightName: after?.right ?? null,
    yarn,
    colour: yarn === null ? null : (brief.yarns.get(yarn)?.colour ?? null),
  };
}

/** The yarn of the loops that hang on the needles once `step` is done. */
function newestYarn(job: Job, step: Step): string {
  const { cord, waste } = job.plan.brief;
  if (step.phase === 'cord') return cord.yarn;
  const onWaste = step.row === 0 || step.act.kind === 'waste-pass' || step.act.kind === 'weights-off';
  return onWaste ? waste.yarn : yarnOfRow(job.outline, step.row);
}
